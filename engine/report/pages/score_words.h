// Words for the pieces of an account.
//
//   words_of(*line.rests_on)     // "run of 2026-05-07", "mean of 3 runs", "expected", "no mark yet"
//   named(line)                  // "2 Undertow", or "2 Hybrid" for an element without a title
#pragma once

#include <string>
#include <vector>

#include "engine/score/account.h"
#include "engine/score/panel.h"

namespace landdrill::report {

std::string words_of(const RestsOn& rests_on);
std::string named(const ElementLine& line);
std::string text_of(const std::optional<PanelMark>& mark);
// Whole sentences: "element 2 has no expected mark: add `expect`, or a run".
std::vector<std::string> missing_sentences(const Account& account);

}  // namespace landdrill::report
