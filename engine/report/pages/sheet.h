// One sheet looked into: what is wrong with it and which limits its routine breaks, the sheet tidied, and how a line of
// its score comes about.
//
//   check_page({"harbour.sheet", "Harbour Lights", messages})   // harbour.sheet: Harbour Lights: 1 error, 2 broken limits
#pragma once

#include <string>
#include <string_view>

#include "engine/report/page.h"
#include "engine/report/pages/asked.h"
#include "engine/score/account.h"
#include "engine/score/build_up.h"
#include "grammar/diagnostics.h"
#include "grammar/print.h"

namespace landdrill::report {

struct Checked {
  std::string_view file, routine;  // routine: its title, may be empty
  const Diagnostics& messages;
  bool without_set = false;  // nothing could be checked against its values
  bool ok() const { return messages.ok() && messages.warnings() == 0 && !without_set; }
};
Page check_page(const Checked& sheet);

// A sheet that is tidied (grammar/print.h), or left as it is for its mistakes.
//
//   tidy_page({"duet.sheet", text, tidied, TidiedSheet::Tell::written})   // duet.sheet: tidied

struct TidiedSheet {
  std::string_view file, before;
  const Tidied& now;
  enum class Tell { sheet, name, written };  // to people: its text, or which one was not tidy
  Tell tell = Tell::sheet;
  bool was_tidy() const { return now.messages.ok() && now.text == before; }
};
Page tidy_page(const TidiedSheet& sheet);

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

// The line that the operands behind the file name, of the panel after the word `panel`; the list where there are none.
Answer explain(const Asked& asked, const Routine& routine);

// `set`: the name of the value set, for the rows.
Page explain_page(Step step, std::string set);
// Every line of the estimate, and of the panel where there is one, with its value.
Page lines_page(const Account& account);

}  // namespace landdrill::report
