// What is wrong with a sheet, and which limits its routine breaks.
//
//   harbour.sheet: Harbour Lights: 1 error, 2 broken limits
#pragma once

#include <string_view>

#include "engine/report/page.h"
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

}  // namespace landdrill::report
