// Why a question about chances or choices has no answer, as values: engine/report/obstacle_words.h makes the sentence.
//
//   Obstacle{Obstacle::Of::elements_unmarked, {.elements = {1, 3}}}
//   // "elements 1 and 3 have no expected mark: add `expect`, or a run"
#pragma once

#include <string>
#include <vector>

#include "engine/chances/risk.h"
#include "engine/chances/spreads.h"
#include "engine/routine/wish.h"
#include "engine/score/account.h"
#include "tables/decimal.h"

namespace landdrill {

struct ObstacleFacts {
  std::vector<int> elements = {};       // their numbers
  std::vector<std::string> names = {};  // codes and titles of what it is about
  Decimal amount = {};                  // what was found
  std::int64_t most = 0;                // what is reckoned with
};
struct Obstacle {
  enum class Of {
    nothing_expected,   // no line has a mark
    elements_unmarked,  // elements
    aspect_unmarked,    // names: the aspect
    aspects_unmarked,   // names: the aspects, of which a plan needs every one
    element_unmarked,   // elements: the one; names: its title; most: in how many options
    option_unmarked,    // names: the option; elements: whose
    own_mark_missing,   // elements: one that the event does not mark
    no_spread,          // elements, names: aspects; neither where no line has a spread
    no_base,            // elements: with a chance of it; names: the kind
    all_credited_zero,  // names: the panel whose elements are weighted together
    all_may_be_zero,    // no total: every difficulty that is credited can be 0 at once
    bases_too_many,     // amount: elements that may get their base mark
    ways_too_many,      // names: the panel
    steps_too_many,     // names: the panel; amount: its step; most: its judges
    spread_too_wide,    // amount, in marks; names: where it is from; most: whole scales
    errors_too_many,    // names: the sync error; amount
    share_no_chance     // what was asked for is not between 0 and 100 %
  } of = Of::nothing_expected;
  ObstacleFacts facts = {};

  friend bool operator==(const Obstacle& a, const Obstacle& b) {
    return a.of == b.of && a.facts.elements == b.facts.elements && a.facts.names == b.facts.names &&
           a.facts.amount == b.facts.amount && a.facts.most == b.facts.most;
  }
};
using Obstacles = std::vector<Obstacle>;

// What stands in the way of a forecast.
//
//   obstacles_before(routine, risked, spreads)
//   // {{Obstacle::Of::elements_unmarked, {.elements = {1, 3}}}}

// Before anything is worked out: marks or spreads that are missing, base marks that the set does not have,
// numbers that no forecast can be made of.
Obstacles obstacles_before(const Routine& routine, const Risked& risked, const Spreads& spreads);
// Lines without a mark, elements in one.
Obstacles unmarked_lines(const Unmarked& missing);

// How many of the runs that count said something of sync errors.
std::size_t runs_with_sync(const Routine& routine, const RunWish& wish);

}  // namespace landdrill
