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

#include <cstdint>
#include <functional>
#include <span>
#include <vector>

#include "engine/chances/odds.h"
#include "tables/decimal.h"

namespace landdrill {

// Adding independent numbers on a grid of whole steps: dense chances, one number of few cases at a time.
//
//   GridSum sum = placed(gridded(lantern, {100}));           // one chance for each 0.0001
//   sum = plus(sum, gridded(undertow, {100}));
//
// Moves are in millionths, as Decimal::units. For total_odds.h and weighted_odds.h.

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

struct GridWish {
  // This grid, whatever the work, as long as a total has no more than `most_points` points.
  std::optional<Decimal> grid;
  std::int64_t work = 1'000'000'000;  // multiplications, about; else a coarser grid
  std::size_t states = 2'000'000;     // of elements that are weighted together, see weighted_odds.h
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
  Chance off = 0;   // by which every chance may be too high or too low, since the worlds are only so many
  Decimal lattice = {};  // every true total is a whole number of these; 0 where that is not known
};
// Every piece has a case. `done`, when given, is called after each world with how many are done.
TotalOdds total_odds(std::span<const World> worlds, const GridWish& wish,
                     const std::function<void(std::size_t)>& done = {});

// `odds` without the outermost cases that together have a chance of less than `cut` on either side; what was
// cut is added to `lost`.
Odds without_tails(const Odds& odds, Chance cut, Chance& lost);

// Which grid the odds of a total are worked out on, and the sum of one world on it.
//
//   GridStep step = chosen_step(worlds, {});       // a 240th, where the points are 240ths but for rounding
//   WorldSum monday = world_sum(worlds[0], step);
//
// For total_odds.h.

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
