// How likely each value of an exact number is: of a mark, of an element's points, of a total.
//
//   Odds tap({{*Decimal::parse("7.25"), 0.5}, {*Decimal::parse("7.50"), 0.5}});
//   tap.mean()                               // 7.375
//   tap.at_least(*Decimal::parse("7.5"))     // 0.5
//
// Values are exact decimals. Chances are binary floating point: they come from a bell curve and never go into
// a score. Only the files that deal in chances may use it (tests/style/layers.py has the list).
#pragma once

#include <span>
#include <vector>

#include "tables/decimal.h"

namespace landdrill {

// Between 0 and 1.
using Chance = double;

class Odds {
 public:
  struct Case {
    Decimal value;
    Chance chance = 0;
  };

  // No case at all: the odds of nothing.
  Odds() = default;
  // In any order; equal values are put together, cases without chance left out.
  explicit Odds(std::vector<Case> cases);
  static Odds certain(Decimal value);

  // Rising values, each once.
  std::span<const Case> cases() const { return cases_; }
  Chance whole() const;      // the sum of all chances: 1, but for rounding
  double mean() const;       // in the values' unit
  double deviation() const;  // standard deviation, in the values' unit
  Chance at_least(Decimal value) const;
  // The least value that is not exceeded with a chance of at least `share` (0 to 1). There must be a case.
  Decimal quantile(Chance share) const;

 private:
  std::vector<Case> cases_;
};

// One of several, each with its chance.
struct WeighedOdds {
  Chance chance = 0;
  const Odds* odds = nullptr;
};
Odds mixed(std::span<const WeighedOdds> several);
// The chance that `a` is above `b`, and that both are equal, when they are independent.
Chance beats(const Odds& a, const Odds& b);
Chance equals(const Odds& a, const Odds& b);
// The chance that `a` is above `b` + `lead`.
Chance beats_by_more_than(const Odds& a, const Odds& b, Decimal lead);

}  // namespace landdrill
