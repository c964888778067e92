#include "engine/report/grid.h"
#include "engine/report/sections.h"

namespace landdrill::report {
namespace {

std::string_view plain_word(Cause cause) {
  switch (cause) {
    case Cause::difficulty:
      return "difficulty credited";
    case Cause::execution:
      return "execution mark";
    case Cause::impression:
      return "impression mark";
    case Cause::sync:
      return "sync errors";
    case Cause::penalty:
      return "penalties";
  }
  return "";
}

std::string what_changed(const BridgeStep& step, const Account& account) {
  std::string words(plain_word(step.cause));
  if (step.cause == Cause::difficulty && step.element) {
    const ElementLine& line = account.elements.at(*step.element);
    if (line.recorded_base && !line.base) words = "base mark given,";
    if (line.base && !line.recorded_base) words = "no base mark given,";
  }
  if (step.cause == Cause::sync || step.cause == Cause::penalty) words = "points taken off";
  return words + " " + step.before + " to " + step.after;
}

std::string steps_table(const Account& account, const TextWish& wish) {
  const Bridge& bridge = *account.bridge;
  using enum Align;
  Grid grid({{"line", words, true}, {"what changed", words, true}, {"change", amount}, {"total", amount}});
  grid.add({"Estimate", "", "", bridge.from.text(4)}, Look::total);
  for (const BridgeStep& step : bridge.steps) {
    grid.add({step.label, what_changed(step, account), with_sign(step.change.text(4)), step.reached.text(4)});
  }
  grid.add({"Panel", "", "", bridge.to.text(4)}, Look::total);
  return grid.text(wish.width, wish.colour);
}

std::string cause_table(const Account& account, const TextWish& wish) {
  const Bridge& bridge = *account.bridge;
  using enum Align;
  Grid grid({{"by cause", words, true}, {"change", amount}});
  int different = 0;
  for (const Cause cause : all_causes) {
    const Points change = bridge.by_cause(cause);
    if (change == Points()) continue;
    grid.add({std::string(plain_word(cause)), with_sign(change.text(4))});
    ++different;
  }
  if (different < 2) return "";
  if (!account.difference.empty()) grid.add({"together", with_sign(account.difference)}, Look::total);
  const std::string table = grid.text(wish.width, wish.colour);
  return table.empty() ? "" : "\n" + table;
}

}  // namespace

std::string bridge_section(const Account& account, const TextWish& wish) {
  if (!account.bridge) return "";
  return heading("From estimate to result", wish) + steps_table(account, wish) + cause_table(account, wish);
}

}  // namespace landdrill::report
