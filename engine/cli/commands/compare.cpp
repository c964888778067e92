#include "engine/report/pages/compare.h"

#include <fmt/format.h>

#include "engine/cli/call.h"
#include "engine/cli/choosing.h"
#include "engine/cli/exit.h"
#include "engine/cli/one_routine.h"
#include "engine/cli/progress.h"
#include "engine/report/pages/choosing.h"

namespace landdrill::cli {

Exit compare(Call& call) {
  const OneRoutine one(call, call.given.operands.front());
  if (!one) return one.exit();
  Progress progress(call.streams, "compare");
  const auto show = [&](std::size_t done, std::size_t of) {
    progress.show(fmt::format("{} of {} elements", done, of));
  };
  const report::ChoosingAnswer answer = report::compare(call.given, one.routine(), one.messages(), show);
  progress.clear();
  return answered(call, one, answer);
}

}  // namespace landdrill::cli
