// The good or bad day, which shifts every mark of a performance by the same amount: as many kinds of it as the answer
// needs.
//
//   Days days = days_of(0.2, {{&rule, 7.25, 0.4}, {&rule, 7.50, 0.4}});
//   days.shifts.cases()[0]     // -0.75, with a chance of 0.0004
//   days.off                   // 0.00002: no chance that is added up over these days is further off for it
//
// The day is a bell curve, cut off at 4.5 spreads. With judges of spreads s1, s2 ... whatever is asked of their marks
// has, given the day d, a chance that is a bell curve of the spread 1 / sqrt(sum of 1 / s^2) laid over a function
// between 0 and 1. Of the product of two bell curves the trapezoidal rule with steps h is off by at most
// 2 (e^-x + e^-4x + ...), x = 2 (pi r / h)^2, where 1 / r^2 is the sum of both their 1 / spread^2 (Poisson's summation
// formula). Judges without any spread change their marks from one day to the next at once: then no kind of day reaches
// over such a change.
#pragma once

#include <span>

#include "engine/chances/odds.h"
#include "tables/decimal.h"
#include "tables/value_set.h"

namespace landdrill {

// What a full panel of the rule marks, in marks; several where it is not known yet which of them is swum.
struct DayLine {
  const PanelRule* rule;
  Decimal expected, spread;
};
struct Days {
  Odds shifts = Odds::certain(Decimal());  // in marks
  Chance off = 0;
};
// `spread` >= 0, in marks; 0: one day, without a shift.
Days days_of(Decimal spread, std::span<const DayLine> lines);

}  // namespace landdrill
