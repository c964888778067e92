// How a trainee's marks compare with the panels': one session, or her curve over the weeks.
#include <fmt/format.h>

#include "engine/cli/book_file.h"
#include "engine/cli/call.h"
#include "engine/cli/exit.h"
#include "engine/cli/misused.h"
#include "engine/cli/page.h"
#include "engine/cli/practice_told.h"
#include "engine/judging/practice.h"
#include "engine/report/pages/practice.h"
#include "engine/season/practice_tasks.h"
#include "tables/store/book.h"
#include "tables/store/practice_book.h"

namespace landdrill::cli {
namespace {

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
    if (std::to_string(sessions[i].number) == wanted || sessions[i].started_at.substr(0, 10) == wanted)
      found.push_back(i);
  if (found.size() == 1) return {&sessions[found.front()], {}};
  if (found.empty())
    return {nullptr,
            fmt::format("found --session {}; expected the number or the day of a finished session: see "
                        "`landdrill practice list`",
                        wanted)};
  std::string numbers;
  for (const std::size_t i : found)
    numbers += fmt::format("{}{}", numbers.empty() ? "" : ", ", sessions[i].number);
  return {nullptr, fmt::format("{} has several sessions of {}: name one of {} by its number", trainee, wanted,
                               numbers)};
}

}  // namespace

Exit practice_report(Call& call) {
  const TraineeNamed named = name_of_trainee(call);
  if (!named.mistake.empty()) return misused(call, named.mistake);
  auto season = open_book(call, Season::Mode::read);
  if (!season) return refuse(call, season.error());
  const Book book(*season);
  const PracticeBook practice(*season);
  BookTasks tasks(book);
  const auto known_as = practice.known_as(named.name);
  if (!known_as) return refuse(call, known_as.error());
  const std::string& trainee = *known_as;
  const auto sessions = practice.finished(trainee);
  if (!sessions) return refuse(call, sessions.error());
  if (sessions->empty())
    return misused(call, fmt::format("{} has no finished session in this book", trainee));
  if (!call.given.has("--curve")) {
    const ChosenSession chosen = chosen_session(call, *sessions);
    if (chosen.session == nullptr) return misused(call, chosen.mistake);
    const auto of_this = tasks.of(*chosen.session);
    if (!of_this) return refuse(call, of_this.error());
    tell_practice(call, *chosen.session, *of_this);
    return Exit::ok;
  }
  std::vector<PracticeReport> reports;
  for (const PracticeSession& session : *sessions) {
    const auto of_this = tasks.of(session);
    if (!of_this) return refuse(call, of_this.error());
    const ComparedMarks all = compared_marks(*of_this, session);
    reports.push_back(landdrill::practice_report(all.tasks, all.done));
  }
  std::vector<report::PracticePoint> points;
  for (std::size_t i = 0; i < reports.size(); ++i)
    points.push_back({(*sessions)[i].number, (*sessions)[i].started_at, &reports[i]});
  print_page(call, report::practice_curve_page(trainee, points));
  return Exit::ok;
}

}  // namespace landdrill::cli
