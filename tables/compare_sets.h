// Two editions of a value set, row by row: what is new, gone or changed.
//
//   compare_sets(old_files, new_files).rows   // {"parts", "spin-360", changed, {{"value", "0.9", "1.0"}}}
#pragma once

#include <string>
#include <vector>

#include "tables/load.h"

namespace landdrill {

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

}  // namespace landdrill
