#include "engine/report/pages/practice.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/judging/statistics/figures.h"
#include "engine/report/figures.h"
#include "tables/binary.h"
#include "tables/quantity.h"

namespace landdrill::report {
namespace {

// "+0.25", "-0.25", "+0.00".
std::string off_by(std::optional<double> value) {
  const std::string text = figure(value);
  return text.empty() || text.starts_with('-') ? text : "+" + text;
}

// "20 %"
std::string in_per_cent(std::optional<double> share) {
  return share ? landdrill::figure(*share * 100, 0) + " %" : std::string();
}

std::string judges_marks(const JudgeMarks& judges) {
  std::string text;
  for (const std::optional<Mark>& mark : judges)
    text += (text.empty() ? "" : " ") + (mark ? mark->text(2) : std::string("-"));
  return text;
}

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
                            {"kept", "panel", Align::amount},
                            amount_column("", "off", "", "off"),
                            {"", "judges", Align::words, Wraps::yes},
                            for_programs("corrected"),
                            // In their place a spreadsheet has figures and words as they are told.
                            for_programs("", "late"),
                            for_programs("", "kept"),
                            for_programs("", "corrected")});
  table.in_csv = true;
  for (std::size_t i = 0; i < told.tasks.size(); ++i) {
    const PracticeTask& task = told.tasks[i];
    const Practised& done = told.done[i];
    const std::string off = done.mark ? off_by(binary(*done.mark) - task.kept) : std::string();
    const std::string yours = done.mark ? marked_text(done) : done.late ? "too late" : "skipped";
    table.add({task.routine, task.panel, task.line, task.kind, task.label, task.routine + ", " + task.panel,
               Entry(yours, marked_text(done)), done.late, figure_entry(task.kept), off,
               judges_marks(task.judges), task.corrected, done.late ? "yes" : "no", figure(task.kept),
               task.corrected ? "yes" : "no"});
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
  page.fact("summary", summary_of(report));
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
  PageTable table("where", {for_programs("by"),
                            {"name", "where", Align::words, Wraps::yes},
                            {"marks", "marks", Align::amount},
                            {"bias", "you are", Align::amount},
                            {"difference", "off", Align::amount}});
  auto before = PracticeReport::Where::By::kind;
  for (const auto& one : report.where) {
    if (one.by != before) table.add_rule();
    before = one.by;
    table.add({by[static_cast<std::size_t>(one.by)], one.name, one.tasks,
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
    table.add({Entry(fmt::format("judge {}", one.judge + 1), one.judge + 1), one.tasks,
               Entry(off_by(one.bias), figure_datum(one.bias)), figure_entry(one.difference)});
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
  put_eye(report, page);
  put_where(report, page);
  put_against_judges(report, page);
  return page;
}

namespace {

// One sign for each tenth of a mark that she is off.
std::string bar_of(const PracticeReport& report) {
  const auto tenths = static_cast<std::size_t>(std::lround(report.difference.value_or(0) * 10));
  return std::string(std::min<std::size_t>(tenths, 20), '=');
}

// For people and, with figures as they are told, for a spreadsheet.
PageTable sessions_table(const std::vector<PracticePoint>& points) {
  PageTable table("", {{"number", "", Align::amount},
                       {"started", "session"},
                       {"marked", "marks", Align::amount},
                       {"bias", "bias", Align::amount},
                       {"difference", "off", Align::amount},
                       {"within_one", "within a step", Align::amount},
                       {"order", "order", Align::amount},
                       {"", ""}});
  table.in_csv = true;
  for (const PracticePoint& point : points) {
    const PracticeReport& report = *point.report;
    table.add({point.number, Entry(moment(point.started), point.started), report.marked, off_by(report.bias),
               figure(report.difference), Entry(in_per_cent(report.within_one), figure(report.within_one)),
               figure(report.order.value), bar_of(report)});
  }
  return table;
}

Data sessions_data(const std::vector<PracticePoint>& points) {
  Data sessions;
  for (const PracticePoint& point : points) {
    Record session{{"number", point.number}, {"started", point.started}};
    for (auto& one : summary_of(*point.report)) session.push_back(std::move(one));
    sessions.emplace_back(std::move(session));
  }
  return sessions;
}

}  // namespace

Page practice_curve_page(const std::string& trainee, const std::vector<PracticePoint>& points) {
  Page page("practice report");
  page.csv = {"trainee", "started", "marked", "bias", "difference", "within_one", "order", "number"};
  page.heading(
      fmt::format("Practice of {} over time: the shorter the bar, the closer to the panel", trainee));
  page.fact("trainee", trainee);
  page.apart();
  page.add(sessions_table(points));
  page.fact("sessions", sessions_data(points));
  return page;
}

std::string moment(std::string_view utc) {
  if (utc.size() < 16 || utc.substr(10) == "T00:00:00Z") return std::string(utc.substr(0, 10));
  return fmt::format("{} {} UTC", utc.substr(0, 10), utc.substr(11, 5));
}

Page practice_sessions_page(std::string question, const std::vector<PracticeSessionLine>& sessions) {
  Page page(std::move(question));
  PageTable table("sessions", {{"trainee", "trainee", Align::words, Wraps::yes},
                               {"number", "session", Align::amount},
                               {"started", "started"},
                               {"lines", "lines", Align::amount},
                               {"marked", "marked", Align::amount},
                               {"did", "", Align::words, Wraps::yes}});
  table.in_csv = true;
  table.hides_empty_columns = true;
  for (const PracticeSessionLine& one : sessions)
    table.add({one.trainee, one.number == 0 ? Entry() : one.number, Entry(moment(one.started), one.started),
               one.lines, one.marked, one.did});
  page.add(std::move(table));
  return page;
}

Page practice_marks_page(const std::vector<PracticeMarkLine>& marks) {
  Page page("practice export");
  PageTable table("marks", {{"trainee", "trainee"},
                            {"session", "session"},
                            {"date", "date"},
                            {"meet", "meet"},
                            {"routine", "routine", Align::words, Wraps::yes},
                            {"event", "event"},
                            {"element", "element"},
                            {"mark", "mark", Align::amount},
                            {"late", "late"}});
  table.in_csv = true;
  for (const PracticeMarkLine& one : marks)
    table.add({one.trainee, one.session, one.date, one.meet, one.routine, one.event, one.element, one.mark,
               Entry(one.late ? "yes" : "", one.late)});
  page.add(std::move(table));
  return page;
}

}  // namespace landdrill::report
