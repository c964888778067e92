#include "engine/report/practice_list.h"

#include <fmt/format.h>

#include "engine/report/field_list.h"

namespace landdrill::report {
namespace {

using Session = PracticeSessionLine;
using MarkLine = PracticeMarkLine;

constexpr Field<Session> session_fields[] = {{"trainee", "trainee", &Session::trainee, Shown::wrapped},
                                             {"number", "session", &Session::number, Shown::amount},
                                             {"started", "started", &Session::started},
                                             {"lines", "lines", &Session::lines, Shown::amount},
                                             {"marked", "marked", &Session::marked, Shown::amount},
                                             {"did", "", &Session::did, Shown::wrapped}};

constexpr Field<MarkLine> mark_fields[] = {
    {"trainee", "", &MarkLine::trainee}, {"session", "", &MarkLine::session}, {"date", "", &MarkLine::date},
    {"meet", "", &MarkLine::meet},       {"routine", "", &MarkLine::routine}, {"event", "", &MarkLine::event},
    {"element", "", &MarkLine::element}, {"mark", "", &MarkLine::mark},       {"late", "", &MarkLine::late}};

}  // namespace

std::string moment(std::string_view utc) {
  if (utc.size() < 16 || utc.substr(10) == "T00:00:00Z") return std::string(utc.substr(0, 10));
  return fmt::format("{} {} UTC", utc.substr(0, 10), utc.substr(11, 5));
}

std::string practice_sessions(const std::vector<Session>& sessions, Format format, const TextWish& wish) {
  if (format != Format::text) return field_list("sessions", sessions, session_fields, format, wish);
  std::vector<Session> on_the_page = sessions;
  for (Session& session : on_the_page) session.started = moment(session.started);
  return field_list("sessions", on_the_page, session_fields, format, wish);
}

std::string practice_marks(const std::vector<MarkLine>& marks) {
  return field_list("marks", marks, mark_fields, Format::csv, {});
}

}  // namespace landdrill::report
