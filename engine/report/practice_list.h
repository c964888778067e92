// Practice sessions as a list, and their marks as a list that a spreadsheet and `practice add` read.
//
//   practice_marks({{"Robin", "2026-05-10T00:00:00Z", "2026-05-09", "Tarn Open", "Reed Song", "duet-free",
//   "2", "7.25"}})
//   // trainee,session,date,meet,routine,event,element,mark,late
//   // Robin,2026-05-10T00:00:00Z,2026-05-09,Tarn Open,Reed Song,duet-free,2,7.25,
//
// Computes nothing.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/report/values.h"

namespace landdrill::report {

// How a page tells when a session began: "2026-11-25T15:03:43Z" -> "2026-11-25 15:03 UTC"; the day alone
// where no more is known: "2026-05-10T00:00:00Z" -> "2026-05-10".
std::string moment(std::string_view utc);

// Texts, empty for what is not there. `number`: of the finished session, by which `practice report` knows it.
struct PracticeSessionLine {
  std::string trainee, number, started, lines, marked;
  std::string did;  // "12 added"; of a list: "paused"
};
std::string practice_sessions(const std::vector<PracticeSessionLine>& sessions, Format format,
                              const TextWish& wish);

struct PracticeMarkLine {
  std::string trainee, session, date, meet, routine, event, element, mark, late;
};
std::string practice_marks(const std::vector<PracticeMarkLine>& marks);

}  // namespace landdrill::report
