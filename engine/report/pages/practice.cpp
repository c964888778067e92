#include "engine/report/pages/practice.h"

#include <fmt/format.h>

#include "engine/report/figures.h"
#include "engine/report/pages/practice_figures.h"
#include "engine/report/pages/practice_list.h"
#include "tables/binary.h"
#include "tables/quantity.h"

namespace landdrill::report {
namespace {

std::string judges_marks(const JudgeMarks& judges) {
  std::string text;
  for (const std::optional<Mark>& mark : judges)
    text += (text.empty() ? "" : " ") + (mark ? mark->text(2) : std::string("-"));
  return text;
}

std::string marked_text(const Practised& done) {
  return done.mark ? done.mark->text(2) : std::string();
}

std::string distance_text(const PracticeTask& task, const Practised& done) {
  return done.mark ? off_by(binary(*done.mark) - task.kept) : std::string();
}

PageTable tasks_table(const PracticeTold& told) {
  const auto for_programs = [](const char* key) {
    return PageColumn{key, "", Align::words, Wraps::no, Seen::by_programs};
  };
  PageTable table("marks", {for_programs("routine"),
                            for_programs("panel"),
                            for_programs("line"),
                            for_programs("kind"),
                            {"", "element", Align::words, Wraps::yes},
                            {"", "swum", Align::words, Wraps::yes},
                            {"mark", "you", Align::amount},
                            for_programs("late"),
                            {"kept", "panel", Align::amount},
                            {"", "off", Align::amount},
                            {"", "judges", Align::words, Wraps::yes},
                            for_programs("corrected")});
  for (std::size_t i = 0; i < told.tasks.size(); ++i) {
    const PracticeTask& task = told.tasks[i];
    const Practised& done = told.done[i];
    const std::string yours = done.mark ? marked_text(done) : done.late ? "too late" : "skipped";
    table.add({task.routine, task.panel, task.line, task.kind, task.label, task.routine + ", " + task.panel,
               Entry(yours, marked_text(done)), Entry("", done.late), figure_entry(task.kept),
               distance_text(task, done), judges_marks(task.judges), Entry("", task.corrected)});
  }
  return table;
}

// A spreadsheet has figures as they are told.
PageTable tasks_in_csv(const PracticeTold& told) {
  PageTable table("", {{"routine", ""},
                       {"panel", ""},
                       {"line", ""},
                       {"kind", ""},
                       {"mark", ""},
                       {"late", ""},
                       {"kept", ""},
                       {"off", ""},
                       {"corrected", ""}});
  table.in_csv = true;
  for (std::size_t i = 0; i < told.tasks.size(); ++i) {
    const PracticeTask& task = told.tasks[i];
    const Practised& done = told.done[i];
    table.add({task.routine, task.panel, task.line, task.kind, marked_text(done), done.late ? "yes" : "no",
               figure(task.kept), distance_text(task, done), task.corrected ? "yes" : "no"});
  }
  return table;
}

Record summary_of(const PracticeReport& report) {
  return {{"marked", report.marked},
          {"skipped", report.skipped},
          {"late", report.late},
          {"corrected", report.corrected},
          {"bias", figure_datum(report.bias)},
          {"difference", figure_datum(report.difference)},
          {"within_one", figure_datum(report.within_one)},
          {"within_two", figure_datum(report.within_two)},
          {"order", figure_datum(report.order.value)},
          {"spread", figure_datum(report.spread)},
          {"panel_spread", figure_datum(report.panel_spread)},
          {"first_half", figure_datum(report.first_half)},
          {"second_half", figure_datum(report.second_half)}};
}

void put_eye(const PracticeReport& report, PageParts& page) {
  page.fact("summary", {"", summary_of(report)});
  if (!report.bias) return;
  PageTable table("", {{"", ""}, {"", "", Align::words, Wraps::yes}});
  table.add({"bias", off_by(report.bias) + " marks (above the panel is +)"});
  table.add({"how far off", figure(report.difference) + " marks on average, whichever way"});
  table.add(
      {"within one step", in_per_cent(report.within_one) + ", within two " + in_per_cent(report.within_two)});
  if (report.order.value)
    table.add({"same order", figure(report.order.value) + " (1 ranks as the panel does, 0 as chance would)"});
  table.add({"use of the scale",
             fmt::format("you {} to {}, the panel {} to {}", figure(report.lowest), figure(report.highest),
                         figure(report.panel_lowest), figure(report.panel_highest))});
  if (report.first_half)
    table.add({"steadiness", fmt::format("off by {} in the first half, {} in the second",
                                         figure(report.first_half), figure(report.second_half))});
  if (report.late > 0) table.add({"too late", fmt::format("{} of the marks", report.late)});
  page.heading("How you mark");
  page.add(std::move(table));
}

void put_where(const PracticeReport& report, PageParts& page) {
  constexpr std::string_view by[] = {"kind", "level", "time"};
  PageTable table("where", {{"by", "", Align::words, Wraps::no, Seen::by_programs},
                            {"name", "where", Align::words, Wraps::yes},
                            {"marks", "marks", Align::amount},
                            {"bias", "you are", Align::amount},
                            {"difference", "off", Align::amount}});
  auto before = PracticeReport::Where::By::kind;
  for (const auto& one : report.where) {
    if (one.by != before) table.add_rule();
    before = one.by;
    table.add({by[static_cast<std::size_t>(one.by)], one.name, Entry(std::to_string(one.tasks), one.tasks),
               Entry(off_by(one.bias), figure_datum(one.bias)), figure_entry(one.difference)});
  }
  const bool several = report.where.size() > 1;
  if (several) page.heading("Where you are off");
  page.add(std::move(table), several ? Seen::always : Seen::by_programs);
}

void put_against_judges(const PracticeReport& report, PageParts& page) {
  PageTable table("judges", {{"judge", "judge"},
                             {"marks", "marks", Align::amount},
                             {"bias", "you are", Align::amount},
                             {"difference", "apart", Align::amount}});
  for (const auto& one : report.judges)
    table.add({Entry(fmt::format("judge {}", one.judge + 1), one.judge + 1),
               Entry(std::to_string(one.tasks), one.tasks), Entry(off_by(one.bias), figure_datum(one.bias)),
               figure_entry(one.difference)});
  if (!table.rows.empty()) page.heading("Against each judge");
  page.add(std::move(table));
}

}  // namespace

Page practice_page(const PracticeTold& told) {
  const PracticeReport& report = *told.report;
  Page page("practice report");
  page.csv = {"trainee", "started", "routine", "panel", "line",     "kind",
              "mark",    "late",    "kept",    "off",   "corrected"};
  page.heading(fmt::format("Practice of {}, {}: {} marked, {} not", told.trainee, moment(told.started),
                           report.marked, report.skipped));
  page.fact("trainee", told.trainee);
  page.fact("started", told.started);
  if (!report.sentences.empty()) page.apart();
  page.list("sentences", report.sentences);
  if (report.sentences.empty()) page.apart();
  page.list("warnings", report.warnings);
  page.heading("Your marks beside the panel's");
  page.add(tasks_table(told));
  page.add(tasks_in_csv(told), Seen::by_programs);
  put_eye(report, page);
  put_where(report, page);
  put_against_judges(report, page);
  return page;
}

}  // namespace landdrill::report
