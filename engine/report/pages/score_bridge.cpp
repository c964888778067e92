#include "engine/report/amount_text.h"
#include "engine/report/page.h"
#include "engine/report/pages/score_parts.h"
#include "engine/score/account.h"
#include "engine/score/bridge.h"
#include "tables/quantity.h"

namespace landdrill::report {
namespace {

std::string cause_words(Cause cause) {
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
  std::string words = cause_words(step.cause);
  if (step.cause == Cause::difficulty && step.element) {
    const ElementLine& line = account.elements.at(*step.element);
    const bool given = line.recorded && line.recorded->base;
    if (given && !line.expected.base) words = "base mark given,";
    if (!given && line.expected.base) words = "no base mark given,";
  }
  if (step.cause == Cause::sync || step.cause == Cause::penalty) words = "points taken off";
  return words + " " + step.before.text(step.places) + " to " + step.after.text(step.places);
}

void add_end(PageTable& table, const std::string& words, Points total, int places) {
  table.add({"", "", words, "", "", "", "", total.text(places)}, Look::total, Seen::by_people);
}

PageTable steps_table(const Account& account) {
  const Bridge& bridge = *account.bridge;
  PageTable table("steps", {{"cause", "cause", Align::words, Wraps::no, Seen::by_programs},
                            {"element", "element", Align::amount, Wraps::no, Seen::by_programs},
                            {"label", "line", Align::words, Wraps::yes},
                            {"before", "before", Align::amount, Wraps::no, Seen::by_programs},
                            {"after", "after", Align::amount, Wraps::no, Seen::by_programs},
                            {"", "what changed", Align::words, Wraps::yes, Seen::by_people},
                            {"change", "change", Align::amount},
                            {"reached", "total", Align::amount}});
  add_end(table, "Estimate", bridge.from, account.places);
  for (const BridgeStep& step : bridge.steps) {
    const std::optional<Points> change = step.change;
    table.add({word_of(step.cause),
               {"", step.element ? Datum(account.elements.at(*step.element).number) : Datum()},
               step.label,
               step.before.text(step.places),
               step.after.text(step.places),
               what_changed(step, account),
               {signed_text(change, account.places), step.change.text()},
               {step.reached.text(account.places), step.reached.text()}});
  }
  add_end(table, "Panel", bridge.to, account.places);
  table.picture = {Picture::As::bridge, "From estimate to result", "points", "label", {"change", "reached"}};
  return table;
}

PageTable cause_table(const Account& account) {
  PageTable table("", {{"cause", "by cause", Align::words, Wraps::yes}, {"change", "change", Align::amount}});
  for (const Cause cause : all_causes) {
    const std::optional<Points> change = account.bridge->by_cause(cause);
    if (*change != Points()) table.add({cause_words(cause), signed_text(change, account.places)});
  }
  if (table.rows.size() < 2) table.rows.clear();
  if (!table.rows.empty())
    table.add({"together", signed_text(account.total.difference, account.places)}, Look::total);
  return table;
}

Record by_cause(const Bridge& bridge) {
  Record causes;
  for (const Cause cause : all_causes) causes.emplace_back(word_of(cause), bridge.by_cause(cause).text());
  return causes;
}

}  // namespace

void put_bridge(PageParts& page, const Account& account) {
  if (!account.bridge) return page.fact("bridge", {});
  PageParts way;
  way.heading("From estimate to result");
  way.fact("from", account.bridge->from.text());
  way.fact("to", account.bridge->to.text());
  way.add(steps_table(account));
  way.apart();
  way.add(cause_table(account), Seen::by_people);
  way.fact("by_cause", {"", by_cause(*account.bridge)});
  page.single("bridge", std::move(way));
}

}  // namespace landdrill::report
