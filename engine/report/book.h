// The season book as a list: what is kept, and what an import did.
//
//   book_list(lines, Format::text, {})
//   //   Harbour Lights, duet-free
//   //                                     version  value set
//   //     routine                          2 of 2   kingfisher-2026
//   //     panel    2026-05-09  Tarn Open   1        kingfisher-2026
//
// Computes nothing.
#pragma once

#include <string>
#include <vector>

#include "engine/report/values.h"

namespace landdrill::report {

// Texts, empty for what is not there.
struct BookLine {
  std::string routine, event, what, date, title, version;
  std::string of_version;        // of a run or a panel: the version of the routine that it belongs to
  std::string routine_versions;  // how many versions of the routine there are
  std::string set, kept_at;
  std::string did;  // of an import: "added", "new version", "already there"
};
std::string book_list(const std::vector<BookLine>& lines, Format format, const TextWish& wish);

// A run or a panel scored again: exact texts, empty for what is not there.
struct BookScore {
  std::string routine, event, what, date, title, set, estimate, recorded, difference, announced, note;
};
std::string book_scores(const std::vector<BookScore>& scores, Format format, const TextWish& wish);

// An edition of a value set, and what was swum under it: counts as text.
struct BookEdition {
  std::string number, set, title, edition, kept_at, kept_on;  // kept_on: the day alone
  std::string first_for, routines, versions, runs, panels;
};
std::string book_editions(const std::vector<BookEdition>& editions, Format format, const TextWish& wish);

}  // namespace landdrill::report
