// The account of a routine as CSV, for a spreadsheet: one line of the report a row.
//
//   line,number,title,kind,option,declared,credited,mark,points,...
//   element,2,Undertow,hybrid,,5.25,5.25,7.25,38.0625,...
//
// Comma, LF, quotes where needed. A text that a spreadsheet would take for a formula gets a `'` in front of it.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/account.h"

namespace landdrill::report {

// The first row, then the rows of one account; several accounts may follow one header.
std::string csv_header();
std::string csv_rows(const Account& account, std::string_view file = {});

// `cells` as one row, each made safe and quoted where needed; ends in "\n".
std::string csv_row(const std::vector<std::string_view>& cells);

}  // namespace landdrill::report
