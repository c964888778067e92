// What an account says beside its numbers: marks that are missing, cautions, and how far its values can be
// trusted.
//
//   cautions(routine, timing).lifts      // true: someone is lifted
#pragma once

#include <string>
#include <vector>

#include "engine/routine/timing.h"
#include "engine/score/score.h"
#include "engine/score/step.h"
#include "tables/value_set.h"

namespace landdrill {

// What a showing has no marks for.
struct Unmarked {
  std::vector<int> elements;         // their numbers
  std::vector<std::string> aspects;  // their codes
  bool nothing_is_marked = false;    // though something should be
};

// What the routine holds that swimmers have to take care of.
struct Cautions {
  bool lifts = false, throws = false, under_water = false;
};

Unmarked unmarked(const Routine& routine, const Showing& showing);
Cautions cautions(const Routine& routine, const Timing& timing);

// How many of the rows the account rests on have a status, and which they are.
struct StatusCount {
  Status status;
  std::vector<std::string> rows;  // "parts spin-720"
};
// The rows that both build-ups rest on, each once, by status: the least trustworthy first. `recorded` may be
// nullptr.
std::vector<StatusCount> statuses(const Step& estimate, const Step* recorded);

}  // namespace landdrill
