#include "engine/report/pages/plan.h"

#include <fmt/format.h>

#include "engine/cli/call.h"
#include "engine/cli/choosing.h"
#include "engine/cli/exit.h"
#include "engine/cli/misused.h"
#include "engine/cli/one_routine.h"
#include "engine/cli/page.h"
#include "engine/cli/progress.h"
#include "engine/report/pages/choosing.h"
#include "engine/report/pages/plan_wish.h"
#include "tables/binary.h"
#include "tables/decimal.h"

namespace landdrill::cli {

Exit plan(Call& call) {
  const report::Typed<Decimal> seconds = report::plan_seconds(call.given);
  if (!seconds) return misused(call, seconds.error());
  const OneRoutine one(call, call.given.operands.front());
  if (!one) return one.exit();
  Progress progress(call.streams, "plan for " + std::string(one.routine().title));
  const auto go_on = [&, most = binary(*seconds)](std::uint64_t steps) {
    progress.show(fmt::format("{} beginnings of a programme looked at", steps));
    return progress.seconds() < most;
  };
  const auto planned = report::plan(call.given, one.routine(), one.messages(), go_on);
  progress.clear();
  if (!planned) return refused(call, planned.error());
  print_page(call, with_place(planned->page, one.values()));
  return planned->found ? Exit::ok : Exit::errors;
}

}  // namespace landdrill::cli
