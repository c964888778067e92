// Which grid the odds of a total are worked out on, and the sum of one world on it.
//
//   GridStep step = chosen_step(worlds, {});       // a 240th, where the points are 240ths but for rounding
//   WorldSum monday = world_sum(worlds[0], step);
//
// For total_odds.h.
#pragma once

#include "engine/chances/grid_sum.h"
#include "engine/chances/odds.h"
#include "engine/chances/total_odds.h"

namespace landdrill {

// The sum of all pieces of one world. `bound`: the sum of their largest moves, in millionths. `work`: how
// many multiplications it would take if no two cases of a piece met on one point.
struct WorldSum {
  GridSum sum{0, {1.0}};
  std::int64_t bound = 0, work = 0;
  Chance lost = 0;
};
WorldSum world_sum(const World& world, GridStep step);

GridStep chosen_step(std::span<const World> worlds, const GridWish& wish);

}  // namespace landdrill
