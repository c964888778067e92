// Two options of an element against each other: where the points come from, and how long the harder one pays.
//
//   duel(worth, written, safer).lowest_mark      // 6.75
#pragma once

#include "engine/choosing/compare.h"
#include "engine/choosing/worth.h"
#include "engine/routine/routine.h"

namespace landdrill {

// An option of the element with the way it is expected to be shown.
struct Rival {
  std::size_t option = 0;  // its index
  const Option* is = nullptr;
  Way way;
};

// Both totals exist at their own chances and in between.
Duel duel(const Worth& worth, const Rival& first, const Rival& other);

// duel.cpp: one thing after another is exchanged; what the rounded total moves by is that step's doing.
std::vector<WorthStep> worth_steps(const Worth& worth, const Rival& easier, const Rival& harder);

}  // namespace landdrill
