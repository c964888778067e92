// Practice for officials: mark what a recorded panel marked, then see how it compares. Every mark is on disk
// at once.
#include <fmt/format.h>

#include <algorithm>
#include <random>

#include "engine/cli/book_file.h"
#include "engine/cli/keyboard.h"
#include "engine/cli/paused_practice.h"
#include "engine/cli/practice_told.h"
#include "engine/cli/price.h"
#include "engine/report/practice_list.h"
#include "grammar/words.h"

namespace landdrill::cli {
namespace {

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
  // `go_on`: the command that goes on with a paused session.
  Marking(Call& call, PracticeBook& book, PracticeSession session, std::vector<PracticeTask> tasks,
          std::string go_on)
      : call_(call),
        book_(book),
        session_(std::move(session)),
        tasks_(std::move(tasks)),
        go_on_(std::move(go_on)) {}

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
    return Exit::ok;
  }
  bool finished() const { return at_ >= tasks_.size(); }
  bool interrupted() const { return interrupted_; }
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
    say(fmt::format("\npaused: {} goes on from here\n", go_on_));
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
    std::optional<Keyboard::Clock::time_point> deadline = time_limit();
    for (;;) {
      say(session_.wish.seconds_each ? fmt::format("  your mark ({} s): ", *session_.wish.seconds_each)
                                     : "  your mark: ");
      const Keyboard::Heard heard = keyboard_.listen(deadline);
      if (heard == Keyboard::Heard::end) return false;
      if (heard == Keyboard::Heard::interrupted) {
        interrupted_ = true;
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
  PracticeSession session_;
  std::vector<PracticeTask> tasks_;
  const std::string go_on_;
  Keyboard keyboard_;
  std::size_t at_ = 0;
  bool again_ = false, failed_ = false, interrupted_ = false;
};

// How far off she was so far.
Result<std::vector<Weakness>> weak_so_far(const PracticeBook& practice, BookTasks& tasks,
                                          const std::string& trainee) {
  const auto sessions = practice.finished(trainee);
  if (!sessions) return tl::unexpected(sessions.error());
  ComparedMarks all;
  for (const PracticeSession& session : *sessions) {
    const auto of_this = tasks.of(session);
    if (!of_this) return tl::unexpected(of_this.error());
    const ComparedMarks one = compared_marks(*of_this, session);
    all.tasks.insert(all.tasks.end(), one.tasks.begin(), one.tasks.end());
    all.done.insert(all.done.end(), one.done.begin(), one.done.end());
  }
  return weaknesses(landdrill::practice_report(all.tasks, all.done));
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
  TraineeNamed named = name_of_trainee(call);
  wish.trainee = std::move(named.name);
  if (!named.mistake.empty()) wish.mistake = std::move(named.mistake);
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
  const auto begun = practice.start({wish.trainee, wish.seconds}, lines);
  if (!begun) return tl::unexpected(begun.error());
  auto paused = practice.paused(wish.trainee);
  if (!paused) return tl::unexpected(paused.error());
  const auto session = std::find_if(paused->begin(), paused->end(),
                                    [&](const PracticeSession& one) { return one.id == *begun; });
  return session == paused->end() ? std::nullopt : std::optional(std::move(*session));
}

// Of somebody who was never here before: a name that is nearly the same may be her own.
Result<void> greet(Call& call, const PracticeBook& practice, const std::string& trainee) {
  const auto names = practice.trainees();
  if (!names) return tl::unexpected(names.error());
  if (std::find(names->begin(), names->end(), trainee) != names->end()) return {};
  const std::vector<std::string_view> known(names->begin(), names->end());
  const std::string nearest = words::nearest_hint(trainee, known);
  if (!nearest.empty())
    call.streams.say(fmt::format("landdrill: {} is new to this book: {}\n", trainee, nearest));
  return {};
}

// `interrupted`: by Ctrl-C.
Exit practise(Call& call, Wished wish, bool& interrupted) {
  auto season = open_book(call, Season::Mode::write);
  if (!season) return refuse(call, season.error());
  const Book book(*season);
  PracticeBook practice(*season);
  BookTasks tasks(book);
  const auto known_as = practice.known_as(wish.trainee);
  if (!known_as) return refuse(call, known_as.error());
  wish.trainee = *known_as;
  auto paused = practice.paused(wish.trainee);
  if (!paused) return refuse(call, paused.error());
  PausedPractice left(call, wish.trainee, std::move(*paused));
  auto session = left.choose(wish.panels, tasks);
  if (!session) return refuse(call, session.error());
  if (!left.mistake().empty()) return misused(call, left.mistake());
  std::string start;
  if (*session) {
    start = fmt::format("Going on with session {} of {}", (*session)->number,
                        report::moment((*session)->started_at));
    if ((*session)->wish.seconds_each)
      start += fmt::format(", {} s for each mark", *(*session)->wish.seconds_each);
    start += '\n';
    if (call.given.has("--weak") || call.given.has("--seed"))
      start += "Its lines are drawn already: with --new, --weak and --seed draw others\n";
  } else {
    if (const auto greeted = greet(call, practice, wish.trainee); !greeted)
      return refuse(call, greeted.error());
    session = started(wish, call, practice, tasks);
    if (!session) return refuse(call, session.error());
    if (!*session) return misused(call, "the book has no panel of that to mark: see `landdrill book list`");
  }
  auto of_this = tasks.of(**session);
  if (!of_this) return refuse(call, of_this.error());
  const int number = (*session)->number;
  call.streams.out.write(start + left.others(number));
  Marking marking(call, practice, std::move(**session), std::move(*of_this), left.command(number));
  const Exit ended = marking.run();
  interrupted = marking.interrupted();
  if (ended != Exit::ok || !marking.finished()) return ended;
  call.streams.out.write("\n");
  tell_practice(call, marking.session(), marking.tasks());
  return Exit::ok;
}

}  // namespace

Exit practice_start(Call& call) {
  Wished wish = wished(call);
  if (!wish.mistake.empty()) return misused(call, wish.mistake);
  bool interrupted = false;
  const Exit ended = practise(call, std::move(wish), interrupted);
  if (interrupted) {
    call.streams.finish(ended);
    end_as_interrupted();
  }
  return ended;
}

}  // namespace landdrill::cli
