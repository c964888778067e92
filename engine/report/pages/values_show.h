// What a value set says: all of it, one table, or one row with what its columns mean.
//
//   values_show_page(files, {"parts", "spin-360"})
//
// Works on the tables as they are written, so nothing that stands in a file is left out.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/report/page.h"
#include "tables/load.h"

namespace landdrill::report {

// Of a set: all of it, one table, or one row of a table by its key ("spin-360", "duet-free execution").
struct ShowWish {
  std::string_view table, row;
};
// Nothing when the set has no such table or row. CSV of a whole set is not offered: its files are that
// already; it is then the first table only.
std::optional<Page> values_show_page(const TableFiles& files, const ShowWish& show);
// The keys of the rows of a table: for "no such row" messages.
std::vector<std::string> row_keys(const TableFiles& files, std::string_view table);

}  // namespace landdrill::report
