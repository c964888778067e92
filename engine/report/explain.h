// One line of a build-up and everything below it, in plain words, down to the rows of the tables.
//
//   element 2 Undertow: 38.0000
//     = (28.5 / 3) x 4.00 x 1, rounded half-up to 4 places
//     declared difficulty: 4.00
//       part spin-720: 1.40 (Spin down through 720 degrees)
//         from parts.csv line 12 [1]
//   ...
//   [1] invented: invented for the Kingfisher demo league
#pragma once

#include <string>
#include <string_view>

#include "engine/score/build_up.h"
#include "engine/report/text.h"

namespace landdrill::report {

// `set`: the name of the value set, for the rows.
std::string explain(const Step& step, std::string_view set, const TextWish& wish);

}  // namespace landdrill::report
