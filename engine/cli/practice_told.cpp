#include "engine/cli/practice_told.h"

#include <fmt/format.h>

#include "engine/cli/page.h"
#include "engine/judging/practice.h"
#include "engine/report/pages/practice.h"
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

}  // namespace landdrill::cli
