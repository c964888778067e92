#include "engine/report/pages/practice_list.h"

#include <fmt/format.h>

namespace landdrill::report {
namespace {

Entry number_entry(std::size_t number) {
  return {std::to_string(number), number};
}

}  // namespace

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
    table.add({one.trainee, one.number == 0 ? Entry() : Entry(std::to_string(one.number), one.number),
               Entry(moment(one.started), one.started), number_entry(one.lines), number_entry(one.marked),
               one.did});
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
