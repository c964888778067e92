// What is wrong with a sheet, and which limits its routine breaks.
//
//   harbour.sheet: Harbour Lights: 1 error, 2 broken limits
#pragma once

#include <string_view>

#include "engine/report/page.h"
#include "grammar/diagnostics.h"

namespace landdrill::report {

struct Checked {
  std::string_view file, routine;  // routine: its title, may be empty
  const Diagnostics& messages;
  bool without_set = false;  // nothing could be checked against its values
  bool ok() const { return messages.ok() && messages.warnings() == 0 && !without_set; }
};
Page check_page(const Checked& sheet);

}  // namespace landdrill::report
