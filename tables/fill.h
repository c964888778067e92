// Filling the gaps of a set from a two-column list that the coach typed or pasted: code, value.
//
//   Code;Wert\r\nSP-360;0,9\r\n      ->   parts.csv, row SP-360, value 0.9
//
// Header names are forgiving, or missing; comma, semicolon or tab; decimal point or comma. A value that is
// there already and differs is a conflict, not overwritten unless asked. Codes that the set does not have are
// an error, or become parts of a family that is told.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "grammar/diagnostics.h"
#include "grammar/span.h"
#include "tables/decimal.h"
#include "tables/load.h"
#include "tables/value_set.h"

namespace landdrill {

struct FillWish {
  bool overwrite = false;           // replace values that differ
  std::string source = "typed in";  // goes into the row's source
  Status status = Status::memory;   // goes into the row's status
  std::string family = {};          // of the codes that the set does not have; empty: they are an error
};

struct Filled {
  TableFiles files;                        // with parts.csv changed; every other byte as before
  std::vector<std::string> filled;         // codes that got a value
  std::vector<std::string> added;          // codes that are new in the set
  std::vector<std::string> unchanged;      // codes that had this value already
  std::vector<std::string> still_missing;  // codes of the set that have no value yet
  Diagnostics diagnostics;                 // with errors nothing is changed
};
Filled fill(const TableFiles& files, const Source& list, const FillWish& wish);

// A two-column list that the coach typed or pasted: codes of a set, and a value for each.
//
//   read_value_list({"list.csv", "Code;Wert\r\nsp-360;0,9\r\n"}, {{"SP-360"}}, diagnostics)
//   // {{"SP-360", 0.9, ...}}
//
// The columns are found by their names in several languages, else by what stands in them; the header may be
// missing. Cells are separated by comma, semicolon or tab. A row without a value is passed over. A column of
// titles is taken along where its name says that it is one.

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
