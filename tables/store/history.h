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

#include "tables/load.h"
#include "tables/store/database.h"
#include "tables/store/edits.h"
#include "tables/store/find_cell.h"
#include "tables/store/kept_tables.h"

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

}  // namespace landdrill::store
