// One cell of a set, changed with the honesty that belongs to it: a number that was typed over is no longer
// published.
//
//   change_of({"my-2026", "parts", "spin-720", "value", "1,5", ""}, files, {})
//   // value 1.5, source "typed in ...", status memory
#pragma once

#include <string>
#include <vector>

#include "tables/folder.h"
#include "tables/load.h"
#include "tables/store/season.h"

namespace landdrill {

// What the coach says about where the new value is from; empty where she says nothing.
struct Origin {
  std::string source, status;
};

// The edits that belong together: first the row's source and status, then the wished cell itself, so that
// half of it never claims too much. Only the last when the cell states no fact of the rules.
Result<std::vector<Edit>> change_of(const Edit& wish, const TableFiles& files, const Origin& origin);
// Whether an edit was made for the sake of another one: they are undone and redone together.
bool goes_with_another(const EditRecord& record);

// `files` with the cell changed, every other byte as before; what it held.
Result<std::string> change_cell(TableFiles& files, const Edit& edit);

}  // namespace landdrill
