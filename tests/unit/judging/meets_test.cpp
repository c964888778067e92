#include "engine/judging/meets.h"

#include <gtest/gtest.h>

#include "tests/unit/kit/kit.h"

namespace landdrill {
namespace {

using kit::ReadSheet;

std::string panel(const std::string& date, const std::string& meet, const std::string& marks) {
  return "panel " + date + " \"" + meet + "\"\nelement 1: " + marks + "\n";
}
std::vector<MeetView> views_of(const std::vector<std::string>& sheets, bool same_judges = false) {
  Meets meets(same_judges);
  for (const std::string& text : sheets) {
    const ReadSheet sheet(text, kit::pond());
    for (const RecordedPanel& one : sheet.routine().panels) meets.add(sat_panel(sheet.routine(), one));
  }
  std::vector<MeetView> views;
  for (const Meet* meet : meets.by_date()) views.push_back(view_of(*meet));
  return views;
}
const std::string may = panel("2026-05-09", "Tarn Open", "7 7 7 7 8");
const std::string march = panel("2026-03-07", "Heron Cup", "6 6 6 7 6");
std::string other() {
  return kit::replaced(kit::reeds, "Reeds", "Rushes");
}

TEST(Meets, TakeTheRoutinesOfOneMeetTogether) {
  const std::vector<MeetView> views = views_of({kit::reeds + may, other() + may});
  ASSERT_EQ(views.size(), 1u);
  EXPECT_EQ(views[0].routines, (std::vector<std::string>{"Reeds", "Rushes"}));
  EXPECT_EQ(views[0].panels, 2u);
  ASSERT_EQ(views[0].views.size(), 1u);
  EXPECT_EQ(views[0].views[0].lines, (std::vector<std::string>{"Reeds: 1 Ripple", "Rushes: 1 Ripple"}));
  EXPECT_EQ(views[0].views[0].judges[4].bias.rows, 2u);
}

TEST(Meets, KeepMeetsApartForOtherJudgesSatThere) {
  const std::vector<MeetView> views = views_of({kit::reeds + may + march});
  ASSERT_EQ(views.size(), 2u);
  EXPECT_EQ(views[0].meet, "Heron Cup");  // by date, whatever the order in the sheet
  EXPECT_EQ(views[1].date, "2026-05-09");
  EXPECT_EQ(views[1].event_title, "Open water");
  EXPECT_EQ(views[1].views[0].lines, (std::vector<std::string>{"1 Ripple"}));
}

TEST(Meets, KeepMeetsOfOneDayApartByName) {
  EXPECT_EQ(views_of({kit::reeds + may, other() + panel("2026-05-09", "Osier Shield", "7 7 7 7 7")}).size(),
            2u);
}

TEST(Meets, KeepTheSameMeetOfTwoYearsApart) {
  const std::string next_year = panel("2027-05-08", "Tarn Open", "7 7 7 7 7");
  EXPECT_EQ(views_of({kit::reeds + may + next_year}).size(), 2u);
}

TEST(Meets, AreOneWhereTheSameJudgesSatAtAll) {
  const std::vector<MeetView> views = views_of({kit::reeds + may + march}, true);
  ASSERT_EQ(views.size(), 1u);
  EXPECT_EQ(views[0].date, "");
  EXPECT_EQ(views[0].views[0].lines,
            (std::vector<std::string>{"1 Ripple, 2026-05-09 Tarn Open", "1 Ripple, 2026-03-07 Heron Cup"}));
  EXPECT_DOUBLE_EQ(views[0].views[0].judges[4].bias.value.value(), (1 - 0.25) / 2);
}

TEST(Meets, OfNothingAreNone) {
  EXPECT_TRUE(views_of({kit::reeds}).empty());
  EXPECT_TRUE(views_of({kit::reeds}, true).empty());
}

}  // namespace
}  // namespace landdrill
