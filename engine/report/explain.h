// One line of a build-up and everything below it, in plain words, down to the rows of the tables.
//
//   element 2 Undertow: 38.0625
//     = 7.25 x 5.25 x 1
//     difficulty: 5.25
//       = 0.5 + 4.5 + 0.1 * max(0, 4 - 2) ...
//       part spin-720: 1.4
//         kingfisher-2026, parts.csv line 12 [1]
//   [1] invented: made up for the demo
#pragma once

#include <string>
#include <string_view>

#include "engine/build_up.h"
#include "engine/report/text.h"

namespace landdrill::report {

// `set`: the name of the value set, for the rows.
std::string explain(const Step& step, std::string_view set, const TextWish& wish);

// What can be asked for: every path below `step`, one a line, with its value. For "no such line" messages and lists.
std::string explainable(const Step& step, const TextWish& wish);

}  // namespace landdrill::report
