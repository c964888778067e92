// Adding independent numbers on a grid of whole steps: dense chances, one number of few cases at a time.
//
//   GridSum sum = placed(gridded(lantern, {100}));           // one chance for each 0.0001
//   sum = plus(sum, gridded(undertow, {100}));
//
// Moves are in millionths, as Decimal::units. For total_odds.h and weighted_odds.h.
#pragma once

#include <cstdint>
#include <vector>

#include "engine/chances/odds.h"
#include "tables/decimal.h"

namespace landdrill {

// From one point of the grid to the next: `millionths` / `parts`. {1'000'000, 240} is a 240th.
struct GridStep {
  GridStep(std::int64_t of_millionths, std::int64_t in_parts = 1)
      : millionths(of_millionths), parts(in_parts) {}
  std::int64_t millionths;
  std::int64_t parts;
};
// The point's value, to a millionth.
Decimal value_at(std::int64_t point, GridStep step);

// A number of few cases, each moved to the nearest point of the grid (half-way to the even one, so that
// moves up and down even out).
struct Gridded {
  struct Case {
    std::int64_t point = 0;
    Chance chance = 0;
  };
  std::vector<Case> cases;        // rising, each point once
  std::int64_t largest_move = 0;  // rounded up

  std::int64_t span() const { return cases.back().point - cases.front().point; }
};
Gridded gridded(const Odds& odds, GridStep step);

// The chance of every point from `first` on.
struct GridSum {
  std::int64_t first = 0;
  std::vector<Chance> chances;
};
GridSum placed(const Gridded& number);
// The sum of the two, independent of each other.
GridSum plus(const GridSum& sum, const Gridded& number);
// Adds `chance` x the chances of `sum` to those of `total`, point by point.
void mix_in(GridSum& total, const GridSum& sum, Chance chance);
// Cuts off the outermost points that together have a chance of less than `cut` on either side; returns what
// was cut.
Chance cut_tails(GridSum& sum, Chance cut);

}  // namespace landdrill
