// What comes of a sheet under a value set: a routine, or what is wrong and which values are missing.
//
//   resolved.gaps[0]     // {"parts", "2rb", "value"}
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "engine/routine/routine.h"
#include "grammar/diagnostics.h"

namespace landdrill {

// A value the sheet needs and the set does not have yet.
struct Gap {
  std::string_view table, key, column;  // "parts", "2rb", "value"
};

struct Resolved {
  std::optional<Routine> routine;
  Diagnostics diagnostics;
  std::vector<Gap> gaps;  // each once, in the order of the sheet
};

}  // namespace landdrill
