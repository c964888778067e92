#include "engine/report/pages/practice.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

#include "engine/judging/statistics/figures.h"
#include "engine/judging/statistics/sample.h"
#include "engine/report/figures.h"
#include "tables/binary.h"
#include "tables/quantity.h"

namespace landdrill::report {
namespace {

constexpr std::string_view the_panel = "the panel";

std::string marked_text(const Practised& done) {
  return done.mark ? done.mark->text(2) : std::string();
}

PageTable tasks_table(const PracticeTold& told) {
  PageTable table("marks", {for_programs("routine"),
                            for_programs("panel"),
                            for_programs("line"),
                            for_programs("kind"),
                            {"", "element", Align::words, Wraps::yes},
                            {"", "swum", Align::words, Wraps::yes},
                            {"mark", "you", Align::amount},
                            for_programs("late"),
                            {"kept", told.reference == the_panel ? "panel" : told.reference, Align::amount},
                            amount_column("", "off", "", "off"),
                            {"", "judges", Align::words, Wraps::yes},
                            for_programs("corrected"),
                            for_programs("again"),
                            {"", "", Align::words, Wraps::yes},
                            // In their place a spreadsheet has figures and words as they are told.
                            for_programs("", "late"),
                            for_programs("", "kept"),
                            for_programs("", "corrected"),
                            for_programs("", "again")});
  table.in_csv = true;
  table.hides_empty_columns = true;
  for (std::size_t i = 0; i < told.tasks.size(); ++i) {
    const PracticeTask& task = told.tasks[i];
    const Practised& done = told.done[i];
    const std::string off = done.mark ? off_by(binary(*done.mark) - task.kept) : std::string();
    const std::string yours = done.mark ? marked_text(done) : done.late ? "too late" : "skipped";
    table.add({task.routine, task.panel, task.line, task.kind, task.label, task.routine + ", " + task.panel,
               Entry(yours, marked_text(done)), done.late, figure_entry(task.kept), off,
               told.reference == the_panel ? judges_marks(task.judges) : "", task.corrected, task.again,
               task.again ? "met before" : "", done.late ? "yes" : "no", figure(task.kept),
               task.corrected ? "yes" : "no", task.again ? "yes" : "no"});
  }
  return table;
}

// "+0.28 marks (-0.46 to +1.03; above the panel is +)"
std::string bias_words(const PracticeTold& told) {
  const Statistic& bias = told.report->bias;
  const std::string within = signed_interval(bias.low, bias.high);
  return fmt::format("{} marks ({}above {} is +)", off_by(bias.value), within.empty() ? "" : within + "; ",
                     told.reference);
}

// "0.77 (0.22 to 0.95; 1 ranks as the panel does, 0 as chance would)"
std::string order_words(const PracticeTold& told) {
  const Statistic& order = told.report->order;
  const std::string within = interval(order.low, order.high);
  return fmt::format("{} ({}1 ranks as {} does, 0 as chance would)", figure(order.value),
                     within.empty() ? "" : within + "; ", told.reference);
}

void put_eye(const PracticeTold& told, PageParts& page) {
  const PracticeReport& report = *told.report;
  page.fact("summary", summary_of(report));
  if (!report.bias.value) return;
  PageTable table("", {{"", ""}, {"", "", Align::words, Wraps::yes}});
  table.add({"bias", bias_words(told)});
  table.add({"how far off", figure(report.difference) + " marks on average, whichever way"});
  table.add(
      {"within one step", in_per_cent(report.within_one) + ", within two " + in_per_cent(report.within_two)});
  if (report.order.value) table.add({"same order", order_words(told)});
  table.add({"use of the scale",
             fmt::format("you {} to {}, {} {} to {}", figure(report.lowest), figure(report.highest),
                         told.reference, figure(report.panel_lowest), figure(report.panel_highest))});
  if (report.first_half)
    table.add({"steadiness", fmt::format("off by {} in the first half, {} in the second",
                                         figure(report.first_half), figure(report.second_half))});
  if (report.late > 0) table.add({"too late", fmt::format("{} of the marks", report.late)});
  page.heading("How you mark");
  page.add(std::move(table));
}

void put_where(const PracticeReport& report, PageParts& page) {
  constexpr std::string_view by[] = {"kind", "level", "time"};
  PageTable table("where", {for_programs("by"),
                            {"name", "where", Align::words, Wraps::yes},
                            {"marks", "marks", Align::amount},
                            {"bias", "you are", Align::amount},
                            {"", "95 % interval", Align::words, Wraps::yes},
                            {"difference", "off", Align::amount},
                            for_programs("bias_low"),
                            for_programs("bias_high"),
                            for_programs("more_than_chance")});
  auto before = PracticeReport::Where::By::kind;
  for (const auto& one : report.where) {
    if (one.by != before) table.add_rule();
    before = one.by;
    table.add({by[static_cast<std::size_t>(one.by)], one.name, one.tasks,
               Entry(off_by(one.bias.value), figure_datum(one.bias.value)),
               signed_interval(one.bias.low, one.bias.high), figure_entry(one.difference),
               figure_datum(one.bias.low), figure_datum(one.bias.high), one.told});
  }
  const bool several = report.where.size() > 1;
  if (several) page.heading("Where you are off");
  page.add(std::move(table), several ? Seen::always : Seen::by_programs);
  if (!several) return;
  page.apart();
  page.say("Where nothing is said of it above, a difference between these may be chance.");
}

bool is_same_panel(const PracticeReport::Against& one, const PracticeReport::Against& other) {
  return one.panel == other.panel && one.event == other.event && one.of_elements == other.of_elements;
}

PageTable judges_table() {
  return PageTable("judges", {for_programs("panel"),
                              for_programs("event"),
                              for_programs("of"),
                              {"judge", "judge"},
                              {"marks", "marks", Align::amount},
                              {"bias", "you are", Align::amount},
                              {"", "95 % interval", Align::words, Wraps::yes},
                              {"difference", "apart", Align::amount},
                              for_programs("bias_low"),
                              for_programs("bias_high")});
}

// A table for each panel: seats of different ones are not one judge.
void put_against_judges(const PracticeReport& report, PageParts& page) {
  PageTable table = judges_table();
  for (std::size_t i = 0; i < report.judges.size(); ++i) {
    const PracticeReport::Against& one = report.judges[i];
    const std::string_view of = one.of_elements ? "elements" : "aspects";
    table.add({one.panel, one.event, of, Entry(fmt::format("judge {}", one.judge + 1), one.judge + 1),
               one.bias.rows, Entry(off_by(one.bias.value), figure_datum(one.bias.value)),
               signed_interval(one.bias.low, one.bias.high), figure_entry(one.difference),
               figure_datum(one.bias.low), figure_datum(one.bias.high)});
    if (i + 1 < report.judges.size() && is_same_panel(one, report.judges[i + 1])) continue;
    page.heading(fmt::format("Against each judge: {}, {} of {}", one.panel, of, one.event));
    page.add(std::exchange(table, judges_table()));
  }
  if (report.judges.empty()) page.add(std::move(table));
}

}  // namespace

std::string off_by(std::optional<double> value) {
  const std::string text = figure(value);
  return text.empty() || text.starts_with('-') ? text : "+" + text;
}

std::string in_per_cent(std::optional<double> share) {
  return share ? landdrill::figure(*share * 100, 0) + " %" : std::string();
}

Record summary_of(const PracticeReport& report) {
  return {{"marked", report.marked},
          {"skipped", report.skipped},
          {"late", report.late},
          {"corrected", report.corrected},
          {"again", report.again},
          {"meets", report.meets},
          {"bias", figure_datum(report.bias.value)},
          {"bias_low", figure_datum(report.bias.low)},
          {"bias_high", figure_datum(report.bias.high)},
          {"difference", figure_datum(report.difference)},
          {"within_one", figure_datum(report.within_one)},
          {"within_two", figure_datum(report.within_two)},
          {"order", figure_datum(report.order.value)},
          {"spread", figure_datum(report.spread)},
          {"panel_spread", figure_datum(report.panel_spread)},
          {"first_half", figure_datum(report.first_half)},
          {"second_half", figure_datum(report.second_half)}};
}

std::string judges_marks(const JudgeMarks& judges) {
  std::string text;
  for (const std::optional<Mark>& mark : judges)
    text += (text.empty() ? "" : " ") + (mark ? mark->text(2) : std::string("-"));
  return text;
}

Page practice_page(const PracticeTold& told) {
  const PracticeReport& report = *told.report;
  Page page("practice report");
  page.csv = {"trainee", "started", "routine", "panel", "line",      "kind",
              "mark",    "late",    "kept",    "off",   "corrected", "again"};
  page.heading(fmt::format("Practice of {}, {}: {} marked, {} not", told.trainee, moment(told.started),
                           report.marked, report.skipped));
  page.fact("trainee", told.trainee);
  page.fact("started", told.started);
  if (!report.sentences.empty()) page.apart();
  page.list("sentences", report.sentences);
  if (report.sentences.empty()) page.apart();
  page.list("warnings", report.warnings);
  page.heading(fmt::format("Your marks beside {}'s", told.reference));
  if (told.reference != the_panel) page.fact("reference", told.reference);
  page.add(tasks_table(told));
  put_eye(told, page);
  put_where(report, page);
  if (told.reference == the_panel) put_against_judges(report, page);
  return page;
}

}  // namespace landdrill::report
