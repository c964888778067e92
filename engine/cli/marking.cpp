#include "engine/cli/marking.h"

#include <fmt/format.h>
#include <unistd.h>

#include <algorithm>
#include <csignal>
#include <cstdlib>

#include "engine/cli/keyboard.h"
#include "engine/report/figures.h"
#include "engine/report/pages/practice.h"
#include "tables/binary.h"
#include "tables/decimal.h"
#include "tables/value_set.h"

namespace landdrill::cli {
namespace {

bool nothing_typed(std::string_view typed) {
  return typed.find_first_not_of(" \t\r") == typed.npos;
}

class Dialogue {
 public:
  Dialogue(Call& call, PracticeBook& book, Marking& marking)
      : call_(call), book_(book), marking_(marking), session_(marking.session), tasks_(marking.tasks) {}

  Exit run() {
    say(fmt::format("{} of {} {} to mark. A mark, or b back, s skip, p pause, ? help.\n", lines_left(),
                    tasks_.size(), tasks_.size() == 1 ? "line" : "lines"));
    while (at_ < tasks_.size()) {
      if (tasks_[at_].rule == nullptr || (session_.marks[at_].did != KeptMark::Did::open && !again_)) {
        ++at_;
        continue;
      }
      again_ = false;
      if (!ask()) return paused();
    }
    if (const auto done = book_.finish(session_.id); !done) return refuse(call_, done.error());
    marking_.finished = true;
    return Exit::ok;
  }

 private:
  void say(std::string_view text) {
    call_.streams.out.write(text);
    call_.streams.out.flush();
  }

  std::size_t lines_left() const {
    return static_cast<std::size_t>(
        std::count_if(session_.marks.begin(), session_.marks.end(),
                      [](const KeptMark& one) { return one.did == KeptMark::Did::open; }));
  }

  Exit paused() {
    if (failed_) return Exit::environment;
    say(fmt::format("\npaused: {} goes on from here\n", marking_.go_on));
    return Exit::ok;
  }

  void show_task() {
    const PracticeTask& task = tasks_[at_];
    say(fmt::format("\n{} of {}   {}, {}\n  {}{}{}\n", at_ + 1, tasks_.size(), task.routine, task.panel,
                    task.label, task.kind == task.line ? "" : ", " + task.kind,
                    task.declared ? ", difficulty " + task.declared->text(2) : ""));
    if (!task.parts.empty()) say(fmt::format("  {}\n", task.parts));
    if (const std::optional<Decimal>& before = session_.marks[at_].mark)
      say(fmt::format("  you gave {}: Enter leaves it\n", before->text(2)));
  }

  // False to pause.
  bool ask() {
    show_task();
    std::optional<Keyboard::Clock::time_point> deadline = time_limit();
    for (;;) {
      say(session_.wish.seconds_each ? fmt::format("  your mark ({} s): ", *session_.wish.seconds_each)
                                     : "  your mark: ");
      const Keyboard::Heard heard = keyboard_.listen(deadline);
      if (heard == Keyboard::Heard::end) return false;
      if (heard == Keyboard::Heard::interrupted) {
        marking_.interrupted = true;
        return false;
      }
      if (heard == Keyboard::Heard::back_again) {
        show_task();
        deadline = time_limit();
        continue;
      }
      if (heard == Keyboard::Heard::too_late) return too_late();
      if (session_.marks[at_].mark && nothing_typed(keyboard_.line)) return leave_it();
      const Answer answer = read_answer(keyboard_.line, tasks_[at_]);
      switch (answer.does) {
        case Answer::Does::mark:
          return keep({KeptMark::Did::marked, answer.mark->value(), false}, at_ + 1);
        case Answer::Does::skip:
          return keep({KeptMark::Did::skipped, std::nullopt, false}, at_ + 1);
        case Answer::Does::back:
          go_back();
          return true;
        case Answer::Does::pause:
          return false;
        case Answer::Does::help:
          show_help();
          break;
        case Answer::Does::nothing:
          say("  " + answer.complaint + "\n");
          break;
      }
    }
  }

  // What was marked already stays as it is.
  bool too_late() {
    if (const std::optional<Decimal>& before = session_.marks[at_].mark) {
      say(fmt::format("\n  the time is up: your {} stays\n", before->text(2)));
      return leave_it();
    }
    say("\n  the time is up\n");
    return keep({KeptMark::Did::skipped, std::nullopt, true}, at_ + 1);
  }

  bool leave_it() {
    ++at_;
    return true;
  }

  std::optional<Keyboard::Clock::time_point> time_limit() const {
    if (!session_.wish.seconds_each) return std::nullopt;
    return Keyboard::Clock::now() + std::chrono::seconds(*session_.wish.seconds_each);
  }

  void show_help() {
    const PanelRule& rule = *tasks_[at_].rule;
    say(
        fmt::format("  a mark from {} to {} in steps of {}, such as 7.25 or 7,25\n"
                    "  b  back to the line before\n  s  leave this line out\n"
                    "  p  pause: your marks are kept, and you can go on from here\n",
                    rule.least.text(), rule.most.text(), rule.step.text()));
  }

  void go_back() {
    std::size_t before = at_;
    while (before > 0 && tasks_[before - 1].rule == nullptr) --before;
    again_ = true;
    if (before == 0) return say("  this is the first line\n");
    if (session_.wish.tells_panel && session_.marks[before - 1].did != KeptMark::Did::open)
      return say("  you have been told the panel's marks of the line before: it stays as it is\n");
    at_ = before - 1;
  }

  bool keep(const KeptMark& mark, std::size_t next) {
    const auto kept = book_.mark(session_.id, at_, mark, session_.marks[at_]);
    if (!kept) {
      refuse(call_, kept.error());
      failed_ = true;
      return false;
    }
    if (*kept != mark)
      say("  this line was marked in another window meanwhile: that mark stays, b goes back to it\n");
    session_.marks[at_] = *kept;
    if (session_.wish.tells_panel) tell_panel();
    at_ = next;
    return true;
  }

  void tell_panel() {
    const PracticeTask& task = tasks_[at_];
    std::string off;
    if (const std::optional<Decimal>& mark = session_.marks[at_].mark)
      off = fmt::format("; you gave {}, {} off", mark->text(2),
                        report::signed_figure(binary(*mark) - task.kept));
    say(fmt::format("  the panel: {} from {}{}\n", report::figure(task.kept),
                    report::judges_marks(task.judges), off));
  }

  Call& call_;
  PracticeBook& book_;
  Marking& marking_;
  PracticeSession& session_;
  const std::vector<PracticeTask>& tasks_;
  Keyboard keyboard_;
  std::size_t at_ = 0;
  bool again_ = false, failed_ = false;
};

}  // namespace

void clear_screen(Call& call) {
  const char* const terminal = std::getenv("TERM");
  if (isatty(call.streams.out.descriptor()) == 0 || terminal == nullptr ||
      terminal == std::string_view("dumb"))
    return;
  call.streams.out.write("\x1b[H\x1b[2J");
}

Exit mark(Call& call, PracticeBook& book, Marking& marking) {
  return Dialogue(call, book, marking).run();
}

void end_as_interrupted() {
  signal(SIGINT, SIG_DFL);
  raise(SIGINT);
  std::_Exit(130);
}

}  // namespace landdrill::cli
