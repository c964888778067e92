// Titles in two spellings.
#include <gtest/gtest.h>

#include "engine/season/kept_sheets.h"

namespace landdrill {
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

}  // namespace
}  // namespace landdrill
