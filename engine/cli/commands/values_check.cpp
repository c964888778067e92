#include <fmt/format.h>

#include "engine/cli/call.h"
#include "engine/cli/exit.h"
#include "engine/cli/find_values.h"
#include "engine/files/read_set.h"
#include "tables/value_set.h"

namespace landdrill::cli {
namespace {

std::size_t gaps_of(const ValueSet& set) {
  std::size_t gaps = 0;
  for (const Part& part : set.parts) gaps += !part.value;
  for (const Kind& kind : set.kinds) gaps += !kind.formula + !kind.base;
  for (const PanelRule& rule : set.panels) gaps += !rule.weight;
  for (const SyncClass& sync : set.sync) gaps += !sync.points;
  for (const Penalty& penalty : set.penalties) gaps += !penalty.points;
  return gaps;
}

std::string set_verdict(const ReadSet& set) {
  const std::size_t errors = set.loaded.diagnostics.errors(), warnings = set.loaded.diagnostics.warnings();
  if (errors > 0) return fmt::format("{} error{}", errors, errors == 1 ? "" : "s");
  std::string text = warnings == 0
                         ? "ok"
                         : fmt::format("can be used, with {} warning{}", warnings, warnings == 1 ? "" : "s");
  const std::size_t gaps = gaps_of(*set.loaded.set);
  if (gaps > 0) text += fmt::format("; {} value{} still to fill in", gaps, gaps == 1 ? "" : "s");
  return text;
}

}  // namespace

Exit values_check(Call& call) {
  Values values(call);
  Exit worst = Exit::ok;
  for (const std::string& operand : call.given.operands) {
    const auto set = values.of_operand(operand);
    if (!set) {
      worst = worse(worst, refuse(call, set.error()));
      continue;
    }
    call.streams.say(to_string((*set)->loaded.diagnostics));
    call.streams.out.write(fmt::format("{}: {}\n", (*set)->files.name, set_verdict(**set)));
    if (!(*set)->loaded.diagnostics.ok()) worst = worse(worst, Exit::errors);
  }
  return worst;
}

}  // namespace landdrill::cli
