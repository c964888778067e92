// The dialogue of a practice session: asks for a mark, line by line, and keeps each at once.
//
//   Marking marking(call, practice, session, tasks, "landdrill practice start ... --session 2");
//   marking.run();      // Exit::ok, also when she paused: then marking.finished() is false
#pragma once

#include "engine/cli/call.h"
#include "engine/cli/exit.h"
#include "engine/cli/keyboard.h"
#include "engine/judging/practice.h"
#include "engine/season/practice_tasks.h"
#include "tables/store/practice_book.h"

namespace landdrill::cli {

class Marking {
 public:
  // `tasks`: as many as the session has lines. `go_on`: the command that goes on with it when it is paused.
  Marking(Call& call, PracticeBook& book, PracticeSession session, std::vector<PracticeTask> tasks,
          std::string go_on)
      : call_(call),
        book_(book),
        session_(std::move(session)),
        tasks_(std::move(tasks)),
        go_on_(std::move(go_on)) {}

  Exit run();
  bool finished() const { return at_ >= tasks_.size(); }
  bool interrupted() const { return interrupted_; }  // by Ctrl-C
  const PracticeSession& session() const { return session_; }
  const std::vector<PracticeTask>& tasks() const { return tasks_; }

 private:
  void say(std::string_view text);
  std::size_t lines_left() const;
  Exit paused();
  void show_task();
  bool ask();
  std::optional<Keyboard::Clock::time_point> time_limit() const;
  void show_help();
  void go_back();
  bool keep(const KeptMark& mark, std::size_t next);

  Call& call_;
  PracticeBook& book_;
  PracticeSession session_;
  std::vector<PracticeTask> tasks_;
  const std::string go_on_;
  Keyboard keyboard_;
  std::size_t at_ = 0;
  bool again_ = false, failed_ = false, interrupted_ = false;
};

}  // namespace landdrill::cli
