// The odds of a sum of many independent numbers, on a grid whose error is bounded.
//
//   TotalOdds total = total_odds({lantern, undertow, choreography}, {});
//   total.odds.quantile(0.5)      // 186.42
//   total.bound                   // 0.0009: no case lies further than that from where it truly is
//
// Every value is moved to the nearest point of the grid before numbers are added; the bound is the sum of the
// largest moves. So the true chance of at least t lies between those of the grid for t + bound and t - bound.
// The grid is the finest for which the work stays within the wish; often that is the decimals of the points,
// and the bound is 0.
#pragma once

#include <span>

#include "engine/odds.h"

namespace landdrill {

struct GridWish {
  std::optional<Decimal> grid;     // this grid, whatever the work
  std::int64_t work = 60'000'000;  // multiplications at most, else a coarser grid
};
// Of several worlds (the days), each with its chance, and in each the sum of all its pieces.
struct World {
  Chance chance = 0;
  std::vector<const Odds*> pieces;
};
struct TotalOdds {
  Odds odds;
  Decimal grid;
  Decimal bound;    // in the values' unit
  Chance lost = 0;  // tails that were cut off: at most this chance in all
};
TotalOdds total_odds(std::span<const World> worlds, const GridWish& wish);

}  // namespace landdrill
