#include "engine/report/pages/forecast.h"

#include <fmt/format.h>

#include "engine/cli/call.h"
#include "engine/cli/choosing.h"
#include "engine/cli/exit.h"
#include "engine/cli/misused.h"
#include "engine/cli/one_routine.h"
#include "engine/cli/progress.h"
#include "engine/report/pages/choosing.h"

namespace landdrill::cli {
namespace {

Exit foretold(Call& call, const OneRoutine& one, const std::optional<report::RivalSheet>& rival) {
  Progress progress(call.streams, "forecast");
  const auto show = [&](std::size_t done, std::size_t of) {
    progress.show(fmt::format("{} of {} kinds of day", done, of));
  };
  const report::ChoosingAnswer answer =
      report::forecast(call.given, {one.routine(), one.messages()}, rival, show);
  progress.clear();
  return answered(call, one, answer);
}

}  // namespace

Exit forecast(Call& call) {
  const std::string against(call.given.value("--against"));
  if (call.given.operands.front() == "-" && against == "-")
    return misused(call, "found - for both sheets; expected standard input for one of them at most");
  const OneRoutine one(call, call.given.operands.front());
  if (!one) return one.exit();
  if (!call.given.has("--against")) return foretold(call, one, std::nullopt);
  const OneRoutine other(call, against);
  if (!other) return other.exit();
  return foretold(call, one, report::RivalSheet{other.routine(), shown(against)});
}

}  // namespace landdrill::cli
