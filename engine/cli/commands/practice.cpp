// Practice for officials: mark what a recorded panel marked, then see how it compares. Every mark is on disk
// at once.
#include "engine/report/practice.h"

#include <fmt/format.h>
#include <poll.h>
#include <termios.h>
#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <random>

#include "engine/cli/book_file.h"
#include "engine/cli/page.h"
#include "engine/cli/practice_tasks.h"
#include "engine/cli/price.h"

namespace landdrill::cli {
namespace {

using Clock = std::chrono::steady_clock;

// One line of standard input, as typed; waits no longer than until the deadline.
class Keyboard {
 public:
  enum class Heard { line, end, too_late };
  Heard listen(std::optional<Clock::time_point> deadline) {
    for (;;) {
      if (const std::size_t end = waiting_.find('\n'); end != waiting_.npos) {
        line = waiting_.substr(0, end);
        waiting_.erase(0, end + 1);
        return Heard::line;
      }
      if (ended_) return end_of_input();
      if (!ready(deadline)) return forget();
      read_some();
    }
  }
  std::string line;

 private:
  Heard end_of_input() {
    if (waiting_.empty()) return Heard::end;
    line = std::exchange(waiting_, {});
    return Heard::line;
  }
  // What was half typed when the time was up belongs to no element.
  Heard forget() {
    waiting_.clear();
    if (isatty(0)) tcflush(0, TCIFLUSH);
    return Heard::too_late;
  }
  static bool ready(std::optional<Clock::time_point> deadline) {
    if (!deadline) return true;
    const auto left = std::chrono::duration_cast<std::chrono::milliseconds>(*deadline - Clock::now()).count();
    pollfd input{0, POLLIN, 0};
    return left > 0 && poll(&input, 1, static_cast<int>(left)) > 0;
  }
  void read_some() {
    char buffer[4096];
    const ssize_t size = read(0, buffer, sizeof buffer);
    if (size <= 0) ended_ = true;
    if (size > 0) waiting_.append(buffer, static_cast<std::size_t>(size));
  }

  std::string waiting_;
  bool ended_ = false;
};

std::string name_of_trainee(const Call& call) {
  return std::string(call.given.value("--name"));
}

// A whole number of at least 1, or `otherwise`; a mistake in words when it is none.
std::optional<int> whole(const Call& call, std::string_view option, int otherwise, std::string& mistake) {
  const std::string text(call.given.value(option));
  if (text.empty()) return otherwise;
  if (text.size() <= 6 && text.find_first_not_of("0123456789") == text.npos && std::stoi(text) >= 1)
    return std::stoi(text);
  mistake = fmt::format("found {} {}; expected a whole number, 1 or more", option, text);
  return std::nullopt;
}

class Marking {
 public:
  Marking(Call& call, PracticeBook& book, PracticeSession session, std::vector<PracticeTask> tasks)
      : call_(call), book_(book), session_(std::move(session)), tasks_(std::move(tasks)) {}

