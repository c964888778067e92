// Practice for officials: mark what a recorded panel marked, then see how it compares. Every mark is on disk
// at once.
#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cassert>
#include <random>
#include <set>

#include "engine/cli/book_file.h"
#include "engine/cli/call.h"
#include "engine/cli/marking.h"
#include "engine/cli/paused_practice.h"
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
  std::vector<std::string> kinds;  // of elements, and aspects; none: every line
  std::string trainee;
  DrawWish draw;
  PracticeWish practice;
};

// Without one, another one every time.
std::uint64_t seed_of(int said) {
  if (said > 0) return static_cast<std::uint64_t>(said);
  std::random_device dice;
  return (static_cast<std::uint64_t>(dice()) << 32) | dice();
}

report::Typed<Wished> wished(const Call& call) {
  const auto panels = book_wish(call);
  const auto trainee = name_of_trainee(call);
  if (!trainee) return tl::unexpected(trainee.error());
  if (!panels) return tl::unexpected(panels.error());
  const auto lines = whole(call, "--lines", 12), routines = whole(call, "--routines", 0),
             seconds = whole(call, "--seconds", 0), seed = whole(call, "--seed", 0);
  for (const auto* number : {&lines, &routines, &seconds, &seed})
    if (!*number) return tl::unexpected(number->error());
  if (call.given.has("--lines") && *routines > 0)
    return tl::unexpected<std::string>(
        "--lines draws single lines and --routines whole routines: leave one of them out");
  Wished wish{*panels, {}, *trainee, {}, {*trainee, {}, call.given.has("--tell")}};
  for (const std::string& kind : call.given.values("--kind")) wish.kinds.push_back(words::lower(kind));
  wish.draw.whole_routines = *routines > 0;
  wish.draw.how_many = static_cast<std::size_t>(*routines > 0 ? *routines : *lines);
  wish.draw.seed = seed_of(*seed);
  if (*seconds > 0) wish.practice.seconds_each = *seconds;
  return wish;
}

// The lines that may be drawn; or what was wrong with --kind.
Result<report::Typed<std::vector<PracticeTask>>> lines_to_draw(const Wished& wish, BookTasks& tasks) {
  auto all = tasks.find(wish.panels);
  if (!all) return tl::unexpected(all.error());
  if (wish.kinds.empty() || all->empty()) return std::move(*all);
  std::set<std::string> kinds;
  for (const PracticeTask& task : *all) kinds.insert(words::lower(task.kind));
  for (const std::string& kind : wish.kinds)
    if (!kinds.contains(kind)) {
      const std::vector<std::string_view> known(kinds.begin(), kinds.end());
      return report::Typed<std::vector<PracticeTask>>(tl::unexpected(report::with_hint(
          fmt::format("found --kind {}; expected a kind of element or an aspect that these panels "
                      "marked: {}",
                      kind, fmt::join(kinds, ", ")),
          std::string(words::nearest_hint(kind, known)))));
    }
  std::erase_if(*all, [&](const PracticeTask& task) {
    return std::find(wish.kinds.begin(), wish.kinds.end(), words::lower(task.kind)) == wish.kinds.end();
  });
  return std::move(*all);
}

// What is to be said before the first line of a new session.
std::string drawn_words(const Wished& wish, const Call& call, const std::vector<PracticeTask>& lines,
                        const std::vector<std::size_t>& drawn) {
  std::string text;
  if (call.given.has("--lines") && drawn.size() < wish.draw.how_many)
    text += fmt::format("{} lines were asked for; there are {} of that\n", wish.draw.how_many, lines.size());
  std::set<std::int64_t> panels;
  for (const std::size_t i : drawn) panels.insert(lines[i].block);
  if (wish.draw.whole_routines && panels.size() < wish.draw.how_many)
    text += fmt::format("{} routines were asked for; there {} of that\n", wish.draw.how_many,
                        panels.size() == 1 ? "is 1" : fmt::format("are {}", panels.size()));
  const auto again = std::count_if(drawn.begin(), drawn.end(), [&](std::size_t i) { return lines[i].again; });
  if (again > 0 && static_cast<std::size_t>(again) == drawn.size())
    text +=
        "You have met all of these lines before, and no others are left: they are left out of your figures\n";
  else if (again > 0)
    text += fmt::format(
        "You have met {} of these {} lines before, and no others are left: what you mark again is left "
        "out of your figures\n",
        again, drawn.size());
  return text;
}

struct Started {
  PracticeSession session;
  std::string said;
};

