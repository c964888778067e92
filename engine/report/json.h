// The account of a routine as JSON, for other programs.
//
//   {"routine": "Harbour Lights", ..., "total": "213.6125", "elements": [{"number": 1, "points": "17.2500",
//   ...
//
// Amounts are strings, so that they stay exact: "17.2500". Only numbers of things (counts, lines) are JSON
// numbers. What is not there is null. Keys always come in the same order, and all of them always come.
#pragma once

#include <string>

#include "engine/score/account.h"
#include "engine/report/render_json.h"
#include "grammar/diagnostics.h"

namespace landdrill::report {

// `file`: the sheet's, may be empty.
std::string account_json(const Account& account, const Diagnostics& objections = {},
                         std::string_view file = {}, JsonLayout layout = JsonLayout::indented);
// {"errors": 1, "warnings": 0, "messages": [{"file": ..., "line": 9, "column": 25, "code": "unknown-part",
// ...
std::string diagnostics_json(const Diagnostics& diagnostics, JsonLayout layout = JsonLayout::indented);

}  // namespace landdrill::report
