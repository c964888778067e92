#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/judging/practice.h"
#include "engine/report/figures.h"
#include "engine/report/page.h"
#include "engine/report/pages/practice.h"
#include "engine/report/pages/practice_figures.h"
#include "engine/report/pages/practice_list.h"

namespace landdrill::report {
namespace {

// One sign for each tenth of a mark that she is off.
std::string bar_of(const PracticeReport& report) {
  const auto tenths = static_cast<std::size_t>(std::lround(report.difference.value_or(0) * 10));
  return std::string(std::min<std::size_t>(tenths, 20), '=');
}

PageTable no_sessions() {
  const auto for_programs = [](const char* key) {
    return PageColumn{key, "", Align::amount, Wraps::no, Seen::by_programs};
  };
  return {"sessions",
          {{"number", "", Align::amount},
           {"started", "session"},
           {"marked", "marks", Align::amount},
           for_programs("skipped"),
           for_programs("late"),
           for_programs("corrected"),
           {"bias", "bias", Align::amount},
           {"difference", "off", Align::amount},
           {"within_one", "within a step", Align::amount},
           for_programs("within_two"),
           {"order", "order", Align::amount},
           for_programs("spread"),
           for_programs("panel_spread"),
           for_programs("first_half"),
           for_programs("second_half"),
           {"", ""}}};
}

std::vector<Entry> session_row(const PracticePoint& point) {
  const PracticeReport& report = *point.report;
  return {Entry(std::to_string(point.number), point.number),
          Entry(moment(point.started), point.started),
          Entry(std::to_string(report.marked), report.marked),
          Entry("", report.skipped),
          Entry("", report.late),
          Entry("", report.corrected),
          Entry(off_by(report.bias), figure_datum(report.bias)),
          figure_entry(report.difference),
          Entry(in_per_cent(report.within_one), figure_datum(report.within_one)),
          figure_entry(report.within_two),
          figure_entry(report.order.value),
          figure_entry(report.spread),
          figure_entry(report.panel_spread),
          figure_entry(report.first_half),
          figure_entry(report.second_half),
          bar_of(report)};
}

PageTable sessions_table(const std::vector<PracticePoint>& points) {
  PageTable table = no_sessions();
  for (const PracticePoint& point : points) table.add(session_row(point));
  table.picture = {
      Picture::As::curve, "How far off the panel, session by session", "marks", "started", {"difference"}};
  return table;
}

// A spreadsheet has figures as they are told.
PageTable sessions_in_csv(const std::vector<PracticePoint>& points) {
  PageTable table("", {{"started", ""},
                       {"marked", ""},
                       {"bias", ""},
                       {"difference", ""},
                       {"within_one", ""},
                       {"order", ""},
                       {"number", ""}});
  table.in_csv = true;
  for (const PracticePoint& point : points) {
    const PracticeReport& report = *point.report;
    table.add({point.started, std::to_string(report.marked), off_by(report.bias), figure(report.difference),
               figure(report.within_one), figure(report.order.value), std::to_string(point.number)});
  }
  return table;
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
  page.add(sessions_in_csv(points), Seen::by_programs);
  return page;
}

}  // namespace landdrill::report
