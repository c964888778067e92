// What was done to a set, in order: imports, edits, undos and redos. Rows are only ever added.
//
//   record_edit(db, set, {cell, "1.0", "1.0", "new catalogue"}).number   // 7
//   step_to_undo(db, set)->number                                                // 7
//
// Everything here runs inside the caller's transaction and throws Refused.
#pragma once

#include <cstdint>
#include <optional>
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

struct CellEdit {
  FoundCell cell;                // as it was
  std::string after, after_raw;  // what it holds now, and the bytes
  std::string why;
};

EditRecord record_import(Database& db, SetId set, std::string_view why);
// Puts the files aside that the replacement takes the place of.
EditRecord record_replacement(Database& db, SetId set, const std::vector<TableFile>& before,
                              std::string_view why);
EditRecord record_edit(Database& db, SetId set, const CellEdit& edit);

// An edit or a replacement, with what is needed to take it back or do it again.
struct Step {
  std::int64_t number = 0;
  EditRecord::Did did = EditRecord::Did::edit;
  CellPlace place;
  std::string before_raw, after_raw;
};
// The last step that stands; none when all are undone.
std::optional<Step> step_to_undo(Database& db, SetId set);
// The step that was undone last, unless another was made in its place.
std::optional<Step> step_to_redo(Database& db, SetId set);
EditRecord record_undo(Database& db, SetId set, const Step& step, std::string_view why);
EditRecord record_redo(Database& db, SetId set, const Step& step, std::string_view why);

// The files a replacement put aside; `in_force` takes their place.
std::vector<TableFile> exchange_files(Database& db, const Step& replacement,
                                      const std::vector<TableFile>& in_force);

std::vector<EditRecord> history_of(Database& db, SetId set);
std::size_t standing_edits(Database& db, SetId set);
// When the tables in force came in.
std::string imported_at(Database& db, SetId set);

// Puts a whole set into the season file, or another in its place.
//
//   import_into(db, *read_folder("kingfisher-2026"), "first import", false)   // true: it was written
//
// Runs inside the caller's transaction and throws Refused.

// Refused when the folder that it would be exported to cannot have this name.
void refuse_bad_name(const std::string& name);
// Refused, with the loader's messages after `why`, when the set cannot be used.
void refuse_unless_loads(const TableFiles& files, const std::string& what, const std::string& why);

// False when the same bytes are there already. Other bytes are refused unless `replace`.
bool import_into(Database& db, const TableFiles& files, std::string_view why, bool replace);
// Takes the tables out and puts these files in.
void replace_tables(Database& db, SetId set, const std::vector<TableFile>& files);

// Edits one cell of a set, takes edits back, brings them back.
//
//   edit_set(db, {"kingfisher-2026", "parts", "spin-360", "value", "1.0", "new catalogue"}).before   // "0.9"
//   undo_in(db, "kingfisher-2026", "a slip of the finger").after                                     // "0.9"
//
// Runs inside the caller's transaction and throws Refused.

EditRecord edit_set(Database& db, const Edit& wish);
EditRecord undo_in(Database& db, std::string_view set, std::string_view why);
EditRecord redo_in(Database& db, std::string_view set, std::string_view why);

}  // namespace landdrill::store
