// Edits one cell of a set, takes edits back, brings them back.
//
//   edit_set(db, {"kingfisher-2026", "parts", "spin-360", "value", "1.0", "new catalogue"}).before   // "0.9"
//   undo_in(db, "kingfisher-2026", "a slip of the finger").after                                     // "0.9"
//
// Runs inside the caller's transaction and throws Refused.
#pragma once

#include <string_view>

#include "tables/store/database.h"
#include "tables/store/edits.h"

namespace landdrill::store {

EditRecord edit_set(Database& db, const Edit& wish);
EditRecord undo_in(Database& db, std::string_view set, std::string_view why);
EditRecord redo_in(Database& db, std::string_view set, std::string_view why);

}  // namespace landdrill::store
