// What an account says beside its numbers: marks that are missing, cautions, and how far its values can be
// trusted.
//
//   cautions(routine, timing).lifts      // true: someone is lifted
#pragma once

#include <string>
#include <vector>

#include "engine/routine/timing.h"
#include "engine/score/account.h"
#include "engine/score/score.h"

namespace landdrill {

Unmarked unmarked(const Routine& routine, const Showing& showing);
Cautions cautions(const Routine& routine, const Timing& timing);

// The rows that both build-ups rest on, each once, by status: the least trustworthy first. `recorded` may be
// nullptr.
std::vector<StatusCount> statuses(const Step& estimate, const Step* recorded);

}  // namespace landdrill
