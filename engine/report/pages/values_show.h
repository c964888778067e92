// What a value set says: all of it, one table, or one row with what its columns mean.
//
//   values_show_page(files, "parts", "spin-360")
//
// Works on the tables as they are written, so nothing that stands in a file is left out.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/report/pages/asked.h"
#include "tables/load.h"

namespace landdrill::report {

// `row`: the key of a row of the table ("spin-360", "duet-free execution"); either may be empty: all of them. CSV of
// a whole set is its first table only: its files are CSV already.
Answer values_show_page(const TableFiles& files, std::string_view table, std::string_view row);
// The keys of the rows of a table.
std::vector<std::string> row_keys(const TableFiles& files, std::string_view table);

}  // namespace landdrill::report
