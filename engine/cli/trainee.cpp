#include "engine/cli/trainee.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>
#include <ctime>

#include "engine/report/pages/practice.h"
#include "engine/season/practice_tasks.h"
#include "grammar/calendar.h"
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

std::string as_day(const std::tm& time) {
  return fmt::format("{:04}-{:02}-{:02}", time.tm_year + 1900, time.tm_mon + 1, time.tm_mday);
}

}  // namespace

std::string today() {
  const char* const said = std::getenv("LANDDRILL_TODAY");
  if (said != nullptr && is_written_day(said)) return said;
  const std::time_t now = std::time(nullptr);
  std::tm here{}, universal{};
  localtime_r(&now, &here);
  gmtime_r(&now, &universal);
  return std::max(as_day(here), as_day(universal));
}

}  // namespace landdrill::cli
