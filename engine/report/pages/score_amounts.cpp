#include "engine/report/figures.h"
#include "engine/report/page.h"
#include "engine/report/pages/face.h"
#include "engine/report/pages/score.h"
#include "engine/score/account.h"
#include "engine/score/bridge.h"
#include "tables/quantity.h"

namespace landdrill::report {
namespace {

constexpr int difficulty_places = 2;

Record both(const Amounts& amounts, int places) {
  return {{"estimate", text_of(amounts.estimate, places)},
          {"recorded", text_of(amounts.recorded, places)},
          {"difference", signed_text(amounts.difference, places)}};
}

PageTable amount_lines(std::string key, std::string line, std::vector<PageColumn> columns) {
  PageTable table(std::move(key), std::move(columns));
  table.in_csv = true;
  table.given = {{"line", std::move(line)}};
  return table;
}

PageTable element_amounts(const Account& account) {
  PageTable table = amount_lines(
      "elements", "element",
      program_columns({"number", "title", "kind", "option", "declared", "credited", "base_mark", "mark",
                       "points", "left", "rests_on", "recorded_credited", "recorded_base_mark",
                       "recorded_mark", "recorded_points", "difference", "worst"}));
  for (const ElementLine& line : account.elements) {
    const ElementResult& expected = line.expected;
    const ElementResult recorded = line.recorded.value_or(ElementResult{});
    table.add({line.number, line.title, line.kind, line.option, line.declared.text(difficulty_places),
               expected.credited.text(difficulty_places), expected.base, text_of(expected.mark),
               text_of(expected.points, expected.places), text_of(line.left, account.places),
               line.rests_on ? words_of(*line.rests_on) : "",
               line.recorded ? recorded.credited.text(difficulty_places) : "", recorded.base,
               text_of(recorded.mark), text_of(recorded.points, recorded.places),
               signed_text(line.difference, account.places), line.worst});
  }
  return table;
}

PageTable aspect_amounts(const Account& account) {
  PageTable table = amount_lines("impression", "impression",
                                 program_columns({"title", "weight", "mark", "points", "rests_on",
                                                  "recorded_mark", "recorded_points", "difference"}));
  for (const AspectLine& line : account.aspects) {
    table.add({line.title, line.weight.text(), text_of(line.expected.mark),
               text_of(line.expected.points, line.expected.places), words_of(line.rests_on),
               text_of(line.recorded.mark), text_of(line.recorded.points, line.recorded.places),
               signed_text(line.difference, account.places)});
  }
  return table;
}

// In CSV alone: in JSON these are objects of their own.
PageTable points_line(std::string line, const Amounts& amounts, int places) {
  PageTable table =
      amount_lines("", std::move(line), program_columns({"points", "recorded_points", "difference"}));
  if (amounts.estimate || amounts.recorded)
    table.add({text_of(amounts.estimate, places), text_of(amounts.recorded, places),
               signed_text(amounts.difference, places)});
  return table;
}

PageTable total_line(const Account& account) {
  const Amounts shown{account.total.estimate.value_or(account.so_far),
                      account.total.recorded ? account.total.recorded : account.recorded_so_far,
                      account.total.difference};
  PageTable table = points_line(account.total.estimate ? "total" : "so far", shown, account.places);
  table.given.insert(table.given.end(),
                     {{"declared", account.declared.text(difficulty_places)},
                      {"credited", account.credited.text(difficulty_places)},
                      {"recorded_credited", text_of(account.recorded_credited, difficulty_places)}});
  return table;
}

// Without a key, so that what is said of the whole is not said of every row in CSV.
PageParts totals(const Account& account) {
  const int places = account.places;
  PageParts facts;
  facts.fact("total", text_of(account.total.estimate, places));
  facts.fact("recorded_total", text_of(account.total.recorded, places));
  facts.fact("difference", signed_text(account.total.difference, places));
  facts.fact("announced", text_of(account.announced, places));
  facts.fact("announced_difference", signed_text(account.announced_difference, places));
  facts.fact("so_far", account.so_far.text(places));
  facts.fact("recorded_so_far", text_of(account.recorded_so_far, places));
  facts.fact("declared", account.declared.text(difficulty_places));
  facts.fact("credited", account.credited.text(difficulty_places));
  facts.fact("recorded_credited", text_of(account.recorded_credited, difficulty_places));
  return facts;
}

}  // namespace

void put_amounts(PageParts& page, const Account& account) {
  const int places = account.places;
  page.fact("panel", panel_name(account));
  page.section("", totals(account), Seen::by_programs);
  page.add(element_amounts(account), Seen::by_programs);
  page.fact("elements_together", both(account.together, places));
  page.add(points_line("elements together", account.together, places), Seen::by_programs);
  page.add(aspect_amounts(account), Seen::by_programs);
  page.fact("sync", both(account.sync, places));
  page.add(points_line("sync", account.sync, places), Seen::by_programs);
  page.fact("penalties", both(account.penalties, places));
  page.add(points_line("penalties", account.penalties, places), Seen::by_programs);
  page.add(total_line(account), Seen::by_programs);
  page.add(points_line("announced", {{}, account.announced, account.announced_difference}, places),
           Seen::by_programs);
}

namespace {

std::string cause_words(Cause cause) {
  constexpr std::string_view words[] = {"difficulty credited", "execution mark", "impression mark",
                                        "sync errors", "penalties"};
  return std::string(words[static_cast<std::size_t>(cause)]);
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
  way.fact("by_cause", by_cause(*account.bridge));
  page.single("bridge", std::move(way));
}

}  // namespace landdrill::report
