#include "engine/cli/paused_practice.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/cli/output.h"
#include "engine/cli/shell_quoted.h"
#include "engine/judging/practice.h"
#include "engine/report/pages/practice.h"
#include "tables/folder.h"
#include "tables/store/book.h"
#include "tables/store/practice_book.h"
#include "tables/trainee_name.h"

namespace landdrill::cli {

TraineeNamed name_of_trainee(const Call& call) {
  if (!call.given.has("--name")) return {{}, "--name NAME is missing: whose marks are these?"};
  auto name = trainee_name(call.given.value("--name"));
  if (!name) return {{}, fmt::format("found {}; expected {}", name.error().found, name.error().expected)};
  return {std::move(*name), {}};
}

void tell_practice(Call& call, const PracticeSession& session, const std::vector<PracticeTask>& tasks) {
  const ComparedMarks all = compared_marks(tasks, session);
  const PracticeReport report = practice_report(all.tasks, all.done);
  print_page(call,
             report::practice_page({session.wish.trainee, session.started_at, all.tasks, all.done, &report}));
}

namespace {

constexpr std::string_view wish_options[] = {"--lines", "--seconds", "--seed",
                                             "--event", "--from",    "--until"};

}  // namespace

Result<std::optional<PracticeSession>> PausedPractice::choose(const BookWish& wish, BookTasks& tasks) {
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

std::optional<PracticeSession> PausedPractice::named() {
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
  mistake_ = numbers.empty()
                 ? fmt::format("found --session {}; {} has no paused session: see `landdrill practice list`",
                               wanted, trainee_)
                 : fmt::format("found --session {}; expected the number of a paused session of {}: {}",
                               wanted, trainee_, numbers);
  return std::nullopt;
}

bool PausedPractice::wishes() const {
  return call_.given.operands.size() > 1 ||
         std::any_of(std::begin(wish_options), std::end(wish_options),
                     [&](std::string_view option) { return call_.given.has(option); });
}

bool PausedPractice::is_as_wished(const PracticeSession& session, std::size_t all_lines) const {
  const auto is = [&](std::string_view option, std::size_t value) {
    return !call_.given.has(option) || call_.given.value(option) == std::to_string(value);
  };
  const bool every_line = session.lines.size() == all_lines;  // no more could be drawn
  return (is("--lines", session.lines.size()) || every_line) &&
         is("--seconds", static_cast<std::size_t>(session.wish.seconds_each.value_or(0)));
}

std::string PausedPractice::others(int number) const {
  std::string text;
  for (const PracticeSession& one : sessions_)
    if (one.number != number)
      text += fmt::format("Session {} of {} is still paused: {}\n", one.number,
                          report::moment(one.started_at), command(one.number));
  return text;
}

std::string PausedPractice::command(int number) const {
  return fmt::format("landdrill practice start {} --name {} --session {}",
                     shell_quoted(call_.given.operands.front()), shell_quoted(trainee_), number);
}

}  // namespace landdrill::cli
