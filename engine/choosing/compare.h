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
#include "engine/choosing/duel.h"        // IWYU pragma: export
#include "engine/choosing/part_worth.h"  // IWYU pragma: export
#include "engine/routine/wish.h"
#include "engine/score/execution.h"
#include "tables/decimal.h"
#include "tables/quantity.h"

namespace landdrill {

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

struct Comparison {
  Obstacles obstacles;  // when there are any, only `element` and `label` are set beside
  std::size_t element = 0;
  std::string label;                 // "2 Undertow"
  std::vector<OptionWorth> options;  // as in the sheet
  std::vector<Duel> duels;  // the first option against each other one; none for an element with one option
};

Comparison compare(const Routine& routine, std::size_t element, const Wish& wish, const ForecastWish& how);

}  // namespace landdrill
