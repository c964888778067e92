// What an account says beside its numbers: marks that are missing, cautions, and how far its values can be
// trusted.
//
//   cautions(routine, timing)
//   // {"Lifts: check the depth ...", "Breath-hold: ...", "This prices a routine ..."}
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

Unmarked unmarked(const Routine& routine, const Showing& showing);
// "element 2 has", "elements 1, 3 and 5 have", or nothing: what a sentence can start with.
std::string elements_have(const std::vector<int>& numbers);
// "element 2 has no marks, nor has choreography"; empty when nothing is missing.
std::string in_words(const Unmarked& missing);

// Whole sentences for what the routine holds: lifts, throws, time under water. Common practice, no source; no
// limit is stated because none is published.
std::vector<std::string> cautions(const Routine& routine, const Timing& timing);

// How many of the rows the account rests on have a status, and which they are.
struct StatusCount {
  Status status;
  std::vector<std::string> rows;  // "parts spin-720"
};
// The rows that both build-ups rest on, each once, by status: the least trustworthy first. `recorded` may be
// nullptr.
std::vector<StatusCount> statuses(const Step& estimate, const Step* recorded);

}  // namespace landdrill
