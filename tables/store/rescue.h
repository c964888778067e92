// What can still be read of a damaged book, and the names of what cannot.
//
//   Rescued saved = rescue(db);
//   saved.sheets[0]      // routine "Harbour Lights" ...
//   saved.lost[0]        // the panel 2026-05-09 "Tarn Open" of Harbour Lights
//
// Reads entry by entry, so that one damaged page costs what stands on it and no more.
#pragma once

#include <string>
#include <tuple>
#include <vector>

#include "tables/store/database.h"
#include "tables/store/kept_blocks.h"

namespace landdrill::store {

Rescued rescue(Database& db);

// "the panel 2026-05-09 \"Tarn Open\" of Harbour Lights"
std::string name_of_entry(Database& db, std::int64_t id);
// The names of texts that are no longer what was kept: of entries, and of files of editions.
std::vector<std::string> damaged_texts(Database& db);

// An entry of the book, for telling another book what this one knows.
struct BookEntry {
  std::string what, date, title;
  std::int64_t id = 0, routine = 0, version = 0;
  std::int64_t home =
      0;  // the version of the routine it belongs to, by its id: later versions have greater ones
  std::string text;
  auto place() const { return std::tie(what, date, title); }
};

// Takes their home from the words of runs and panels that a book need not be told to end up with the same, as of
// one panel, with homes and words: {1, "a"}, {2, "b"}, {1, "c"}: the second. Those of one name follow each other,
// oldest first.
void leave_out_what_need_not_be_told(std::vector<BookEntry>& entries);

// The routine with the first words of all that was swum, then with the second of what has some, and so on.
std::vector<std::string> sheets_of(const std::string& routine, const std::vector<BookEntry>& swum);

}  // namespace landdrill::store
