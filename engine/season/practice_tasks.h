// What can be marked for practice: the lines of the panels in a season book.
//
//   BookTasks tasks(book);
//   auto all = tasks.find({"tarn open"});        // every line of those panels, their marks hidden in them
//   auto same = tasks.of(session);               // the lines of a session, with its marks in the same order
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <tuple>
#include <unordered_map>
#include <utility>
#include <vector>

#include "engine/judging/practice.h"
#include "engine/season/kept_sheets.h"
#include "grammar/diagnostics.h"
#include "grammar/span.h"
#include "tables/folder.h"
#include "tables/marks_list.h"
#include "tables/store/book.h"
#include "tables/store/practice_book.h"

namespace landdrill {

class BookTasks {
 public:
  explicit BookTasks(const Book& book) : book_(book), kept_(book) {}

  // Panels of the wish that can be scored with their edition; others are passed over.
  Result<std::vector<PracticeTask>> find(BookWish wish);
  // With the latest marks of each panel, where it still has the line; `corrected` where they are others than
  // those that the session was made of. Empty where a panel can no longer be read: its task has no rule.
  Result<std::vector<PracticeTask>> of(const PracticeSession& session);

  // Says of each line whether this trainee met it in a session that began before `started_at`, where it was told how the
  // panel marked; a line of a session that is paused counts too, unless nothing became of it yet.
  Result<void> say_which_come_again(std::vector<PracticeTask>& tasks,
                                    std::span<const PracticeSession> sessions, std::string_view started_at);

  // The lines of one panel, none when it cannot be scored; they live as long as this. Throws Refused.
  const std::vector<PracticeTask>& of_panel(std::int64_t panel);

 private:
  void know_blocks();
  std::int64_t latest_of(std::int64_t panel) const;
  PracticeTask task_of(std::int64_t panel, const std::string& line);

  const Book& book_;
  KeptSheets kept_;
  using Name = std::tuple<std::string, std::string, std::string, std::string>;
  static Name name_of(const KeptBlock& panel);

  std::map<std::int64_t, KeptBlock> blocks_;  // every version
  std::map<Name, std::int64_t> latest_;       // of panels: the latest words
  std::map<std::int64_t, std::vector<PracticeTask>> panels_;
};

// The lines of a session; `all`: what else this trainee did.
Result<std::vector<PracticeTask>> tasks_of(const PracticeSession& session,
                                           std::span<const PracticeSession> all, BookTasks& tasks);

// Tasks and marks of a session, without those whose panel can no longer be read.
struct ComparedMarks {
  std::vector<PracticeTask> tasks;
  std::vector<Practised> done;
};
ComparedMarks compared_marks(const std::vector<PracticeTask>& tasks, const PracticeSession& session);

// All that she marked in finished sessions, oldest first.
Result<ComparedMarks> marks_so_far(const PracticeBook& practice, BookTasks& tasks,
                                   const std::string& trainee);
// How far off she was so far.
Result<std::vector<Weakness>> weak_so_far(const PracticeBook& practice, BookTasks& tasks,
                                          const std::string& trainee);

// The marks of an expert in the place of the panels': those lines that both marked. Her latest mark of a line counts.
ComparedMarks beside_expert(const ComparedMarks& marks, const ComparedMarks& expert);

// A trainee's marks from a spreadsheet, checked against the recorded panels of the book, as sessions that the
// book can keep.
//
//   PracticeImport import(book, list, "2026-05-09");
//   import.read(read_practice_list(list, "", diagnostics));
//   import.sessions[0].marks[0].mark      // 7.25
//
// What is wrong is said at its row and column of the list.

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
  void complain(std::string_view piece, Complaint complaint) {
    diagnostics.complain(list_, piece, std::move(complaint));
  }

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
