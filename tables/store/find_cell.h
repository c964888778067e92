// The cell that an edit names in words: table, key and column.
//
//   find_cell(files, {"kingfisher-2026", "parts", "spin-360", "value", "1.0", "new catalogue"}).place
//   // parts.csv, row 12, column 3
//
// A key is what ReadTable::key makes of a row: "duet-free execution", empty cells left out. Where that names two rows,
// `-` stands for an empty cell: "duet-free - spins". The one row of set.csv has the empty key.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "tables/load.h"
#include "tables/store/kept_tables.h"

namespace landdrill {

// What is done to a value set in the season file: one edit as it is wished, and one line of its history.
//
//   Edit{"kingfisher-2026", "parts", "spin-360", "value", "1.0", "new catalogue"}

// `key` is what ReadTable::key makes of a row: "spin-360", "duet-free execution"; empty for the one row of
// `set`.
struct Edit {
  std::string set, table, key, column, value;
  std::string why;  // free text for the history
};

// One line of a set's history. An undo or redo is a line of its own: it names its `target`, and the same
// cell.
struct EditRecord {
  enum class Did { import, replace, edit, undo, redo };
  std::int64_t number = 0;  // 0: nothing was written, the cell held the value already
  std::string set, at;      // at: UTC, "2026-04-14T18:03:11Z"
  Did did = Did::edit;
  std::int64_t target = 0;                        // for undo and redo: the number of the edit or replacement
  std::string table, key, column, before, after;  // empty when whole files came in
  std::string why;
  bool undone = false;  // an edit or replacement that does not stand at present
};

}  // namespace landdrill

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
