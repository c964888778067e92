// Are the cells of a table what their columns say they are? Complains of every one that is not.
//
//   parts.csv:12:14: error: found "0.9x"; expected a number in the column "value" [bad-number]
//
// And the same cells as values, for those who build a value set.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "grammar/diagnostics.h"
#include "tables/columns.h"
#include "tables/decimal.h"
#include "tables/read_table.h"

namespace landdrill {

// Marks the rows that have a complaint: `broken` for a wrong number of cells, else `in_error`.
void check_cells(ReadTable& table, Diagnostics& diagnostics);

// Whether the text can be a code: one line without quotation marks.
bool may_be_code(std::string_view text);
// A whole number, also typed "2.0"; empty when it is none or outside least..most of the column.
std::optional<int> whole_from(const Column& column, std::string_view text);
// A number that is not below 0 (above 0 where the column says so).
std::optional<Decimal> number_from(const Column& column, std::string_view text);
// Why `text` is no number, for somebody who typed it: "leave the cell empty while the value is not known".
std::string number_hint(std::string_view text);

}  // namespace landdrill
