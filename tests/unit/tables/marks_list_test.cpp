// Recorded marks from a spreadsheet: one row a mark, gathered into panels.
#include "tables/marks_list.h"

#include <gtest/gtest.h>

namespace landdrill {
namespace {

std::string dump(const std::vector<ListedPanel>& panels) {
  std::string text;
  for (const ListedPanel& panel : panels) {
    text += panel.date + "|" + panel.meet + "|" + panel.routine + "|" + panel.event;
    for (const ListedPanel::Line& line : panel.lines) {
      text += " / " + line.name + (line.base ? " base:" : ":");
      for (const auto& given : line.judges)
        text += " " + (!given ? "?" : given->mark ? given->mark->text() : "-");
    }
    text += "\n";
  }
  return text;
}

std::string read(const std::string& list) {
  Diagnostics diagnostics;
  const std::vector<ListedPanel> panels = read_marks_list({"marks.csv", list}, diagnostics);
  return diagnostics.list().empty() ? dump(panels) : to_string(diagnostics);
}

const std::string heading = "date,meet,routine,element,judge,mark\n";

TEST(MarksList, GathersTheRowsOfAPanelLineByLineAndSeatBySeat) {
  EXPECT_EQ(read(heading + "2026-05-09,Tarn Open,Harbour Lights,2,1,7.25\n"
                           "2026-05-09,Tarn Open,Harbour Lights,2,3,7.5\n"
                           "2026-05-09,Tarn Open,Harbour Lights,choreography,1,8\n"
                           "2026-06-13,Tarn Open,Harbour Lights,2,1,-\n"),
            "2026-05-09|Tarn Open|Harbour Lights| / 2: 7.25 ? 7.5 / choreography: 8\n"
            "2026-06-13|Tarn Open|Harbour Lights| / 2: -\n");
}

TEST(MarksList, UnderstandsSemicolonsDecimalCommasQuotesOtherWordsAndAnyOrder) {
  EXPECT_EQ(read("\xEF\xBB\xBFNote;Richter;Element;Datum;Wettkampf;K\xC3\xBCr;Event;base mark\r\n"
                 "7,25;J2;\"1\";2026-05-09;\"Tarn \"\"Open\"\"\";Low Water;solo-free;yes\r\n"),
            "2026-05-09|Tarn \"Open\"|Low Water|solo-free / 1 base: ? 7.25\n");
}

TEST(MarksList, FindsTheRowsOfAPanelAlsoWhenOthersStandBetween) {
  EXPECT_EQ(read(heading +
                 "2026-05-09,A,R,1,1,7\n2026-05-09,B,R,1,1,6\n2026-05-09,A,R,2,1,5\n2026-05-09,A,R,1,2,8\n"),
            "2026-05-09|A|R| / 1: 7 8 / 2: 5\n2026-05-09|B|R| / 1: 6\n");
}

TEST(MarksList, SaysWhichColumnIsNotThere) {
  EXPECT_EQ(read("date,routine,element,mark\n2026-05-09,R,1,7\n"),
            "marks.csv:1:1: error: found no column for the judge; expected one that is called judge "
            "[missing-column]\n"
            "  date,routine,element,mark\n  ^~~~\n"
            "  hint: a list starts with a heading such as date,meet,routine,element,judge,mark\n");
}

TEST(MarksList, TakesTheNumberOfAnElementHoweverItIsCalled) {
  const std::string row = "2026-05-09,A,R,";
  EXPECT_EQ(read(heading + row + "Element 2,1,7\n" + row + "E2,2,7\n" + row + "el. 2,3,7\n" + row +
                 "2.,4,7\n" + row + "2,5,8\n"),
            "2026-05-09|A|R| / 2: 7 7 7 7 8\n");
  EXPECT_EQ(read(heading + row + "part 2,1,7\n" + row + "02,1,7\n" + row + "Element 02,1,7\n" + row +
                 "Element,1,7\n"),
            "2026-05-09|A|R| / part 2: 7 / 02: 7 / Element 02: 7 / Element: 7\n");
}

TEST(MarksList, TakesForTheBaseMarkYesOrNoAlone) {
  const std::string start = "date,meet,routine,element,judge,mark,base\n", row = "2026-05-09,A,R,";
  EXPECT_EQ(read(start + row + "1,1,7,Ja\n" + row + "2,1,7,no\n" + row + "3,1,7,\n" + row + "4,1,7,-\n"),
            "2026-05-09|A|R| / 1 base: 7 / 2: 7 / 3: 7 / 4: 7\n");
  EXPECT_EQ(
      read(start + row + "1,1,7,maybe\n"),
      "marks.csv:2:22: error: found \"maybe\" in the column base; expected yes where the base mark was "
      "given, "
      "otherwise no or nothing [bad-choice]\n  2026-05-09,A,R,1,1,7,maybe\n                       ^~~~~\n");
}

TEST(MarksList, SaysOfAColumnThatItDoesNotKnowThatItIsNotRead) {
  EXPECT_EQ(
      read("date,meet,routine,element,judge,mark,Remark,bse,\n2026-05-09,A,R,1,1,7,good,yes,\n"),
      "marks.csv:1:38: warning: found a column \"Remark\", which is not read; expected date, meet, "
      "routine, event, element, judge, mark or base [unread-column]\n"
      "  date,meet,routine,element,judge,mark,Remark,bse,\n"
      "                                       ^~~~~~\n"
      "  hint: the nearest is mark\n"
      "marks.csv:1:45: warning: found a column \"bse\", which is not read; expected date, meet, routine, "
      "event, element, judge, mark or base [unread-column]\n"
      "  date,meet,routine,element,judge,mark,Remark,bse,\n"
      "                                              ^~~\n"
      "  hint: the nearest is base\n");
}

TEST(MarksList, RefusesWhatOnlyASheetCanSayAndOnlyWhereItIsSaid) {
  const std::string with = "date,meet,routine,element,judge,mark,Sync errors,Penalty\n2026-05-09,A,R,1,1,7,";
  EXPECT_EQ(read(with + ",0\n2026-05-09,A,R,1,2,7,-,0.0\n"), "2026-05-09|A|R| / 1: 7 7\n");
  EXPECT_EQ(read(with + "small x2,\n2026-05-09,A,R,1,2,7,clear,\n"),
            "marks.csv:2:22: error: found \"small x2\" in the column \"Sync errors\", which no list has; "
            "expected nothing there [not-in-lists]\n"
            "  2026-05-09,A,R,1,1,7,small x2,\n"
            "                       ^~~~~~~~\n"
            "  hint: sync errors, penalties and results belong in the panel of a sheet: `landdrill help book "
            "add`\n");
}

TEST(MarksList, SaysThatThereIsNothingBelowTheHeading) {
  EXPECT_EQ(read(heading),
            "marks.csv: error: found a heading and nothing below it; expected one row a mark [no-rows]\n");
}

TEST(MarksList, SaysThatAListIsCutOff) {
  const std::string row = "2026-05-09,A,R,1,1,7\n2026-05-09,A,R,1,2,";
  const std::string complaint =
      "marks.csv:3:1: error: found a row that ends before its mark; expected 6 cells, as the heading has "
      "[cut-off]\n"
      "  2026-05-09,A,R,1,2,\n"
      "  ^~~~~~~~~~\n"
      "  hint: write - where there is no mark\n";
  EXPECT_EQ(read(heading + row), complaint);
  EXPECT_EQ(read(heading + row + "\n"), "2026-05-09|A|R| / 1: 7 -\n");
  EXPECT_EQ(read(heading + row + "-"), "2026-05-09|A|R| / 1: 7 -\n");
  EXPECT_NE(read(heading + "2026-05-09,A,R,1,2\n2026-05-09,A,R,1,3,7\n").find("[cut-off]"),
            std::string::npos);
}

TEST(MarksList, IsKnownByItsHeading) {
  EXPECT_TRUE(looks_like_a_list({"a", heading}));
  EXPECT_TRUE(looks_like_a_list({"a", "Datum;Kür;Note\n"}));
  EXPECT_FALSE(looks_like_a_list({"a", "routine \"Harbour Lights\"\n"}));
  EXPECT_FALSE(looks_like_a_list({"a", ""}));
}

TEST(MarksList, SaysThatAShortDateIsNone) {
  EXPECT_EQ(
      read(heading + "2026,A,R,1,1,7\n"),
      "marks.csv:2:1: error: found \"2026\"; expected a day of the calendar written year-month-day, such as "
      "2026-05-09 [bad-date]\n  2026,A,R,1,1,7\n  ^~~~\n");
}

TEST(MarksList, SaysThatAWorkbookOrAnotherEncodingIsNoList) {
  EXPECT_EQ(read("PK\x03\x04 whatever").substr(0, 62),
            "marks.csv: error: found a spreadsheet workbook; expected CSV t");
  EXPECT_NE(read(heading + "2026-05-09,A,K\xFCr,1,1,7\n").find("a byte that is not UTF-8"),
            std::string::npos);
}

TEST(MarksList, SaysRowAndColumnOfWhatIsWrong) {
  EXPECT_EQ(
      read(heading +
           "2026-02-30,A,R,1,1,7\n2026-05-09,A,R,1,first,7\n2026-05-09,A,R,1,1,seven\n"
           "2026-05-09,A,R,1,1,7\n2026-05-09,A,R,1,1,8\n2026-05-09,A,R,2,1,7,25\n2026-05-09,A,,1,1,7\n"
           "2026-05-09,\"A,R,1,1,7\n"),
      "marks.csv:2:1: error: found \"2026-02-30\"; expected a day of the calendar written year-month-day, "
      "such as "
      "2026-05-09 [bad-date]\n  2026-02-30,A,R,1,1,7\n  ^~~~~~~~~~\n"
      "marks.csv:3:18: error: found the judge \"first\"; expected the number of her seat, 1 to 99 "
      "[bad-number]\n"
      "  2026-05-09,A,R,1,first,7\n                   ^~~~~\n"
      "marks.csv:4:20: error: found \"seven\"; expected a mark such as 7.25, or - [bad-number]\n"
      "  2026-05-09,A,R,1,1,seven\n                     ^~~~~\n"
      "marks.csv:6:20: error: found a second mark of judge 1 for element 1; expected one; the first is on "
      "line 5 "
      "[repeated]\n  2026-05-09,A,R,1,1,8\n                     ^\n"
      "marks.csv:7:22: error: found 7 cells; expected 6, as the heading has [cell-count]\n"
      "  2026-05-09,A,R,2,1,7,25\n                       ^~\n"
      "  hint: a decimal comma splits a cell: write 7.25, or put it in quotation marks\n"
      "marks.csv:8:14: error: found an empty cell; expected the routine in every row [missing-cell]\n"
      "  2026-05-09,A,,1,1,7\n               ^\n"
      "marks.csv:9:12: error: found a quotation mark that does not close its cell; expected a closing one "
      "before "
      "the next cell [unclosed-quote]\n  2026-05-09,\"A,R,1,1,7\n             ^\n");
}

TEST(MarksList, SaysThatAListIsEmpty) {
  EXPECT_EQ(read(""),
            "marks.csv: error: found an empty list; expected a heading and one row a mark [missing-column]\n"
            "  hint: a list starts with a heading such as date,meet,routine,element,judge,mark\n");
}

}  // namespace
}  // namespace landdrill
