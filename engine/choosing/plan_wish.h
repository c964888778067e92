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
  ForecastWish forecast;
  std::function<bool(std::uint64_t steps)> go_on;  // false stops: the answer then has a gap
  // For quantile and target, and where elements are weighted by difficulty together: all programmes within the
  // limits are tried where they are no more than these, else only the most promising.
  std::size_t most_programmes = 10'000;
};
constexpr std::size_t most_promising = 300;
// Where the event weights elements by difficulty together, quantile and target are worked out programme by
// programme: all within the limits, or the most promising up to so many, and then the answer is not proved.
constexpr std::size_t most_weighted_forecasts = 300;

struct PlanChoice {
  std::vector<std::size_t> options;     // one for each element: the index of its option, or leave_out
  Points total;                         // expected, to the sixth place
  std::optional<Decimal> quantile;      // for quantile
  std::optional<ChanceBounds> reaches;  // for target
  std::optional<Decimal> seconds;
  // By how much the best one's aim is above it: points; for a target, chance in per cent.
  std::optional<Decimal> behind;
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
