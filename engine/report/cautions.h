// What swimmers have to take care of, in whole sentences.
//
//   sentences_of(account.cautions)      // {"Lifts and throws: agree on the call ...", "This prices a routine ..."}
//
// The words are rows of the set or of tables/data/usual-cautions.csv.
#pragma once

#include <string>
#include <vector>

#include "engine/score/account.h"

namespace landdrill::report {

std::vector<std::string> sentences_of(const Cautions& cautions);

}  // namespace landdrill::report
