// Practice for officials: mark what a recorded panel marked, then see how it compares. Every mark is on disk
// at once.
#include <fmt/format.h>

#include <algorithm>
#include <random>

#include "engine/cli/book_file.h"
#include "engine/cli/call.h"
#include "engine/cli/marking.h"
#include "engine/judging/practice.h"
#include "engine/report/pages/asked.h"
#include "engine/report/pages/practice.h"
#include "engine/season/practice_tasks.h"
#include "grammar/words.h"
#include "tables/folder.h"
#include "tables/store/practice_book.h"

namespace landdrill::cli {
namespace {

// A whole number of at least 1, or `otherwise`.
report::Typed<int> whole(const Call& call, std::string_view option, int otherwise) {
  const std::string text(call.given.value(option));
  if (text.empty()) return otherwise;
  if (text.size() <= 6 && text.find_first_not_of("0123456789") == text.npos && std::stoi(text) >= 1)
    return std::stoi(text);
  return tl::unexpected(fmt::format("found {} {}; expected a whole number, 1 or more", option, text));
}

struct Wished {
  BookWish panels;
  std::string trainee;
  std::size_t tasks = 0;
  std::optional<int> seconds;
  std::uint64_t seed = 0;
};

report::Typed<Wished> wished(const Call& call) {
  const auto panels = book_wish(call);
  const auto trainee = name_of_trainee(call);
  if (!trainee) return tl::unexpected(trainee.error());
  if (!panels) return tl::unexpected(panels.error());
  const auto lines = whole(call, "--lines", 12), seconds = whole(call, "--seconds", 0),
             seed = whole(call, "--seed", 0);
  for (const auto* number : {&lines, &seconds, &seed})
    if (!*number) return tl::unexpected(number->error());
  Wished wish{*panels, *trainee, static_cast<std::size_t>(*lines), {}, static_cast<std::uint64_t>(*seed)};
  if (*seconds > 0) wish.seconds = *seconds;
  std::random_device dice;
  if (*seed == 0) wish.seed = (static_cast<std::uint64_t>(dice()) << 32) | dice();
  return wish;
}

constexpr std::string_view wish_options[] = {"--lines", "--seconds", "--seed",
                                             "--event", "--from",    "--until"};

// Which practice a call goes on with, and what it says of those that stay paused.
class PausedPractice {
 public:
  // `sessions`: paused ones of one trainee, by their number.
  PausedPractice(const Call& call, std::string trainee, std::vector<PracticeSession> sessions)
      : call_(call), trainee_(std::move(trainee)), sessions_(std::move(sessions)) {}

  // The one that --session names; without a wish, or with --weak alone, the latest; otherwise the latest
  // whose panels, number of lines and time are all as wished, whatever the seed; with --new none. `wish`: the
  // panels that are asked for.
  Result<std::optional<PracticeSession>> choose(const BookWish& wish, BookTasks& tasks) {
    if (call_.given.has("--session")) return named();
    if (sessions_.empty() || call_.given.has("--new")) return std::nullopt;
    if (!wishes()) return sessions_.back();
    const auto wished = tasks.find(wish);
    if (!wished) return tl::unexpected(wished.error());
    std::set<std::int64_t> panels;
    for (const PracticeTask& task : *wished) panels.insert(task.block);
    for (auto session = sessions_.rbegin(); session != sessions_.rend(); ++session) {
      const auto its = tasks.of(*session);
      if (!its) return tl::unexpected(its.error());
      const bool of_panels = std::all_of(
          its->begin(), its->end(), [&](const PracticeTask& task) { return panels.count(task.block) != 0; });
      if (of_panels && is_as_wished(*session, wished->size())) return *session;
    }
    return std::nullopt;
  }

  // What is wrong with --session; empty when nothing is.
  const std::string& mistake() const { return mistake_; }

  // Whole lines on the sessions but that one.
  std::string others(int number) const {
    std::string text;
    for (const PracticeSession& one : sessions_)
      if (one.number != number)
        text += fmt::format("Session {} of {} is still paused: {}\n", one.number,
                            report::moment(one.started_at), command(one.number));
    return text;
  }

  // "landdrill practice start club.season --name Robin --session 2"
  std::string command(int number) const {
    return fmt::format("landdrill practice start {} --name {} --session {}",
                       shell_quoted(call_.given.operands.front()), shell_quoted(trainee_), number);
  }

 private:
  std::optional<PracticeSession> named() {
    const std::string wanted(call_.given.value("--session"));
    for (const std::string_view option : wish_options)
      if (call_.given.has(option))
        mistake_ = fmt::format("--session goes on as it was begun: leave out {}", option);
    if (call_.given.has("--new") || call_.given.has("--weak"))
      mistake_ = "--session goes on as it was begun: leave out --new and --weak";
    if (call_.given.operands.size() > 1) mistake_ = "--session goes on as it was begun: leave out the words";
    if (!mistake_.empty()) return std::nullopt;
    std::string numbers;
    for (const PracticeSession& one : sessions_) {
      if (std::to_string(one.number) == wanted) return one;
      numbers += fmt::format("{}{}", numbers.empty() ? "" : ", ", one.number);
    }
    mistake_ =
        numbers.empty()
            ? fmt::format("found --session {}; {} has no paused session: see `landdrill practice list`",
                          wanted, trainee_)
            : fmt::format("found --session {}; expected the number of a paused session of {}: {}", wanted,
                          trainee_, numbers);
    return std::nullopt;
  }

  bool wishes() const {
    return call_.given.operands.size() > 1 ||
           std::any_of(std::begin(wish_options), std::end(wish_options),
                       [&](std::string_view option) { return call_.given.has(option); });
  }

  bool is_as_wished(const PracticeSession& session, std::size_t all_lines) const {
    const auto is = [&](std::string_view option, std::size_t value) {
      return !call_.given.has(option) || call_.given.value(option) == std::to_string(value);
    };
    const bool every_line = session.lines.size() == all_lines;  // no more could be drawn
    return (is("--lines", session.lines.size()) || every_line) &&
           is("--seconds", static_cast<std::size_t>(session.wish.seconds_each.value_or(0)));
  }

  const Call& call_;
  const std::string trainee_;
  const std::vector<PracticeSession> sessions_;
  std::string mistake_;
};

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
  for (std::size_t i : draw_tasks(*all, known, wish.tasks, wish.seed))
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
  Marking marking{std::move(**session), std::move(*of_this), left.command(number)};
  const Exit ended = mark(call, practice, marking);
  interrupted = marking.interrupted;
  if (ended != Exit::ok || !marking.finished) return ended;
  call.streams.out.write("\n");
  tell_practice(call, marking.session, marking.tasks);
  return Exit::ok;
}

}  // namespace

Exit practice_start(Call& call) {
  auto wish = wished(call);
  if (!wish) return misused(call, wish.error());
  bool interrupted = false;
  const Exit ended = practise(call, std::move(*wish), interrupted);
  if (interrupted) {
    call.streams.finish(ended);
    end_as_interrupted();
  }
  return ended;
}

}  // namespace landdrill::cli
