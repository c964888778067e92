#include <array>

#include "engine/report/grid.h"
#include "engine/report/sections.h"

namespace landdrill::report {
namespace {

constexpr std::array causes{Cause::difficulty, Cause::execution, Cause::impression, Cause::sync, Cause::penalty};

std::string_view plain_word(Cause cause) {
  switch (cause) {
    case Cause::difficulty: return "difficulty credited";
    case Cause::execution: return "execution mark";
    case Cause::impression: return "impression mark";
    case Cause::sync: return "sync errors";
    case Cause::penalty: return "penalties";
  }
  return "";
}

std::string what_changed(const BridgeStep& step) {
  return std::string(plain_word(step.cause)) + " " + step.before + " to " + step.after;
}

std::string steps_table(const Bridge& bridge, const TextWish& wish) {
  using enum GridColumn::Align;
  Grid grid({{"line", words, true}, {"what changed", words, true}, {"change", amount}, {"points", amount}});
  grid.add({"Estimate", "", "", bridge.from.text(4)}, Look::total);
  for (const BridgeStep& step : bridge.steps) {
    grid.add({step.label, what_changed(step), with_sign(step.change.text(4)), step.reached.text(4)});
  }
  grid.add({"Panel", "", "", bridge.to.text(4)}, Look::total);
  return grid.text(wish.width, wish.colour);
}

std::string cause_table(const Bridge& bridge, const TextWish& wish) {
  using enum GridColumn::Align;
  Grid grid({{"by cause", words, true}, {"change", amount}});
  for (Cause cause : causes) {
    const Points change = bridge.by_cause(cause);
    if (change != Points()) grid.add({std::string(plain_word(cause)), with_sign(change.text(4))});
  }
  const std::string table = grid.text(wish.width, wish.colour);
  return table.empty() ? "" : "\n" + table;
}

}  // namespace

std::string bridge_section(const Account& account, const TextWish& wish) {
  if (!account.bridge) return "";
  return heading("From estimate to result", wish) + steps_table(*account.bridge, wish) + cause_table(*account.bridge, wish);
}

}  // namespace landdrill::report
