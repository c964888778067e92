// The options of an element side by side: what each is worth, what risk costs, where the harder one stops
// paying.
//
//   Comparison two = compare(routine, 1, wish, {});
//   two.options[0].expected          // 33.9300, exact: as declared and on the base mark, by their chances
//   two.against[0].lowest_mark       // 6.75: below it the safer option gives more
//
// All numbers but the spread are exact, at the marks the coach expects. What an option is worth is always
// what the whole routine's expected total moves by, so it holds for every scheme.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/forecast.h"

namespace landdrill {

// One part of an option: what it adds, and what taking it out or exchanging it does to the expected total.
struct PartWorth {
  std::string code;
  int times = 1;
  std::optional<Difficulty>
      adds;  // declared difficulty with it less without one of it; empty: cannot be worked out
  std::optional<Points> dropping;  // change of the expected total, 0 or less as a rule
  struct Exchange {
    std::string code;     // the next easier or harder part of the family
    Difficulty declared;  // of the element then
    Points change;        // of the expected total
  };
  std::optional<Exchange> easier, harder;
};

struct OptionWorth {
  std::size_t option = 0;
  std::string title;  // "as written" for the first
  Difficulty declared;
  std::optional<Difficulty> base;
  std::optional<ExpectedMark> mark;  // what it rests on
  BaseChance chance;
  std::optional<Points> clean,
      on_base;      // of the element, at the expected mark; empty where the event weights together
  Points expected;  // of the element; where the event weights together: of its rule
  Points total;     // the routine's expected total with this option
  std::optional<Decimal> spread;  // standard deviation of the element's points, from the forecast; in points
  std::vector<PartWorth> parts;   // empty where the difficulty is stated
};

// Why one option gives more than another, step by step, from the expected total with the one to that with the
// other.
struct WorthStep {
  enum class Cause { part, difficulty, execution, risk } cause = Cause::part;
  std::string label;  // "without split-hold", "with spin-360", "mark 7.25 -> 7.75", "base chance 12 % -> 3 %"
  Points change;
};
struct Duel {
  std::size_t harder = 0, easier = 0;  // indices of options: harder has the higher declared difficulty
  Points gain;                         // expected total with the harder less with the easier
  std::vector<WorthStep> steps;        // from easier to harder, summing exactly to `gain`
  // The harder one is at least as good down to this mark, and up to this base chance (per cent, rounded down
  // to a hundredth), all else as expected. Empty: at no mark (at no chance) of the scale.
  std::optional<Mark> lowest_mark;  // in the panel's step
  std::optional<Exact> even_mark;   // where both are equal, between two steps; empty: nowhere on the scale
  std::optional<Decimal> highest_chance;
  struct Cell {
    Mark mark;
    Decimal chance;  // per cent
    Points gain;
  };
  std::vector<Mark> marks;       // of the harder one; rows of the table, falling
  std::vector<Decimal> chances;  // columns, rising
  std::vector<Points> table;     // expected gain, row by row
};

struct Comparison {
  Obstacles obstacles;
  std::size_t element = 0;
  std::string label;                 // "2 Undertow"
  std::vector<OptionWorth> options;  // as in the sheet
  std::vector<Duel> duels;           // the first option against each other one, the harder named first
};

Comparison compare(const Routine& routine, std::size_t element, const Wish& wish, const ForecastWish& how);

}  // namespace landdrill
