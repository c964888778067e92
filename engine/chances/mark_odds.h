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

#include <map>
#include <tuple>

#include "engine/chances/odds.h"
#include "engine/chances/risk.h"
#include "engine/routine/routine.h"
#include "engine/score/panel.h"
#include "tables/decimal.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {

// `expected` in marks, may lie off the step and outside the scale; `spread` >= 0 in marks: 0 is the nearest
// step for certain.
Odds mark_odds(const PanelRule& rule, Decimal expected, Decimal spread);
// Of the sum of the kept marks when every judge of the rule's full panel gives marks with the same odds.
Odds kept_odds(const PanelRule& rule, const Odds& mark);

// How likely an element, an aspect, the sync errors or the penalties give how many points: the pieces that a
// forecast adds up.
//
//   KeptMemory memory;
//   const LikelyMarks& marks = memory.kept(rule, expected + shift, spread);
//   element_odds(rule, marks.odds, {declared, base, 0.12})      // of the points of one element
//
// Chances that are not worth reckoning with are cut off, and counted as lost.

// Tails of less than this are cut off a piece.
constexpr Chance not_worth_reckoning = 1e-18;

struct LikelyMarks {
  Odds odds;  // of the sum of the kept marks
  Chance lost = 0;
};
// The odds of kept marks, each worked out once: on a good day an element has the odds that a better one has
// on a plain day.
class KeptMemory {
 public:
  const LikelyMarks& kept(const PanelRule& rule, Decimal expected, Decimal spread);

 private:
  using Key = std::tuple<int, int, int, Decimal, Mark, Mark, Decimal, Decimal>;
  std::map<Key, LikelyMarks> known_;
};

// With which difficulty an element is credited, and how likely it is the base mark.
struct Credited {
  Difficulty declared;
  Difficulty base;
  Chance chance = 0;  // of the base mark
};
Credited credited(const Routine& routine, const Risked& risked, std::size_t element);
// For Use::times_difficulty and Use::plain; `kept` as in LikelyMarks.
Odds element_odds(const PanelRule& rule, const Odds& kept, const Credited& credited);
Odds plain_odds(const PanelRule& rule, const Odds& kept);

// Points taken off: 0 or less. The number of sync errors of a class is Poisson about its mean.
struct TakenOff {
  Odds odds;
  Decimal bound;  // as in total_odds.h; 0 unless the points have absurdly many figures
  Chance lost = 0;
};
constexpr int most_expected_errors = 500;  // of a class, on average
TakenOff sync_odds(const std::vector<ExpectedErrors>& errors);
// A penalty expected 2.3 times comes twice, and a third time with a chance of 0.3.
TakenOff penalty_odds(const std::vector<ExpectedPenalty>& penalties);

}  // namespace landdrill
