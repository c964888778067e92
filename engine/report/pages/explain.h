// One line of a build-up and everything below it, in plain words, down to the rows of the tables; or the lines that
// can be asked for.
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

#include "engine/report/page.h"
#include "engine/report/pages/asked.h"
#include "engine/score/account.h"
#include "engine/score/build_up.h"

namespace landdrill::report {

// The line that the operands behind the file name, of the panel after the word `panel`; the list where there are none.
Answer explain(const Asked& asked, const Routine& routine);

// `set`: the name of the value set, for the rows.
Page explain_page(Step step, std::string set);
// Every line of the estimate, and of the panel where there is one, with its value.
Page lines_page(const Account& account);

}  // namespace landdrill::report
