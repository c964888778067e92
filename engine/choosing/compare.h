// The options of an element side by side: what each is worth, what risk costs, where the harder one stops
// paying.
//
//   Comparison two = compare(routine, 1, wish, {});
//   two.options[0].expected          // 33.9300, exact: as declared and on the base mark, by their chances
//   two.duels[0].lowest_mark         // 6.75: below it the safer option gives more
//
// All numbers but the spread are exact, at the marks the coach expects, and rounded once, half up to four
// places (or to the event's, when it has more); a change is the difference of two rounded totals, so changes
// add up. What an option is worth is always what the whole routine's expected total moves by, so it holds for
// every scheme.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/chances/forecast.h"
#include "engine/chances/obstacle.h"
#include "engine/chances/risk.h"
#include "engine/routine/wish.h"
#include "engine/score/execution.h"
#include "tables/decimal.h"
#include "tables/quantity.h"

namespace landdrill {

// One part of an option: what it adds, and what taking one of it out or exchanging one of it does to the
// expected total, at the same mark and chance.
struct PartWorth {
  std::string code;
  int times = 1;
  std::optional<Difficulty>
      adds;  // declared difficulty with it less without one of it; empty: cannot be worked out
  std::optional<Points> dropping;  // change of the expected total, 0 or less as a rule
  struct Exchange {
    std::string code;     // the next part of the family with a lower or higher value that may stand there
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
  // Standard deviation of `expected`, as in the forecast, in points to a ten-thousandth; empty where there is
  // no forecast. Where the event weights together, of points that are not rounded yet.
  std::optional<Decimal> spread;
  std::vector<PartWorth> parts;  // empty where the difficulty is stated
  std::vector<std::string>
      breaks;  // limits within the element, in words with their rows; a plan leaves it out
};

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

struct Comparison {
  Obstacles obstacles;  // when there are any, only `element` and `label` are set beside
  std::size_t element = 0;
  std::string label;                 // "2 Undertow"
  std::vector<OptionWorth> options;  // as in the sheet
  std::vector<Duel> duels;  // the first option against each other one; none for an element with one option
};

Comparison compare(const Routine& routine, std::size_t element, const Wish& wish, const ForecastWish& how);

}  // namespace landdrill
