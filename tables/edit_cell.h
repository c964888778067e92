// One cell of a set, changed with the honesty that belongs to it: a number that was typed over is no longer
// published.
//
//   edit_cell(files, {"my-2026", "parts", "spin-720", "value", "1,5"}, {})->files
//   // value 1.5, source "typed in, value was 1.4 before", status memory; every other byte as it was
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "tables/folder.h"
#include "tables/load.h"

namespace landdrill {

// Two editions of a value set, row by row: what is new, gone or changed.
//
//   compare_sets(old_files, new_files).rows   // {"parts", "spin-360", changed, {{"value", "0.9", "1.0"}}}

struct CellChange {
  std::string column, before, after;
};
struct RowChange {
  enum class What { added, gone, changed };
  std::string table;
  std::string key;  // "spin-360", "duet-free execution"
  What what;
  std::vector<CellChange> cells;  // for changed
};
struct SetComparison {
  std::vector<RowChange> rows;  // by table in reading order, then in file order
};
// Numbers that are equal are no change ("0.9" and "0,90"); rows are matched by key, not by place.
SetComparison compare_sets(const TableFiles& before, const TableFiles& after);

// One edit as it is wished. `key` is what ReadTable::key makes of a row: "spin-360", "duet-free execution", empty cells
// left out; empty for the one row of `set`. Where that names two rows, `-` stands for an empty cell: "duet-free -
// spins".
struct Edit {
  std::string set, table, key, column, value;
  std::string why = {};  // free text for the history
};

// A cell of a table by place: row 0 is the header.
struct CellPlace {
  std::string file;
  std::size_t row = 0;
  std::size_t column = 0;
};
struct FoundCell {
  CellPlace place;
  std::string table, key, column;  // as the set spells them
  std::string text;                // what the cell holds
  std::string raw;                 // its bytes
  char separator = ',';
};
// The cell that an edit names; a trouble with the nearest names when there is none.
Result<FoundCell> find_cell(const std::vector<TableFile>& files, const Edit& wish);

// What the coach says about where the new value is from; empty where she says nothing.
struct Origin {
  std::string source, status;
};
struct EditedSet {
  TableFiles files;
  RowChange change;  // the wished cell first; it alone, before as after, when it says so already
  // What belongs together: first the row's source and status, then the wished cell itself, so that half of it never
  // claims too much. Only the last when the cell states no fact of the rules; none when it says so already.
  std::vector<Edit> edits;
};
// Whether the set can still be used is asked of load().
Result<EditedSet> edit_cell(TableFiles files, const Edit& wish, const Origin& origin);
// Whether an edit with this reason was made for the sake of another one: they are undone and redone together.
bool goes_with_another(std::string_view why);

}  // namespace landdrill
