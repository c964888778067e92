// The odds of a sum of many independent numbers, on a grid whose error is bounded.
//
//   TotalOdds total = total_odds({{1.0, {&lantern, &undertow, &choreography}}}, {});
//   total.odds.quantile(0.5)      // 186.42
//   total.bound                   // 0.0009: no case lies further than that from where it truly is
//
// Every value is moved to the nearest point of the grid before numbers are added; the bound is the sum of the
// largest moves. So the true chance of at least t lies between those of the grid for t + bound and t - bound.
// Within the work that is wished, the grid is the decimals of the points, and the bound is 0; or else the one
// that moves them least: points that are multiples of 1/240 but for their rounding lie near such a grid.
#pragma once

#include <functional>
#include <span>

#include "engine/chances/grid_sum.h"
#include "engine/chances/odds.h"
#include "tables/decimal.h"

namespace landdrill {

struct GridWish {
  // This grid, whatever the work, as long as a total has no more than `most_points` points.
  std::optional<Decimal> grid;
  std::int64_t work = 250'000'000;  // multiplications, about; else a coarser grid
};
constexpr std::int64_t most_points = 50'000'000;

// Of several worlds (the days), each with its chance, and in each the sum of all its pieces.
struct World {
  Chance chance = 0;
  std::vector<const Odds*> pieces;
};
struct TotalOdds {
  Odds odds;
  Decimal grid;     // from point to point, to a millionth
  Decimal bound;    // in the values' unit
  Chance lost = 0;  // tails that were cut off: at most this chance in all
};
// Every piece has a case. `done`, when given, is called after each world with how many are done.
TotalOdds total_odds(std::span<const World> worlds, const GridWish& wish,
                     const std::function<void(std::size_t)>& done = {});
// On a grid that is known already.
TotalOdds total_odds(std::span<const World> worlds, GridStep step,
                     const std::function<void(std::size_t)>& done = {});

// `odds` without the outermost cases that together have a chance of less than `cut` on either side; what was
// cut is added to `lost`.
Odds without_tails(const Odds& odds, Chance cut, Chance& lost);

}  // namespace landdrill
