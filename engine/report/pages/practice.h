// A practice session: her marks beside the panel's, and what they say of her eye; and her curve over the weeks.
//
//   render_text(practice_page({"Robin", "2026-11-25T15:03:43Z", tasks, done, report}), {})
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "engine/judging/practice.h"
#include "engine/judging/practice_report.h"
#include "engine/report/page.h"

namespace landdrill::report {

// "7.25 7.50 -"
std::string judges_marks(const JudgeMarks& judges);
// "+0.25", "-0.25", "+0.00"; empty for none.
std::string off_by(std::optional<double> value);
// "20 %"; empty for none.
std::string in_per_cent(std::optional<double> share);
Record summary_of(const PracticeReport& report);

struct PracticeTold {
  std::string trainee, started;
  std::span<const PracticeTask> tasks;
  std::span<const Practised> done;
  const PracticeReport* report = nullptr;
  std::string reference = "the panel";  // or the expert whose marks stand in its place
};
Page practice_page(const PracticeTold& told);

// One session of several, oldest first.
struct PracticePoint {
  int number = 0;
  std::string started;
  const PracticeReport* report = nullptr;
};
Page practice_curve_page(const std::string& trainee, const std::string& reference,
                         const std::vector<PracticePoint>& points);

// Practice sessions as a list, and their marks as a list that a spreadsheet and `practice add` read.
//
//   render_csv(practice_marks_page({{"Robin", "2026-05-10T00:00:00Z", "2026-05-09", "Tarn Open", ...}}))
//   // trainee,session,date,meet,routine,event,element,mark,late
//   // Robin,2026-05-10T00:00:00Z,2026-05-09,Tarn Open,Reed Song,duet-free,2,7.25,

// How a page tells when a session began: "2026-11-25T15:03:43Z" -> "2026-11-25 15:03 UTC"; the day alone
// where no more is known: "2026-05-10T00:00:00Z" -> "2026-05-10".
std::string moment(std::string_view utc);

struct PracticeSessionLine {
  std::string trainee;
  int number = 0;  // of the finished session, by which `practice report` knows it; 0: it has none
  std::string started;
  std::size_t lines = 0, marked = 0;
  std::string did;  // "12 added"; of a list: "paused"
};
// `question`: the command that asks.
Page practice_sessions_page(std::string question, const std::vector<PracticeSessionLine>& sessions);

// What became of a session that was left `out`, or counts again.
Page practice_counted_page(const PracticeSessionLine& session, bool out);

// Texts, empty for what is not there.
struct PracticeMarkLine {
  std::string trainee, session, date, meet, routine, event, element, mark;
  bool late = false;
};
Page practice_marks_page(const std::vector<PracticeMarkLine>& marks);

}  // namespace landdrill::report
