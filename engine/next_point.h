// Where training buys most: what a little more of one thing adds to the expected total, ranked.
//
//   next_points(routine, wish).gains[0]     // "4 Skylark, base chance 20 % -> 10 %", +1.9250
//
// Each gain is the expected total (risk.h) worked out again with that one change made: nothing is
// approximated.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/forecast.h"

namespace landdrill {

struct Gain {
  enum class What { execution, base_chance, impression, sync, penalty } what = What::execution;
  std::size_t index = 0;  // of the element, of Showing::aspects, of the sync class or penalty in the showing
  std::string label;      // "4 Skylark", "Choreography and music", "small"
  std::string before, after;  // "7.25", "7.35"; "20", "10" (per cent); "3", "2"
  Points change;              // of the expected total, rounded half up to 4 places
};
struct NextPoints {
  Obstacles obstacles;
  Points total;             // expected, as the routine is
  std::vector<Gain> gains;  // highest first; those that bring nothing are last, with 0
};

// A tenth of a mark more on an element or an aspect (not above the scale), a halved base chance, one sync
// error less (or as many as are expected, when that is less), one penalty less.
NextPoints next_points(const Routine& routine, const Wish& wish);

}  // namespace landdrill
