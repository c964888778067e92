// Rows that are the same thing as aligned text, as CSV and as JSON.
//
//   Listing sets{"sets", {{"name"}, {"rows", Align::amount}}, {{"kingfisher-2026", "214"}}};
//   as_csv(sets)                     // "name,rows\nkingfisher-2026,214\n"
//   as_json({{"place", "here"}}, {sets})   // {"place": "here", "sets": [{"name": "kingfisher-2026", "rows":
//   "214"}]}
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "engine/report/grid.h"
#include "engine/report/text.h"

namespace landdrill::report {

struct Listing {
  std::string name;                 // the key in JSON
  std::vector<GridColumn> columns;  // headings as in CSV and JSON; in text with blanks for `_`
  std::vector<std::vector<std::string>> rows;
  std::size_t keys = 1;  // the first so many columns say which row it is
};

// When it is wider than the page, long texts last, in several tables one below the other, each with the key
// columns.
std::string as_text(const Listing& listing, const TextWish& wish);
std::string as_csv(const Listing& listing);
// An object: the heads (null when empty), then every listing as an array of objects.
std::string as_json(const std::vector<std::pair<std::string_view, std::string_view>>& heads,
                    const std::vector<Listing>& listings);

}  // namespace landdrill::report
