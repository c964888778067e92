// The story of a total: the tree of steps that leads to it, each with its label, inputs, rule and value.
//
//   total 187.3425
//     element 2  "Undertow"  23.1000        = 7.5 x 3.85 x 0.8
//       difficulty 3.85                     = base + sum(parts): 0.5 + 3.35
//         part thrust-high 0.9              parts.csv line 12, "invented for ..."
//
// Every number that a report prints is the value of a step, or of the timing or the bridge beside it.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/routine/routine.h"
#include "engine/routine/wish.h"
#include "engine/score/mark_story.h"  // IWYU pragma: export
#include "engine/score/score.h"
#include "tables/value_set.h"

namespace landdrill {

// Of an estimate or of a panel, then with each judge's mark. `score` is score(routine, showing).
Step build_up(const Routine& routine, const Wish& wish, const Showing& showing, const Score& score);

}  // namespace landdrill
