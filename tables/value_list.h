// A two-column list that the coach typed or pasted: codes of a set, and a value for each.
//
//   read_value_list({"list.csv", "Code;Wert\r\nsp-360;0,9\r\n"}, {{"SP-360"}}, diagnostics)
//   // {{"SP-360", 0.9, ...}}
//
// The columns are found by their names in several languages, else by what stands in them; the header may be
// missing. Cells are separated by comma, semicolon or tab. A row without a value is passed over. A column of
// titles is taken along where its name says that it is one.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "grammar/diagnostics.h"
#include "grammar/span.h"
#include "tables/decimal.h"

namespace landdrill {

struct ListWish {
  std::vector<std::string_view> codes;  // known ones
  bool takes_new = false;               // whether others are listed too, or complained of
};
struct ListedValue {
  std::string code;  // a known one as the set spells it, a new one as the list does
  bool is_new = false;
  std::string title;  // empty where the list has none
  Decimal value;
  std::string_view piece;  // where the value stands in the list
  std::size_t line = 0;
};

// Each code once, in the order of the list. `list.text` must outlive the result.
std::vector<ListedValue> read_value_list(const Source& list, const ListWish& wish, Diagnostics& diagnostics);

}  // namespace landdrill
