// The tables of a page as CSV, for a spreadsheet: one header, and a row for each row of a table that is in it.
//
//   what,points,chance
//   target,,0.4
//
// A row fills the columns it has, with what its table gives every row and the facts around it; the others stay empty.
// Comma, LF, quotes where needed. A text that a spreadsheet would take for a formula gets a `'` in front of it.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/report/page.h"

namespace landdrill::report {

std::string render_csv(const Page& page);
// The same in two pieces, for several pages of one question below one header.
std::string csv_header(const Page& page);
std::string csv_rows(const Page& page);

// `texts` as one row, each made safe and quoted where needed; ends in "\n".
std::string csv_row(const std::vector<std::string_view>& texts);

}  // namespace landdrill::report
