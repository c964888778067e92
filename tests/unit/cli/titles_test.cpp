// Titles in two spellings, days of the calendar, words for a shell: the small things of the command line.
#include "engine/cli/titles.h"

#include <gtest/gtest.h>

#include <cstdlib>

#include "engine/cli/shell_quoted.h"
#include "engine/cli/today.h"
#include "grammar/calendar.h"

namespace landdrill::cli {
namespace {

using What = Block::What;

Block panel(const std::string& title, const std::string& date = "2026-05-09") {
  return {What::panel, "Low Water", "duet-free", date, title, "", 0};
}
Block routine(const std::string& title, const std::string& event = "duet-free") {
  return {What::routine, title, event, "", "", "", 0};
}

TEST(Titles, AreSpelledInTwoWaysWhenOnlyCaseBlanksAndSignsDiffer) {
  Titles titles;
  EXPECT_EQ(titles.take(panel("Tarn Open")), "");
  EXPECT_EQ(titles.take(panel("Tarn Open")), "");
  EXPECT_EQ(titles.take(panel("tarn-open")), "Tarn Open");
  EXPECT_EQ(titles.take(panel("Tarn Open 2")), "");
  EXPECT_EQ(titles.take(panel("\xC3\x89toile")), "");
  EXPECT_EQ(titles.take(panel("\xC3\x89TOILE!")), "\xC3\x89toile");
}

TEST(Titles, AreOtherTitlesOnAnotherDayOrOfAnotherRoutineEventOrSort) {
  Titles titles;
  titles.take(panel("Tarn Open"));
  EXPECT_EQ(titles.take(panel("TARN OPEN", "2026-05-10")), "");
  Block other = panel("TARN OPEN");
  other.routine = "Reed Song";
  EXPECT_EQ(titles.take(other), "");
  other = panel("TARN OPEN");
  other.what = What::run;
  EXPECT_EQ(titles.take(other), "");
  EXPECT_EQ(titles.take(routine("Low Water")), "");
  EXPECT_EQ(titles.take(routine("low water", "solo-free")), "");
  EXPECT_EQ(titles.take(routine("low water")), "Low Water");
}

TEST(Titles, WithoutALetterAreNeverOneInTwoSpellings) {
  Titles titles;
  EXPECT_EQ(titles.take(panel("")), "");
  EXPECT_EQ(titles.take(panel("-")), "");
  EXPECT_EQ(titles.take(panel("!")), "");
}

TEST(Titles, OfTheBookMayHaveBothSpellings) {
  KeptBlock kept;
  kept.what = What::panel;
  kept.routine = "Low Water";
  kept.event = "duet-free";
  kept.date = "2026-05-09";
  Titles titles;
  for (const char* title : {"Tarn Open", "Tarn open"}) {
    kept.title = title;
    titles.know(kept);
  }
  EXPECT_EQ(titles.take(panel("Tarn open")), "");
  EXPECT_EQ(titles.take(panel("Tarn Open")), "");
  EXPECT_EQ(titles.take(panel("TARN OPEN")), "Tarn Open");
}

TEST(Today, IsADayOfTheCalendarOrWhatIsSaid) {
  unsetenv("LANDDRILL_TODAY");
  EXPECT_TRUE(is_written_day(today()));
  setenv("LANDDRILL_TODAY", "2026-05-09", 1);
  EXPECT_EQ(today(), "2026-05-09");
  setenv("LANDDRILL_TODAY", "tomorrow", 1);
  EXPECT_TRUE(is_written_day(today()));
  unsetenv("LANDDRILL_TODAY");
}

TEST(Today, IsFollowedByTomorrow) {
  EXPECT_EQ(day_after("2026-05-09"), "2026-05-10");
  EXPECT_EQ(day_after("2026-12-31"), "2027-01-01");
  EXPECT_EQ(day_after("2026-02-28"), "2026-03-01");
  EXPECT_EQ(day_after("2028-02-28"), "2028-02-29");
}

TEST(ShellQuoted, IsPlainWhereItCanBe) {
  EXPECT_EQ(shell_quoted("club.season"), "club.season");
  EXPECT_EQ(shell_quoted("Tarn Open"), "'Tarn Open'");
  EXPECT_EQ(shell_quoted("Robin's"), "'Robin'\\''s'");
  EXPECT_EQ(shell_quoted(""), "''");
}

}  // namespace
}  // namespace landdrill::cli