  Exit run() {
    say(fmt::format("{} of {} lines to mark. A mark, or b back, s skip, p pause, ? help.\n", lines_left(),
                    tasks_.size()));
    while (at_ < tasks_.size()) {
      if (tasks_[at_].rule == nullptr || (session_.marks[at_].did != KeptMark::Did::open && !again_)) {
        ++at_;
        continue;
      }
      again_ = false;
      if (!ask()) return paused();
    }
    if (const auto done = book_.finish(session_.id); !done) return refuse(call_, done.error());
    return Exit::ok;
  }
  bool finished() const { return at_ >= tasks_.size(); }
  const PracticeSession& session() const { return session_; }
  const std::vector<PracticeTask>& tasks() const { return tasks_; }

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
    say("\npaused: the same command goes on from here\n");
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
    std::optional<Clock::time_point> deadline;
    if (session_.wish.seconds_each)
      deadline = Clock::now() + std::chrono::seconds(*session_.wish.seconds_each);
    for (;;) {
      say(session_.wish.seconds_each ? fmt::format("  your mark ({} s): ", *session_.wish.seconds_each)
                                     : "  your mark: ");
      const Keyboard::Heard heard = keyboard_.listen(deadline);
      if (heard == Keyboard::Heard::end) return false;
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

  void show_help() {
    const PanelRule& rule = *tasks_[at_].rule;
    say(
        fmt::format("  a mark from {} to {} in steps of {}, such as 7.25 or 7,25\n"
                    "  b  back to the line before\n  s  leave this line out\n"
                    "  p  pause: your marks are kept, and the same command goes on from here\n",
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
    if (const auto kept = book_.mark(session_.id, at_, mark); !kept) {
      refuse(call_, kept.error());
      failed_ = true;
      return false;
    }
    session_.marks[at_] = mark;
    at_ = next;
    return true;
  }

  Call& call_;
  PracticeBook& book_;
  PracticeSession session_;
  std::vector<PracticeTask> tasks_;
  Keyboard keyboard_;
  std::size_t at_ = 0;
  bool again_ = false, failed_ = false;
};

// Tasks and marks of a session, without those whose panel can no longer be read.
struct Compared {
  std::vector<PracticeTask> tasks;
  std::vector<Practised> done;
};
Compared compared(const std::vector<PracticeTask>& tasks, const PracticeSession& session) {
  Compared all;
  const std::vector<Practised> done = practised(session);
  for (std::size_t i = 0; i < tasks.size(); ++i) {
    if (tasks[i].rule == nullptr) continue;
    all.tasks.push_back(tasks[i]);
    all.done.push_back(done[i]);
  }
  return all;
}

void tell(Call& call, const PracticeSession& session, const std::vector<PracticeTask>& tasks) {
  const Compared all = compared(tasks, session);
  const PracticeReport report = practice_report(all.tasks, all.done);
  const bool format = call.command.words == "practice report";
  call.streams.out.write(
      report::practice({session.wish.trainee, session.started_at, all.tasks, all.done, &report},
                       format ? format_of(call) : report::Format::text, page_wish(call)));
}

// How far off she was so far.
Result<std::vector<Weakness>> weak_so_far(const PracticeBook& practice, BookTasks& tasks,
                                          const std::string& trainee) {
  const auto sessions = practice.sessions(trainee);
  if (!sessions) return tl::unexpected(sessions.error());
  Compared all;
  for (const PracticeSession& session : *sessions) {
    const auto of_this = tasks.of(session);
    if (!of_this) return tl::unexpected(of_this.error());
    const Compared one = compared(*of_this, session);
    all.tasks.insert(all.tasks.end(), one.tasks.begin(), one.tasks.end());
    all.done.insert(all.done.end(), one.done.begin(), one.done.end());
  }
  return weaknesses(landdrill::practice_report(all.tasks, all.done));
}

// The finished session that --session names, otherwise the last.
struct ChosenSession {
  const PracticeSession* session = nullptr;
  std::string mistake;
};
ChosenSession chosen_session(const Call& call, const std::vector<PracticeSession>& sessions) {
  if (!call.given.has("--session")) return {&sessions.back(), {}};
  const std::string wanted(call.given.value("--session"));
  const std::string& trainee = sessions.front().wish.trainee;
  std::vector<std::size_t> found;
  for (std::size_t i = 0; i < sessions.size(); ++i)
    if (std::to_string(i + 1) == wanted || sessions[i].started_at.substr(0, 10) == wanted) found.push_back(i);
  if (found.size() == 1) return {&sessions[found.front()], {}};
  if (found.empty())
    return {nullptr,
            fmt::format("found --session {}; expected a number from 1 to {}, or the day of a session: "
                        "see `landdrill practice list`",
                        wanted, sessions.size())};
  std::string numbers;
  for (const std::size_t i : found) numbers += fmt::format("{}{}", numbers.empty() ? "" : ", ", i + 1);
  return {nullptr, fmt::format("{} has several sessions of {}: name one of {} by its number", trainee, wanted,
                               numbers)};
}

struct Wished {
  BookWish panels;
  std::string trainee;
  int tasks = 12;
  std::optional<int> seconds;
  std::uint64_t seed = 0;
  std::string mistake;
};

Wished wished(const Call& call) {
  Wished wish;
  WishRead read = book_wish(call);
  wish.mistake = read.mistake;
  wish.panels = read.wish;
  wish.trainee = name_of_trainee(call);
  if (wish.trainee.empty()) wish.mistake = "--name NAME is missing: whose marks are these?";
  wish.tasks = whole(call, "--lines", wish.tasks, wish.mistake).value_or(1);
  if (call.given.has("--seconds")) wish.seconds = whole(call, "--seconds", 1, wish.mistake);
  if (call.given.has("--seed")) {
    wish.seed = static_cast<std::uint64_t>(whole(call, "--seed", 1, wish.mistake).value_or(1));
  } else {
    std::random_device dice;
    wish.seed = (static_cast<std::uint64_t>(dice()) << 32) | dice();
  }
  return wish;
}

Result<std::optional<PracticeSession>> started(const Wished& wish, const Call& call, PracticeBook& practice,
                                               BookTasks& tasks) {
  const auto all = tasks.find(wish.panels);
  if (!all) return tl::unexpected(all.error());
  if (all->empty()) return std::nullopt;
  std::vector<Weakness> known;
  if (call.given.has("--weak")) {
    auto found = weak_so_far(practice, tasks, wish.trainee);
    if (!found) return tl::unexpected(found.error());
    known = std::move(*found);
  }
  std::vector<PracticeLine> lines;
  for (std::size_t i : draw_tasks(*all, known, static_cast<std::size_t>(wish.tasks), wish.seed))
    lines.push_back({(*all)[i].block, (*all)[i].line});
  if (const auto begun = practice.start({wish.trainee, wish.seconds}, lines); !begun)
    return tl::unexpected(begun.error());
  return practice.unfinished(wish.trainee);
}

}  // namespace

Exit practice_start(Call& call) {
  const Wished wish = wished(call);
  if (!wish.mistake.empty()) return misused(call, wish.mistake);
  auto season = open_book(call, Season::Mode::write);
  if (!season) return refuse(call, season.error());
  const Book book(*season);
  PracticeBook practice(*season);
  BookTasks tasks(book);
  auto session = practice.unfinished(wish.trainee);
  if (!session) return refuse(call, session.error());
  if (*session && call.given.has("--new")) {
    if (const auto done = practice.finish((*session)->id); !done) return refuse(call, done.error());
    session->reset();
  }
  if (!*session) session = started(wish, call, practice, tasks);
  if (!session) return refuse(call, session.error());
  if (!*session) return misused(call, "the book has no panel of that to mark: see `landdrill book list`");
  auto of_this = tasks.of(**session);
  if (!of_this) return refuse(call, of_this.error());
  Marking marking(call, practice, std::move(**session), std::move(*of_this));
  const Exit ended = marking.run();
  if (ended != Exit::ok || !marking.finished()) return ended;
  call.streams.out.write("\n");
  tell(call, marking.session(), marking.tasks());
  return Exit::ok;
}

Exit practice_report(Call& call) {
  const std::string trainee = name_of_trainee(call);
  if (trainee.empty()) return misused(call, "--name NAME is missing: whose marks are these?");
  auto season = open_book(call, Season::Mode::read);
  if (!season) return refuse(call, season.error());
  const Book book(*season);
  const PracticeBook practice(*season);
  BookTasks tasks(book);
  const auto sessions = practice.sessions(trainee);
  if (!sessions) return refuse(call, sessions.error());
  if (sessions->empty())
    return misused(call, fmt::format("{} has no finished session in this book", trainee));
  if (!call.given.has("--curve")) {
    const ChosenSession chosen = chosen_session(call, *sessions);
    if (chosen.session == nullptr) return misused(call, chosen.mistake);
    const auto of_this = tasks.of(*chosen.session);
    if (!of_this) return refuse(call, of_this.error());
    tell(call, *chosen.session, *of_this);
    return Exit::ok;
  }
  std::vector<PracticeReport> reports;
  for (const PracticeSession& session : *sessions) {
    const auto of_this = tasks.of(session);
    if (!of_this) return refuse(call, of_this.error());
    const Compared all = compared(*of_this, session);
    reports.push_back(landdrill::practice_report(all.tasks, all.done));
  }
  std::vector<report::PracticePoint> points;
  for (std::size_t i = 0; i < reports.size(); ++i) points.push_back({(*sessions)[i].started_at, &reports[i]});
  call.streams.out.write(report::practice_curve(trainee, points, format_of(call), page_wish(call)));
  return Exit::ok;
}

}  // namespace landdrill::cli
