#include "engine/report/pages/choosing.h"

#include <fmt/format.h>

#include "engine/cli/call.h"
#include "engine/cli/call_sheets.h"
#include "engine/report/pages/compare.h"
#include "engine/report/pages/forecast.h"
#include "engine/report/pages/plan.h"
#include "engine/report/pages/train.h"
#include "engine/report/width.h"
#include "tables/binary.h"
#include "tables/decimal.h"

namespace landdrill::cli {

namespace {

// Exit::usage for a mistake; Exit::errors where something is missing.
Exit refused(Call& call, const report::Refused& why) {
  if (!why.mistake.empty()) return misused(call, why.mistake);
  std::string text =
      fmt::format("landdrill {}: something is missing in \"{}\":\n", call.command.words, why.title);
  for (const std::string& obstacle : why.missing)
    text += report::paragraph("  - ", report::plain(obstacle), 80);
  call.streams.say(text);
  return Exit::errors;
}

Exit answered(Call& call, const OneRoutine& one, const report::ChoosingAnswer& answer) {
  if (!answer) return refused(call, answer.error());
  print_page(call, with_place(*answer, one.values()));
  return Exit::ok;
}

}  // namespace

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

Exit plan(Call& call) {
  const report::Typed<Decimal> seconds = report::plan_seconds(call.given);
  if (!seconds) return misused(call, seconds.error());
  const OneRoutine one(call, call.given.operands.front());
  if (!one) return one.exit();
  Progress progress(call.streams, "plan for " + std::string(one.routine().title));
  const auto go_on = [&, most = binary(*seconds)](std::uint64_t steps) {
    progress.show(fmt::format("{} steps of the search done", steps));
    return progress.seconds() < most;
  };
  const auto planned = report::plan(call.given, one.routine(), one.messages(), go_on);
  progress.clear();
  if (!planned) return refused(call, planned.error());
  print_page(call, with_place(planned->page, one.values()));
  return planned->found ? Exit::ok : Exit::errors;
}

Exit train(Call& call) {
  const OneRoutine one(call, call.given.operands.front());
  return one ? answered(call, one, report::train(call.given, one.routine(), one.messages())) : one.exit();
}

}  // namespace landdrill::cli
