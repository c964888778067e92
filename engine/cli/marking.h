// The dialogue of a practice session: asks for a mark, line by line, and keeps each at once.
//
//   Marking marking(call, practice, session, tasks, "landdrill practice start ... --session 2");
//   marking.run();      // Exit::ok, also when she paused: then marking.finished() is false
#pragma once

#include <signal.h>

#include <chrono>
#include <optional>
#include <string>

#include "engine/cli/call.h"
#include "engine/cli/exit.h"
#include "engine/judging/practice.h"
#include "engine/season/practice_tasks.h"
#include "tables/store/practice_book.h"

namespace landdrill::cli {

// Lines of standard input as they are typed, for as long as there is time.
//
//   Keyboard keyboard;
//   keyboard.listen(Clock::now() + 20s)      // Heard::line, and keyboard.line is "7.25"
//
// A line that was typed ahead is heard at once; what was half typed when the time was up is forgotten. While
// there is a keyboard, Ctrl-C and coming back after Ctrl-Z are heard, and nothing else is interrupted by
// them.

class Keyboard {
 public:
  using Clock = std::chrono::steady_clock;
  enum class Heard {
    line,
    end,
    too_late,
    interrupted,  // Ctrl-C
    back_again    // after Ctrl-Z: what was half typed is forgotten
  };
  Keyboard();
  ~Keyboard();
  Keyboard(const Keyboard&) = delete;
  Keyboard& operator=(const Keyboard&) = delete;

  // Waits no longer than until the deadline; without one, as long as it takes.
  Heard listen(std::optional<Clock::time_point> deadline);
  std::string line;

 private:
  enum class Ready { input, time_is_up, signal };
  Ready wait(std::optional<Clock::time_point> deadline) const;
  std::optional<Heard> signalled();
  Heard end_of_input();
  void forget();
  void read_some();

  std::string waiting_;
  bool ended_ = false;
  sigset_t mask_before_;
  struct sigaction interrupt_before_, continue_before_;
};

// Ends the program as Ctrl-C does, so that a shell sees that it was.
[[noreturn]] void end_as_interrupted();

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
