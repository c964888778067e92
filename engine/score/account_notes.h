// What an account says beside its numbers: marks that are missing, cautions, and how far its values can be
// trusted.
//
//   cautions(routine, timing)      // {"Lifts: check the depth ...", "Breath-hold: ...", "This prices a
//   routine ..."}
#pragma once

#include <string>
#include <vector>

#include "engine/routine/timing.h"
#include "engine/score/account.h"
#include "engine/score/score.h"

namespace landdrill {

Unmarked unmarked(const Routine& routine, const Showing& showing);
// Whole sentences for what the routine holds: lifts, throws, time under water. Common practice, no source; no
// limit is stated because none is published.
std::vector<std::string> cautions(const Routine& routine, const Timing& timing);

// The rows that both build-ups rest on, each once, by status: the least trustworthy first. `recorded` may be
// nullptr.
std::vector<StatusCount> statuses(const Step& estimate, const Step* recorded);

}  // namespace landdrill
