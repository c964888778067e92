// What a plan is asked for, and what is told of one programme and of one limit: what all its ways of searching
// share.
//
//   PlanWish how;
//   how.aim = PlanWish::For::quantile;     // the highest total that is missed one time in four
#pragma once

#include <cstddef>
#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "engine/chances/forecast.h"
#include "engine/chances/odds.h"
#include "engine/chances/what_if.h"
#include "engine/routine/routine.h"
#include "tables/decimal.h"
#include "tables/quantity.h"

namespace landdrill {

constexpr std::size_t leave_out = static_cast<std::size_t>(-1);

struct PlanWish {
  enum class For { expected, quantile, target } aim = For::expected;
  Chance share = 0.25;       // for quantile: the total that is not reached with this chance at most
  Decimal target;            // for target, in points
  std::size_t how_many = 6;  // the best, and the next five
  bool event_limits = true;  // quotas, families, time, and those within one element
  std::vector<OwnLimit>
      limits;  // told on the command line; they stand instead of what the sheet says of the same
  bool limits_worth = true;  // what one unit more of each limit is worth: each is a plan of its own
  // Fine enough to tell programmes apart that anyone would, and soon done.
  ForecastWish forecast{{}, {std::nullopt, 100'000'000, 20'000}, {}};
  bool doubts = true;                              // how much the answer hangs on what goes in, see PlanDoubt
  std::function<bool(std::uint64_t steps)> go_on;  // false stops: the answer then has a gap
  // For quantile and target, and where elements are weighted by difficulty together: all programmes within the
  // limits are tried where they are no more than these, else only the most promising.
  std::size_t most_programmes = 10'000;
};
constexpr std::size_t most_promising = 300;
// Where the event weights elements by difficulty together, there is a forecast for each: no more than so many.
constexpr std::size_t most_weighted_forecasts = 300;

// With more ways to swim all elements than this, a plan goes by expected totals, whatever is wished.
constexpr std::size_t most_ways_by_odds = 120;

struct PlanChoice {
  std::vector<std::size_t> options;     // one for each element: the index of its option, or leave_out
  Points total;                         // expected, to the sixth place
  std::optional<Decimal> quantile;      // missed with the chance `share`; empty where no forecast can be made
  std::optional<ChanceBounds> reaches;  // for target
  std::optional<Decimal> seconds;
  // By how much the first one's aim is above it: points; for a target, chance in per cent. Below 0 where the difference
  // is not worth a change.
  std::optional<Decimal> behind;
};
// How much a plan hangs on numbers that nobody knows well. Only the choices that are told are set beside each other.
struct PlanDoubt {
  // Which of the choices is the best, were things otherwise.
  struct Otherwise {
    WhatIf what = WhatIf::wider;
    std::size_t best = 0;
  };
  // With the first choice's option of an element marked lower, or falling to its base mark more often, another of the
  // choices is better.
  struct Turn {
    std::size_t element = 0;
    Mark expected;
    std::optional<Mark>
        at_mark;     // the highest on the step at which it is; empty: not above the scale's bottom
    Decimal chance;  // as expected, in per cent
    std::optional<Decimal> at_chance;  // the lowest whole per cent at which it is; empty: not even at 100 %
  };
  std::vector<Otherwise> otherwise;  // what makes no difference to what goes in is left out
  std::vector<Turn> turns;           // of elements that one of the other choices swims in another way
  // Every chance of the base mark, the scatter and every expected mark drawn from what it rests on, so many times.
  std::size_t draws = 0;
  std::vector<std::size_t> best;  // how often each of the choices is the best; of equal ones the first
};

struct PlanLimit {
  std::string words;  // "at most 160 s", "duet-free: 4 to 5 hybrid elements"
  std::string from;   // "quotas.csv line 9", "the sheet", "the command line"
  std::optional<Decimal> least, most;
  Decimal used;  // by the best programme; seconds to the tenth
  // What one unit more room at its top (and at its bottom) adds to the aim; empty without a top (a bottom),
  // or when even then nothing is feasible, or when it could not be proved in the steps allowed. In points;
  // for a target: chance in per cent.
  std::optional<Points> one_more, one_less;
};

}  // namespace landdrill
