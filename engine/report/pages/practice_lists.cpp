#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

#include "engine/judging/practice_figures.h"
#include "engine/report/figures.h"
#include "engine/report/page.h"
#include "engine/report/pages/practice.h"

namespace landdrill::report {
namespace {

// One sign for each tenth of a mark that she is off.
std::string bar_of(const PracticeReport& report) {
  const auto tenths = static_cast<std::size_t>(std::lround(report.difference.value_or(0) * 10));
  return std::string(std::min<std::size_t>(tenths, 20), '=');
}

// For people and, with figures as they are told, for a spreadsheet.
PageTable sessions_table(const std::vector<PracticePoint>& points) {
  constexpr int roomy = 96;  // a narrower page has no room for the order beside the bars
  PageTable table("", {{"number", "", Align::amount},
                       {"started", "session"},
                       {"marked", "marks", Align::amount},
                       {"bias", "bias", Align::amount},
                       {"", "95 % interval", Align::amount},
                       {"difference", "off", Align::amount},
                       {"within_one", "in a step", Align::amount},
                       {"order", "order", Align::amount, Wraps::no, Seen::always, "", 2, roomy},
                       {"", ""}});
  table.in_csv = true;
  for (const PracticePoint& point : points) {
    const PracticeReport& report = *point.report;
    table.add({point.number, Entry(moment(point.started), point.started), report.marked - report.again,
               off_by(report.bias.value), signed_interval(report.bias.low, report.bias.high),
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

Page practice_curve_page(const std::string& trainee, const std::string& reference,
                         const std::vector<PracticePoint>& points) {
  Page page("practice report");
  page.csv = {"trainee", "started", "marked", "bias", "difference", "within_one", "order", "number"};
  page.heading(
      fmt::format("Practice of {} over time: the shorter the bar, the closer to {}", trainee, reference));
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

Page practice_counted_page(const PracticeSessionLine& session, bool out) {
  const std::string what =
      fmt::format("session {} of {}, {}", session.number, session.trainee, moment(session.started));
  return brief_page(
      out ? "practice omit" : "practice include",
      out ? fmt::format("Left out: {}. Its marks are kept; `landdrill practice include` brings it back\n",
                        what)
          : fmt::format("Counts again: {}\n", what),
      {{"trainee", session.trainee},
       {"number", session.number},
       {"started", session.started},
       {"left_out", out}});
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
