// Ten made-up routines for checks of the forecast: every way of counting, from calm to absurd spreads.
#pragma once

#include <string>
#include <vector>

#include "tests/unit/kit/kit.h"

namespace landdrill {

struct MadeUpRoutine {
  std::string set;   // "pond", or a shipped one
  std::string text;  // of the sheet
  std::string target;
};
const std::vector<MadeUpRoutine>& made_up_routines();

}  // namespace landdrill
