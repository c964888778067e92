// The account of a routine as CSV, for a spreadsheet: one line of the report a row.
//
//   file,routine,panel,line,number,title,kind,option,weight,declared,...
//   harbour.sheet,Harbour Lights,,element,2,Undertow,Hybrid,,,5.25,...
//
// Comma, LF, quotes where needed. A text that a spreadsheet would take for a formula gets a `'` in front of
// it.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/score/account.h"
#include "engine/report/render_csv.h"

namespace landdrill::report {

// The first row, then the rows of one account; several accounts may follow one header.
std::string csv_header();
std::string csv_rows(const Account& account, std::string_view file = {});

}  // namespace landdrill::report
