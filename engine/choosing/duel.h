// Two options of an element against each other: where the points come from, and how long the harder one pays.
//
//   duel(worth, written, safer).lowest_mark      // 6.75
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/choosing/worth.h"
#include "engine/routine/routine.h"
#include "tables/decimal.h"
#include "tables/quantity.h"

namespace landdrill {

// Why one option gives more than another, step by step, from the expected total with the one to that with the
// other.
struct WorthStep {
  enum class Cause { part, difficulty, execution, risk } cause = Cause::part;
  std::string label;  // "without split-hold", "with spin-360", "mark 7.25 -> 7.75", "base chance 12 % -> 3 %"
  Points change;
};
struct Duel {
  // Indices of options: harder has the higher declared difficulty; of equal ones the higher base chance, else
  // it is the first.
  std::size_t harder = 0, easier = 0;
  Points gain;                   // expected total with the harder less with the easier
  std::vector<WorthStep> steps;  // from easier to harder, summing exactly to `gain`
  // The harder one is at least as good at this mark and all above, all else as expected; in the panel's step.
  // Empty: not even at the top of the scale.
  std::optional<Mark> lowest_mark;
  // Where both are equal, on or between two steps, to a millionth; empty: nowhere on the scale, or
  // everywhere.
  std::optional<Exact> even_mark;
  // The harder one is at least as good at this base chance and all below, in per cent, rounded down to a
  // hundredth. 100: whatever the chance, as where the kind has no base mark; empty: not even at 0.
  std::optional<Decimal> highest_chance;
  std::vector<Mark> marks;       // of the harder one; rows of the table, falling
  std::vector<Decimal> chances;  // columns, rising
  std::vector<Points> table;     // expected gain, row by row
};

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
