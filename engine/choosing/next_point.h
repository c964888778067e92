// Where training buys most: what a little more of one thing adds to the expected total, ranked.
//
//   next_points(routine, wish).gains[0]     // "4 Skylark", base chance "20" -> "10", +1.9250
//
// Each gain is the expected total (risk.h) worked out again with that one change made: nothing is
// approximated.
#pragma once

#include <string>
#include <vector>

#include "engine/chances/forecast.h"
#include "engine/chances/obstacle.h"
#include "engine/routine/wish.h"
#include "engine/score/execution.h"
#include "tables/quantity.h"

namespace landdrill {

struct Gain {
  enum class What { execution, base_chance, impression, sync, penalty } what = What::execution;
  std::size_t index = 0;      // of the element, of Showing::aspects, of Risked::errors or Risked::penalties
  std::string label;          // "4 Skylark", "Choreography and music", "small"
  std::string before, after;  // "7.25", "7.35"; "20", "10" (per cent); "3", "2"
  Points change;              // of the expected total, as its rounded values differ
  RunsShown runs = {};        // that a chance of the base mark rests on
};
struct NextPoints {
  Obstacles obstacles;  // when there are any, nothing else is set
  Points total;         // expected, as the routine is
  // Highest first. Those that bring nothing are last, with 0; less than 0 where elements are weighted by
  // difficulty together, as a base mark weighs less than what was declared.
  std::vector<Gain> gains;
};

// A tenth of a mark more on an element or an aspect (not above the scale), a halved base chance (to a
// millionth), one sync error less (or as many as are expected, when that is less), one penalty less
// (likewise). What there is nothing of (a mark at the top of its scale, a chance of 0) is left out.
NextPoints next_points(const Routine& routine, const Wish& wish);

}  // namespace landdrill
