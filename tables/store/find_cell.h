// The cell that an edit names in words: table, key and column.
//
//   find_cell(files, {"kingfisher-2026", "parts", "spin-360", "value", "1.0", "new catalogue"}).place
//   // parts.csv, row 12, column 3
//
// A key is what ReadTable::key makes of a row: "duet-free execution", empty cells left out. Where that names two rows,
// `-` stands for an empty cell: "duet-free - spins". The one row of set.csv has the empty key.
#pragma once

#include <string>
#include <vector>

#include "tables/load.h"
#include "tables/store/edits.h"
#include "tables/store/kept_tables.h"

namespace landdrill::store {

struct FoundCell {
  CellPlace place;
  std::string table, key, column;  // as the set spells them
  std::string text;                // what the cell holds
  std::string raw;                 // its bytes
  char separator = ',';
};

// Throws Refused, with the nearest names, when there is no such cell.
FoundCell find_cell(const std::vector<TableFile>& files, const Edit& wish);

}  // namespace landdrill::store
