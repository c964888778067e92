// A trainee's marks from a spreadsheet, checked against the recorded panels of the book, as sessions that the
// book can keep.
//
//   PracticeImport import(book, list, "2026-05-09");
//   import.read(read_practice_list(list, "", diagnostics));
//   import.sessions[0].marks[0].mark      // 7.25
//
// What is wrong is said at its row and column of the list.
#pragma once

#include <map>
#include <tuple>
#include <unordered_map>

#include "engine/judging/practice.h"
#include "engine/season/practice_tasks.h"
#include "grammar/diagnostics.h"
#include "grammar/span.h"
#include "tables/folder.h"
#include "tables/marks_list.h"
#include "tables/store/book.h"
#include "tables/store/practice_book.h"

namespace landdrill {

class PracticeImport {
 public:
  // `today`: the last day that a practice can have been on.
  PracticeImport(const Book& book, const Source& list, std::string today)
      : book_(book), today_(std::move(today)), tasks_(book), list_(list) {}
  // Once. The rows outlive this.
  Result<void> read(const std::vector<ListedPractice>& rows);
  // Says which marks are not those that the book has.
  void compare(const std::vector<std::vector<AddedMark>>& added);

  std::vector<PracticeSession> sessions;  // in the order in which they first occur
  Diagnostics diagnostics;                // with errors the sessions are not to be kept

 private:
  void read_row(const ListedPractice& row);
  std::optional<std::int64_t> panel_of(const ListedPractice& row);
  void no_such_routine(const ListedPractice& row);
  void no_such_panel(const ListedPractice& row, const std::vector<const KeptBlock*>& of_routine);
  const PracticeTask* task_of(const ListedPractice& row, const std::vector<PracticeTask>& tasks);
  bool is_on_scale(const ListedPractice& row, const PracticeTask& task);
  bool is_on_a_day(const ListedPractice& row);
  void keep(const ListedPractice& row, const PracticeTask& task);
  void complain(std::string_view piece, Complaint complaint);

  const Book& book_;
  const std::string today_;
  BookTasks tasks_;
  const Source& list_;
  std::vector<KeptBlock> panels_;
  std::unordered_map<std::string, std::int64_t> known_panels_;         // by what a row calls them
  std::map<std::pair<std::string, std::string>, std::size_t> places_;  // of sessions, by trainee and start
  // By session, panel and line: which row gave it.
  std::map<std::tuple<std::size_t, std::int64_t, std::string>, const ListedPractice*> given_;
  std::vector<std::vector<const ListedPractice*>> rows_;  // of each session
};

// The day after a written day.
std::string day_after(const std::string& day);

}  // namespace landdrill
