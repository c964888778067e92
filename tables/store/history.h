// What was done to a set, in order: imports, edits, undos and redos. Rows are only ever added.
//
//   edit_set(db, {"kingfisher-2026", "parts", "spin-360", "value", "1.0", "new catalogue"});
//   step_in(db, "kingfisher-2026", EditRecord::Did::undo, "a slip of the finger").after      // "0.9"
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "tables/edit_cell.h"
#include "tables/load.h"
#include "tables/store/database.h"
#include "tables/store/kept_tables.h"

namespace landdrill {

// One line of a set's history. An undo or redo is a line of its own: it names its `target`, and the same cell.
struct EditRecord {
  enum class Did { import, replace, edit, undo, redo };
  std::int64_t number = 0;
  std::string set, at;  // at: UTC, "2026-04-14T18:03:11Z"
  Did did = Did::edit;
  std::int64_t target = 0;                        // for undo and redo: the number of the edit or replacement
  std::string table, key, column, before, after;  // empty when whole files came in
  std::string why;
  bool undone = false;  // an edit or replacement that does not stand at present
};

}  // namespace landdrill

namespace landdrill::store {

// All that follows runs inside the caller's transaction and throws Refused.

// Refused when the folder that it would be exported to cannot have this name.
void refuse_bad_name(const std::string& name);
// Refused, with the loader's messages after `why`, when the set cannot be used.
void refuse_unless_loads(const TableFiles& files, const std::string& what, const std::string& why);

// Puts a whole set into the season file, or another in its place. False when the same bytes are there already. Other
// bytes are refused unless `replace`.
bool import_into(Database& db, const TableFiles& files, std::string_view why, bool replace);

// Writes nothing when the cell holds the value already.
void edit_set(Database& db, const Edit& wish);
// Undo: takes the last step back that stands. Redo: brings back the one that was undone last, unless another was made
// in its place.
EditRecord step_in(Database& db, std::string_view set, EditRecord::Did undo_or_redo, std::string_view why);

std::vector<EditRecord> history_of(Database& db, SetId set);
std::size_t standing_edits(Database& db, SetId set);
// When the tables in force came in.
std::string imported_at(Database& db, SetId set);

}  // namespace landdrill::store
