// What stands on every report of choosing: the account of the routine as it is, for its title, values and
// cautions, and what the rules would object to with the options that are chosen.
//
//   Face face{account(routine, wish, std::nullopt), objections_with(routine, wish, sheet.diagnostics)};
#pragma once

#include "engine/score/account.h"
#include "grammar/diagnostics.h"

namespace landdrill::report {

struct Face : Account {
  Diagnostics objections;
};

}  // namespace landdrill::report
