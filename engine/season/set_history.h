// The history of a value set in the season file as a coach counts it: a value with its source and status is one change.
//
//   undo_change(*season, "club-2026")->cells   // {{"value", "1.0", "0.9"}, {"status", "memory", "published"}, ...}
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "tables/compare_sets.h"
#include "tables/folder.h"
#include "tables/store/season.h"

namespace landdrill {

// Takes back the last change, or brings back the one that was undone last: the cell, then what was changed in its row
// for its sake. Without a table when all tables were replaced.
Result<RowChange> undo_change(Season& season, const std::string& set);
Result<RowChange> redo_change(Season& season, const std::string& set);

// A change of source or status that only goes with the change of a value; or the undo or redo of one.
bool is_companion(const EditRecord& record, const std::vector<EditRecord>& all);
// The edits that stand, without companions.
std::size_t standing_changes(const std::vector<EditRecord>& all);

}  // namespace landdrill
