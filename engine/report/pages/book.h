// The season book: what is kept, what an import did, panels scored again, editions of value sets; what the season teaches
// (lessons.cpp) and how it went (progress.cpp).
//
//   render_text(book_list_page("book list", lines), {})
//   //   Harbour Lights, duet-free
//   //                                     version  value set
//   //     routine                          2 of 2   kingfisher-2026
//   //     panel    2026-05-09  Tarn Open   1        kingfisher-2026
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "engine/judging/lessons.h"
#include "engine/judging/progress.h"
#include "engine/report/page.h"
#include "engine/score/totals.h"

namespace landdrill::report {

// Texts, empty for what is not there.
struct BookLine {
  std::string routine, event, what, date, title, version;
  int of_version = 0;        // of a run or a panel: the version of the routine that it belongs to; 0: of none
  int routine_versions = 1;  // how many versions of the routine there are
  std::string set, kept_at;
  std::string did;  // of an import: "added", "new version", "already there"
};
// `question`: the command that asks.
Page book_list_page(std::string question, const std::vector<BookLine>& lines);

// What adding to the book did.
struct BookAdded {
  std::vector<BookLine> lines;  // none when they would be too many to read
  std::size_t added = 0, new_versions = 0, already_there = 0;
  std::vector<std::string> notes = {};  // what to look at
};
Page book_added_page(std::string question, const BookAdded& added);
// "3 added, 1 new version, 0 already there"
std::string in_words(const BookAdded& added);

// The season file as a whole: copied, put back, looked through.
Page book_backup_page(std::string_view book, std::string_view backup);
// `is_new`: it was not there.
Page book_restore_page(std::string_view book, std::string_view backup, bool is_new);
// `damage`: empty when it is sound; to people it is told as a trouble.
Page book_check_page(std::string_view book, std::string_view damage);

// A panel scored again.
struct BookScore {
  std::string routine, event, date, title, set;
  Totals totals;
  std::string note;
};
Page book_scores_page(const std::vector<BookScore>& scores);

// An edition of a value set, and what was swum under it.
struct BookEdition {
  std::size_t number = 0;
  std::string set, title, edition, kept_at, first_for;
  std::size_t routines = 0, versions = 0, runs = 0, panels = 0;
};
Page book_editions_page(const std::vector<BookEdition>& editions);

// What the season teaches about the coach's expected marks.
//
//   render_text(lessons_page(learn(lessons), back_test(lessons)), {})
//   //            elements  days  on average  95 % interval   to go by
//   //   all            42     6       -0.19  -0.35 to -0.03     -0.19
//
// With a routine: its expected marks beside the calibrated ones, and both totals, which alone are in CSV then.
Page lessons_page(const Learned& learned, const BackTest& tested, const Routine* routine = nullptr);

// How routines went over the season: a line for each run-through and each panel, the versions of a routine apart.
//
//   render_text(progress_page(seasons), {})
//   //   2026-05-09  panel  Tarn Open    21.05   7.27     1  -1.80   209.7167
//
// In full it has elements and impression apart as well.
Page progress_page(const std::vector<SeasonProgress>& seasons);

}  // namespace landdrill::report
