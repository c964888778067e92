#include "engine/cli/paused_practice.h"

#include <fmt/format.h>

#include <algorithm>
#include <string_view>

#include "engine/cli/book_file.h"
#include "engine/report/pages/practice.h"

namespace landdrill::cli {
namespace {

constexpr std::string_view wish_options[] = {"--lines", "--routines", "--kind", "--tell", "--seconds",
                                             "--seed",  "--event",    "--from", "--until"};

}  // namespace

Result<std::optional<PracticeSession>> PausedPractice::choose(const std::vector<PracticeTask>& lines,
                                                              BookTasks& tasks) {
  if (call_.given.has("--session")) return named();
  if (sessions_.empty() || call_.given.has("--new")) return std::nullopt;
  if (!wishes()) return sessions_.back();
  std::set<Line> wished;
  for (const PracticeTask& task : lines) wished.emplace(task.block, task.line);
  for (auto session = sessions_.rbegin(); session != sessions_.rend(); ++session) {
    const auto its = tasks.of(*session);
    if (!its) return tl::unexpected(its.error());
    std::set<Line> asked;
    for (const PracticeTask& task : *its) asked.emplace(task.block, task.line);
    if (std::includes(wished.begin(), wished.end(), asked.begin(), asked.end()) &&
        is_as_wished(*session, asked, wished))
      return *session;
  }
  return std::nullopt;
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

bool PausedPractice::is_as_wished(const PracticeSession& session, const std::set<Line>& asked,
                                  const std::set<Line>& wished) const {
  const auto is = [&](std::string_view option, std::size_t value) {
    return !call_.given.has(option) || call_.given.value(option) == std::to_string(value);
  };
  const bool every_line = session.lines.size() == wished.size();  // no more could be drawn
  return (is("--lines", session.lines.size()) || every_line) &&
         is("--seconds", static_cast<std::size_t>(session.wish.seconds_each.value_or(0))) &&
         (!call_.given.has("--routines") || is("--routines", whole_routines(asked, wished))) &&
         (!call_.given.has("--tell") || session.wish.tells_panel);
}

std::size_t PausedPractice::whole_routines(const std::set<Line>& asked, const std::set<Line>& wished) {
  std::set<std::int64_t> panels;
  for (const auto& [panel, line] : asked) panels.insert(panel);
  const auto of_these = std::count_if(wished.begin(), wished.end(),
                                      [&](const Line& one) { return panels.contains(one.first); });
  return static_cast<std::size_t>(of_these) == asked.size() ? panels.size() : 0;
}

}  // namespace landdrill::cli
