#include "engine/cli/marking.h"

#include <fmt/format.h>
#include <poll.h>
#include <termios.h>
#include <unistd.h>

#include <algorithm>
#include <csignal>
#include <utility>

#include "tables/value_set.h"

namespace landdrill::cli {
namespace {

using Clock = std::chrono::steady_clock;

volatile std::sig_atomic_t was_interrupted = 0, was_continued = 0;

void note(int signal) {
  (signal == SIGINT ? was_interrupted : was_continued) = 1;
}

timespec time_left(Clock::duration left) {
  const auto seconds = std::chrono::duration_cast<std::chrono::seconds>(left);
  return {static_cast<time_t>(seconds.count()),
          static_cast<long>(std::chrono::duration_cast<std::chrono::nanoseconds>(left - seconds).count())};
}

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
  enum class Heard {
    line,
    end,
    too_late,
    interrupted,  // Ctrl-C
    back_again    // after Ctrl-Z: what was half typed is forgotten
  };

  // The signals come through while it waits and at no other time, so that none is missed between a look at them
  // and the waiting.
  Keyboard() {
    sigset_t heard;
    sigemptyset(&heard);
    sigaddset(&heard, SIGINT);
    sigaddset(&heard, SIGCONT);
    sigprocmask(SIG_BLOCK, &heard, &mask_before_);
    struct sigaction action {};
    action.sa_handler = note;
    sigaction(SIGCONT, &action, &continue_before_);
    sigaction(SIGINT, nullptr, &interrupt_before_);
    if (interrupt_before_.sa_handler != SIG_IGN) sigaction(SIGINT, &action, nullptr);
  }

  ~Keyboard() {
    sigaction(SIGINT, &interrupt_before_, nullptr);
    sigaction(SIGCONT, &continue_before_, nullptr);
    sigprocmask(SIG_SETMASK, &mask_before_, nullptr);
  }

  Keyboard(const Keyboard&) = delete;
  Keyboard& operator=(const Keyboard&) = delete;

  // Waits no longer than until the deadline; without one, as long as it takes.
  Heard listen(std::optional<Clock::time_point> deadline) {
    for (;;) {
      if (const auto signal = signalled()) return *signal;
      if (const std::size_t end = waiting_.find('\n'); end != waiting_.npos) {
        line = waiting_.substr(0, end);
        waiting_.erase(0, end + 1);
        return Heard::line;
      }
      if (ended_) return end_of_input();
      const int ready = wait(deadline);
      if (ready > 0) read_some();
      if (ready == 0) {
        forget();
        return Heard::too_late;
      }
    }
  }

  std::string line;

 private:
  std::optional<Heard> signalled() {
    if (std::exchange(was_interrupted, 0) != 0) return Heard::interrupted;
    if (std::exchange(was_continued, 0) == 0) return std::nullopt;
    forget();
    return Heard::back_again;
  }

  // As ppoll says it: above 0 there is input, at 0 the time is up, below it was a signal.
  int wait(std::optional<Clock::time_point> deadline) const {
    timespec left{};
    if (deadline) {
      const Clock::duration remaining = *deadline - Clock::now();
      if (remaining <= Clock::duration::zero()) return 0;
      left = time_left(remaining);
    }
    pollfd input{0, POLLIN, 0};
    return ppoll(&input, 1, deadline ? &left : nullptr, &mask_before_);
  }

  Heard end_of_input() {
    if (waiting_.empty()) return Heard::end;
    line = std::exchange(waiting_, {});
    return Heard::line;
  }

  // What was half typed when the time was up belongs to no element.
  void forget() {
    waiting_.clear();
    if (isatty(0)) tcflush(0, TCIFLUSH);
  }

  void read_some() {
    char buffer[4096];
    const ssize_t size = read(0, buffer, sizeof buffer);
    if (size <= 0) ended_ = true;
    if (size > 0) waiting_.append(buffer, static_cast<std::size_t>(size));
  }

  std::string waiting_;
  bool ended_ = false;
  sigset_t mask_before_;
  struct sigaction interrupt_before_, continue_before_;
};

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
  }

  // False to pause.
  bool ask() {
    show_task();
    std::optional<Clock::time_point> deadline = time_limit();
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
      if (heard == Keyboard::Heard::too_late) {
        say("\n  the time is up\n");
        return keep({KeptMark::Did::skipped, std::nullopt, true}, at_ + 1);
      }
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

  std::optional<Clock::time_point> time_limit() const {
    if (!session_.wish.seconds_each) return std::nullopt;
    return Clock::now() + std::chrono::seconds(*session_.wish.seconds_each);
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
    at_ = next;
    return true;
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

Exit mark(Call& call, PracticeBook& book, Marking& marking) {
  return Dialogue(call, book, marking).run();
}

void end_as_interrupted() {
  signal(SIGINT, SIG_DFL);
  raise(SIGINT);
  std::_Exit(130);
}

}  // namespace landdrill::cli