// Of at least one line.
Result<Started> started(const Wished& wish, const Call& call, PracticeBook& practice, BookTasks& tasks,
                        std::vector<PracticeTask> all) {
  const auto before = practice.of(wish.trainee);
  if (!before) return tl::unexpected(before.error());
  constexpr std::string_view whenever = "~";  // after every day
  if (const auto said = tasks.say_which_come_again(all, *before, whenever); !said)
    return tl::unexpected(said.error());
  DrawWish draw = wish.draw;
  std::vector<Weakness> known;
  if (call.given.has("--weak")) {
    auto found = weak_so_far(practice, tasks, wish.trainee);
    if (!found) return tl::unexpected(found.error());
    known = std::move(*found);
    draw.known = known;
  }
  const std::vector<std::size_t> drawn = draw_tasks(all, draw);
  std::vector<PracticeLine> lines;
  for (std::size_t i : drawn) lines.push_back({all[i].block, all[i].line});
  PracticeWish kept = wish.practice;
  kept.trainee = wish.trainee;
  const auto begun = practice.start(kept, lines);
  if (!begun) return tl::unexpected(begun.error());
  auto paused = practice.paused(wish.trainee);
  if (!paused) return tl::unexpected(paused.error());
  const auto session = std::find_if(paused->begin(), paused->end(),
                                    [&](const PracticeSession& one) { return one.id == *begun; });
  assert(session != paused->end());
  return Started{std::move(*session), drawn_words(wish, call, all, drawn)};
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

std::string going_on(const Call& call, const PracticeSession& session) {
  std::string start =
      fmt::format("Going on with session {} of {}", session.number, report::moment(session.started_at));
  if (session.wish.seconds_each) start += fmt::format(", {} s for each mark", *session.wish.seconds_each);
  start += '\n';
  if (call.given.has("--weak") || call.given.has("--seed"))
    start += "Its lines are drawn already: with --new, --weak and --seed draw others\n";
  return start;
}

// Marks a session, and tells how it went when it is done. `interrupted`: by Ctrl-C.
Exit mark_and_tell(Call& call, PracticeBook& practice, BookTasks& tasks, Marking marking, bool& interrupted) {
  auto of_this = tasks.of(marking.session);
  if (!of_this) return refuse(call, of_this.error());
  marking.tasks = std::move(*of_this);
  const Exit ended = mark(call, practice, marking);
  interrupted = marking.interrupted;
  if (ended != Exit::ok || !marking.finished) return ended;
  call.streams.out.write("\n");
  const auto all = practice.of(marking.session.wish.trainee);
  if (!all) return refuse(call, all.error());
  const auto met = tasks_of(marking.session, *all, tasks);
  if (!met) return refuse(call, met.error());
  tell_practice(call, marking.session, compared_marks(*met, marking.session));
  return Exit::ok;
}

// What there is to mark, the book, and what is asked of it.
struct Room {
  Call& call;
  PracticeBook& practice;
  BookTasks& tasks;
  const Wished& wish;
};

// A new session of these lines; or what was wrong.
Result<report::Typed<Started>> begin(Room room, std::vector<PracticeTask> lines) {
  if (const auto greeted = greet(room.call, room.practice, room.wish.trainee); !greeted)
    return tl::unexpected(greeted.error());
  if (lines.empty())
    return report::Typed<Started>(tl::unexpect,
                                  "the book has no panel of that to mark: see `landdrill book list`");
  auto begun = started(room.wish, room.call, room.practice, room.tasks, std::move(lines));
  if (!begun) return tl::unexpected(begun.error());
  return std::move(*begun);
}

// The paused session that is as wished, or a new one; or what was wrong.
Result<report::Typed<Started>> session_to_mark(Room room, PausedPractice& left) {
  auto lines = lines_to_draw(room.wish, room.tasks);
  if (!lines) return tl::unexpected(lines.error());
  if (!*lines) return report::Typed<Started>(tl::unexpect, lines->error());
  auto paused = left.choose(**lines, room.tasks);
  if (!paused) return tl::unexpected(paused.error());
  if (!left.mistake().empty()) return report::Typed<Started>(tl::unexpect, left.mistake());
  if (!*paused) return begin(room, std::move(**lines));
  std::string said = going_on(room.call, **paused);
  return Started{std::move(**paused), std::move(said)};
}

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
  auto chosen = session_to_mark({call, practice, tasks, wish}, left);
  if (!chosen) return refuse(call, chosen.error());
  if (!*chosen) return misused(call, chosen->error());
  PracticeSession& session = (*chosen)->session;
  const int number = session.number;
  clear_screen(call);
  call.streams.out.write((*chosen)->said + left.others(number));
  return mark_and_tell(call, practice, tasks, {std::move(session), {}, left.command(number)}, interrupted);
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
