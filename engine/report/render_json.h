// A page as JSON, for other programs. The form is the first, "format": 1: keys are only added to it.
//
//   {"format": 1, "report": "score", "routine": "Harbour Lights", ..., "elements": [{"number": 1, ...
//
// A key is that of the fact, the column, the list, the tree or the section; sections with one key stand in one list, in
// their order, and so do the rows of tables with one key. Amounts are texts, so that they stay exact: "17.2500". Chances and statistics are texts to 12
// significant digits. Only numbers of things (counts, lines) are JSON numbers. What is not there is null.
#pragma once

#include <string>

#include "engine/report/json_text.h"  // IWYU pragma: export
#include "engine/report/page.h"

namespace landdrill::report {

std::string render_json(const Page& page, JsonLayout layout = JsonLayout::indented);
// A chance or statistic as programs get it: the shortest text of at most 12 significant digits, as the last ones differ
// between machines.
std::string as_number(double amount);

}  // namespace landdrill::report
