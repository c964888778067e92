// What can still be read of a damaged book, and the names of what cannot.
//
//   Rescued saved = rescue(db);
//   saved.sheets[0]      // routine "Harbour Lights" ...
//   saved.lost[0]        // the panel 2026-05-09 "Tarn Open" of Harbour Lights
//
// Reads entry by entry, so that one damaged page costs what stands on it and no more.
#pragma once

#include "tables/store/database.h"
#include "tables/store/kept_blocks.h"

namespace landdrill::store {

Rescued rescue(Database& db);

// "the panel 2026-05-09 \"Tarn Open\" of Harbour Lights"
std::string name_of_entry(Database& db, std::int64_t id);
// The names of texts that are no longer what was kept: of entries, and of files of editions.
std::vector<std::string> damaged_texts(Database& db);

}  // namespace landdrill::store
