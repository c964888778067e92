#include "engine/report/pages/practice_compare.h"

#include <fmt/format.h>

#include <string>
#include <vector>

#include "engine/report/figures.h"
#include "engine/report/pages/practice.h"
#include "tables/value_set.h"

namespace landdrill::report {
namespace {

PageTable trainees_table(const PracticeComparison& comparison) {
  PageTable table("trainees", {{"trainee", "trainee", Align::words, Wraps::yes},
                               {"marks", "marks", Align::amount},
                               {"bias", "bias", Align::amount},
                               {"", "95 % interval", Align::words, Wraps::yes},
                               {"difference", "off", Align::amount},
                               {"within_one", "within a step", Align::amount},
                               {"order", "order", Align::amount},
                               for_programs("bias_low"),
                               for_programs("bias_high"),
                               for_programs("again")});
  table.in_csv = true;
  for (const PracticeComparison::One& one : comparison.ones)
    table.add({one.name, one.marked - one.again, signed_entry(one.bias.value),
               signed_interval(one.bias.low, one.bias.high), figure_entry(one.difference),
               Entry(in_per_cent(one.within_one), figure_datum(one.within_one)),
               figure_entry(one.order.value), figure_datum(one.bias.low), figure_datum(one.bias.high),
               one.again});
  return table;
}

PageTable pairs_table(const PracticeComparison& comparison) {
  PageTable table("pairs", {{"trainee", "trainee", Align::words, Wraps::yes},
                            {"other", "beside", Align::words, Wraps::yes},
                            {"lines", "lines", Align::amount},
                            {"bias", "higher by", Align::amount},
                            {"", "95 % interval", Align::words, Wraps::yes},
                            {"difference", "apart", Align::amount},
                            for_programs("bias_low"),
                            for_programs("bias_high")});
  for (const PracticeComparison::Two& two : comparison.pairs)
    table.add({comparison.ones[two.one].name, comparison.ones[two.other].name, two.bias.rows,
               signed_entry(two.bias.value), signed_interval(two.bias.low, two.bias.high),
               figure_entry(two.difference), figure_datum(two.bias.low), figure_datum(two.bias.high)});
  return table;
}

}  // namespace

Page practice_compare_page(const PracticeComparison& comparison) {
  Page page("practice compare");
  page.csv = {"trainee",    "marks",      "bias",  "bias_low", "bias_high",
              "difference", "within_one", "order", "again"};
  page.heading(fmt::format("Trainees beside {}", comparison.reference));
  page.fact("reference", comparison.reference);
  page.apart();
  page.list("sentences", comparison.sentences);
  if (comparison.sentences.empty()) page.apart();
  page.list("warnings", comparison.warnings);
  page.apart();
  page.add(trainees_table(comparison));
  PageTable pairs = pairs_table(comparison);
  if (!pairs.rows.empty()) page.heading("Beside each other, on the lines that both marked");
  page.add(std::move(pairs));
  return page;
}

namespace {

std::string parts_text(const PartUses& parts) {
  std::string text;
  for (const PartUse& use : parts)
    text += fmt::format("{}{}{}", text.empty() ? "" : ", ", use.part->code,
                        use.times == 1 ? "" : fmt::format(" x{}", use.times));
  return text;
}

std::string scale_of(const PanelRule& rule) {
  return fmt::format("{} to {}, step {}", rule.least.text(), rule.most.text(), rule.step.text());
}

}  // namespace

Page marking_form_page(const Routine& routine) {
  constexpr const char* room_for_a_mark = "________";
  Page page("practice form");
  page.title(fmt::format("{}: {}", routine.title, routine.event->title));
  page.say("Meet ______________________   Day ______________");
  page.apart();
  PageTable form("", {{"", "element", Align::words, Wraps::yes},
                      {"", "parts", Align::words, Wraps::yes},
                      {"", "scale"},
                      {"", "mark"}});
  form.hides_empty_columns = true;
  const auto add = [&](std::string line, std::string parts, const PanelRule& rule) {
    form.add_rule();
    form.add({std::move(line), std::move(parts), scale_of(rule), room_for_a_mark});
  };
  for (const Element& element : routine.elements)
    if (element.panel != nullptr)
      add(name_of(element), parts_text(element.options.front().parts), *element.panel);
  for (const PanelRule* rule : routine.aspects)
    add(rule->title.empty() ? rule->aspect : rule->title, "", *rule);
  page.add(std::move(form));
  return page;
}

}  // namespace landdrill::report
