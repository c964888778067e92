// How likely a judge gives which mark, and how likely the kept marks of a panel add up to what.
//
//   Odds mark = mark_odds(rule, 7.25, 0.4);     // a bell curve cut into the steps of the scale
//   Odds kept = kept_odds(rule, mark);          // of the sum of 3 kept marks of 5: one high, one low dropped
//
// The mark of a judge is expected + spread x a standard normal number, put on the nearest step of the scale
// (half-way upwards) and held within it. Judges are independent of each other once the day is known
// (forecast.h). The kept sum is exact for these chances: all ways in which the marks can fall, counted by
// order, no normal approximation.
#pragma once

#include "engine/chances/odds.h"
#include "engine/routine/routine.h"
#include "tables/decimal.h"
#include "tables/value_set.h"

namespace landdrill {

// `expected` in marks, may lie off the step and outside the scale; `spread` >= 0 in marks: 0 is the nearest
// step for certain.
Odds mark_odds(const PanelRule& rule, Decimal expected, Decimal spread);
// Of the sum of the kept marks when every judge of the rule's full panel gives marks with the same odds.
Odds kept_odds(const PanelRule& rule, const Odds& mark);
// How the day shifts every mark, in marks: a bell curve of that spread, mean 0, taken at whole steps within
// five spreads, each as likely as the curve is high there. For steps up to the spread its standard deviation
// is the spread to within 0.01 %. Spread 0: no shift for certain.
Odds day_odds(Decimal spread, Decimal step);

}  // namespace landdrill
