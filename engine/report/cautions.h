// What swimmers have to take care of, in whole sentences.
//
//   sentences_of({.lifts = true})      // {"Lifts: check the depth ...", "This prices a routine ..."}
//
// Common practice, no source; no limit is stated because none is published.
#pragma once

#include <string>
#include <vector>

#include "engine/score/account.h"

namespace landdrill::report {

std::vector<std::string> sentences_of(const Cautions& cautions);

}  // namespace landdrill::report
