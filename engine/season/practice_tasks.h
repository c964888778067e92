// What can be marked for practice: the lines of the panels in a season book.
//
//   BookTasks tasks(book);
//   auto all = tasks.find({"tarn open"});        // every line of those panels, their marks hidden in them
//   auto same = tasks.of(session);               // the lines of a session, with its marks in the same order
#pragma once

#include <tuple>

#include "engine/judging/practice.h"
#include "engine/season/kept_sheets.h"
#include "tables/folder.h"
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

  // The lines of one panel, none when it cannot be scored; they live as long as this.
  Result<const std::vector<PracticeTask>*> of_panel(std::int64_t panel);

 private:
  void know_blocks();
  PracticeTask task_of(std::int64_t panel, const std::string& line);

  const Book& book_;
  KeptSheets kept_;
  using Name = std::tuple<std::string, std::string, std::string, std::string>;
  static Name name_of(const KeptBlock& panel);

  std::map<std::int64_t, KeptBlock> blocks_;  // every version
  std::map<Name, std::int64_t> latest_;       // of panels: the latest words
  std::map<std::int64_t, std::vector<PracticeTask>> panels_;
};

// Tasks and marks of a session, without those whose panel can no longer be read.
struct ComparedMarks {
  std::vector<PracticeTask> tasks;
  std::vector<Practised> done;
};
ComparedMarks compared_marks(const std::vector<PracticeTask>& tasks, const PracticeSession& session);

// How far off she was so far.
Result<std::vector<Weakness>> weak_so_far(const PracticeBook& practice, BookTasks& tasks,
                                          const std::string& trainee);

}  // namespace landdrill
