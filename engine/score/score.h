// What a routine scores on one occasion: shown -> points. Plain numbers; build_up.h tells the story of them.
//
//   Showing estimate = expected(routine, {});
//   score(routine, estimate).total        // 187.3425, or empty when marks are missing
#pragma once

#include <optional>
#include <vector>

#include "engine/routine/base_mark.h"
#include "engine/routine/routine.h"
#include "engine/routine/wish.h"
#include "engine/score/execution.h"
#include "engine/score/panel.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {

// How one element was shown: with which difficulty it is credited, and the kept marks.
struct ShownElement : ShownDifficulty {
  std::optional<KeptMarks> marks = {};  // empty: nobody marked it
  std::vector<JudgeMark> judges = {};   // of a panel, as they sat
  ExpectedMark rests_on = {};           // what is expected; of a panel, nothing
};
struct ShownAspect {
  const PanelRule* rule = nullptr;
  std::optional<KeptMarks> marks = {};
  std::vector<JudgeMark> judges = {};
  const Run* run = nullptr;  // that showed what is expected; nullptr for none
};
// Everything that goes into a total, on one occasion: expected by the coach or recorded from a panel.
struct Showing {
  std::vector<ShownElement> elements;  // one for each element of the routine
  std::vector<ShownAspect> aspects;    // one for each aspect marked once per routine
  std::vector<SyncUse> sync;
  std::vector<PenaltyUse> penalties;
};

Showing expected(const Routine& routine, const Wish& wish);
// The options of a recorded panel are those of `wish`: what was declared that day.
Showing recorded(const Routine& routine, const RecordedPanel& panel, const Wish& wish);

// Elements whose marks are weighted by difficulty have points together, under their rule.
struct WeightedPoints {
  const PanelRule* rule = nullptr;
  std::optional<Points> points;  // empty: every credited difficulty is 0
};

struct Score {
  std::vector<std::optional<Points>>
      elements;                          // empty for an element that is weighted, not marked, or not scored
  std::vector<WeightedPoints> weighted;  // one for each rule that weights by difficulty
  std::vector<std::optional<Points>> aspects;  // in the order of Showing::aspects
  Points sync, penalties;                      // taken off: 0 or more
  Difficulty declared, credited;               // sums over the elements
  Points so_far;                               // the sum of what is there
  std::optional<Points> total;                 // empty while any mark is missing
};
Score score(const Routine& routine, const Showing& showing);
// A showing beside what it comes to, for those who tell of both.
struct Scored {
  Showing showing;
  Score score;
};
Scored scored(const Routine& routine, Showing showing);
// What the element at `index`, with those that are weighted together with it, adds to the score: nothing while it
// has no points. All else being equal, the score changes by what this changes by.
Points share_of(const Routine& routine, const Showing& showing, std::size_t index);

// Decimal places with which the points of this event are written: the most that one of its panels has.
int places_of(const Routine& routine);

}  // namespace landdrill
