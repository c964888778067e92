// A trainee's marks from a spreadsheet: one row a mark.
#include <gtest/gtest.h>

#include "tables/marks_list.h"

namespace landdrill {
namespace {

std::string read(const std::string& list, const std::string& trainee = "") {
  Diagnostics diagnostics;
  std::string text;
  for (const ListedPractice& row : read_practice_list({"practice.csv", list}, trainee, diagnostics))
    text += row.trainee + "|" + row.session + "|" + row.date + "|" + row.meet + "|" + row.routine + "|" +
            row.event + "|" + row.line + "|" + (row.mark ? row.mark->text() : "-") +
            (row.late ? "|late" : "") + "\n";
  return diagnostics.list().empty() ? text : to_string(diagnostics);
}

TEST(PracticeList, ReadsOneMarkARow) {
  EXPECT_EQ(read("trainee,session,date,meet,routine,event,element,mark,late\n"
                 "Robin,2026-05-10T18:30:00Z,2026-05-09,Tarn Open,Reed Song,duet-free,2,7.25,\n"
                 "Robin,2026-05-10T18:30:00Z,2026-05-09,Tarn Open,Reed Song,duet-free,choreography,,yes\n"),
            "Robin|2026-05-10T18:30:00Z|2026-05-09|Tarn Open|Reed Song|duet-free|2|7.25\n"
            "Robin|2026-05-10T18:30:00Z|2026-05-09|Tarn Open|Reed Song|duet-free|choreography|-|late\n");
}

TEST(PracticeList, TakesTheDayOfThePanelForTheSessionAndTheCallersNameForTheTrainee) {
  EXPECT_EQ(read("Note;Element;Datum;Kür\n7,25;2;2026-05-09;Reed Song\n", "Robin"),
            "Robin|2026-05-09T00:00:00Z|2026-05-09||Reed Song||2|7.25\n");
  EXPECT_EQ(read("trainee,practised,date,routine,element,mark\nSam,2026-06-01,2026-05-09,R,2,7\n,,2026-05-09,"
                 "R,2,7\n",
                 "Robin"),
            "Sam|2026-06-01T00:00:00Z|2026-05-09||R||2|7\nRobin|2026-05-09T00:00:00Z|2026-05-09||R||2|7\n");
}

TEST(PracticeList, TakesOffWhatKeepsASpreadsheetFromTakingANameForAFormula) {
  EXPECT_EQ(read("trainee,date,routine,element,mark\n'=Robin,2026-05-09,'tis,2,7\n"),
            "=Robin|2026-05-09T00:00:00Z|2026-05-09||'tis||2|7\n");
}

TEST(PracticeList, SaysRowAndColumnOfWhatIsWrong) {
  EXPECT_EQ(
      read("trainee,session,date,routine,element,mark\n"
           ",,2026-05-09,R,1,7\n"
           "Robin,yesterday,2026-05-09,R,1,7\n"
           "Robin,2026-05-10T25:00:00Z,2026-05-09,R,1,7\n"
           "Robin,,2026-05-32,R,1,7\n"
           "Robin,,2026-05-09,R,1,seven\n"
           "Robin,,2026-05-09,R,,7\n"),
      "practice.csv:2:1: error: found nobody whose mark this is; expected a trainee in every row, or --name "
      "NAME [missing-cell]\n  ,,2026-05-09,R,1,7\n  ^\n"
      "practice.csv:3:7: error: found the session \"yesterday\"; expected the day when she marked, such as "
      "2026-05-09, or that moment, such as 2026-05-09T18:30:00Z [bad-date]\n"
      "  Robin,yesterday,2026-05-09,R,1,7\n        ^~~~~~~~~\n"
      "practice.csv:4:7: error: found the session \"2026-05-10T25:00:00Z\"; expected the day when she "
      "marked, "
      "such as 2026-05-09, or that moment, such as 2026-05-09T18:30:00Z [bad-date]\n"
      "  Robin,2026-05-10T25:00:00Z,2026-05-09,R,1,7\n        ^~~~~~~~~~~~~~~~~~~~\n"
      "practice.csv:5:8: error: found \"2026-05-32\"; expected a day of the calendar written year-month-day, "
      "such as 2026-05-09 [bad-date]\n  Robin,,2026-05-32,R,1,7\n         ^~~~~~~~~~\n"
      "practice.csv:6:23: error: found \"seven\"; expected a mark such as 7.25, or - [bad-number]\n"
      "  Robin,,2026-05-09,R,1,seven\n                        ^~~~~\n"
      "practice.csv:7:21: error: found an empty cell; expected the element in every row [missing-cell]\n"
      "  Robin,,2026-05-09,R,,7\n                      ^\n");
}

TEST(PracticeList, SaysWhichColumnIsNotThere) {
  EXPECT_EQ(read("trainee,date,routine,mark\n"),
            "practice.csv:1:1: error: found no column for the element; expected one that is called element "
            "[missing-column]\n  trainee,date,routine,mark\n  ^~~~~~~\n"
            "  hint: a list starts with a heading such as trainee,date,meet,routine,element,mark\n");
}

}  // namespace
}  // namespace landdrill
