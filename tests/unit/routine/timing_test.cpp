#include "engine/routine/timing.h"

#include <gtest/gtest.h>

#include "tests/unit/kit/kit.h"

namespace landdrill {
namespace {

using kit::number;
using kit::pond;
using kit::ReadSheet;
using kit::reeds;
using kit::replaced;

std::string eight_at(std::string_view tempo) {
  return round(seconds_of(8, number(tempo)), 3, Rounding::half_up).text(3);
}

TEST(Timing, TurnsEightCountsIntoSeconds) {
  EXPECT_EQ(eight_at("120"), "4.000");
  EXPECT_EQ(eight_at("150"), "3.200");
  EXPECT_EQ(eight_at("160"), "3.000");
  EXPECT_EQ(kit::fraction(seconds_of(1, number("7"))), "60/7");  // exact, not rounded
}

TEST(Timing, AddsTheCountsOfElementsAndPassagesInTheOrderOfTheRoutine) {
  const ReadSheet sheet(
      replaced(reeds, "element 2 hybrid\n", "passage \"Arms\"\ncounts 5 arms, 2 under\nelement 2 hybrid\n"),
      pond());
  const Timing result = timing(sheet.routine(), {});
  ASSERT_EQ(result.items.size(), 3u);
  EXPECT_TRUE(result.items[0].item.is_element);
  EXPECT_FALSE(result.items[1].item.is_element);
  EXPECT_EQ(result.items[1].counts, 7);
  EXPECT_EQ(result.items[1].under, 2);
  EXPECT_EQ(result.items[1].seconds, number("3.5"));
  EXPECT_EQ(result.items[1].under_seconds, number("1"));
  EXPECT_EQ(result.items[2].counts, 24);
  EXPECT_EQ(result.counts, 127);
  EXPECT_EQ(result.under, 58);
  EXPECT_EQ(result.seconds, number("63.5"));
  EXPECT_EQ(result.under_seconds, number("29"));
  EXPECT_EQ(result.under_share, number("45.7"));  // 5800 / 127 = 45.67
}

TEST(Timing, FollowsAStretchUnderWaterAcrossElementsAndPassages) {
  const ReadSheet sheet(
      "routine \"Reeds\"\nevent open\nvalues pond\ntempo 120\n"
      "element 1 hybrid\nparts spin-a, hold\ncounts 20 under, 4 surface, 8 under\n"
      "passage \"Still down\"\ncounts 6 under\n"
      "passage \"Nobody counted\"\n"
      "element 2 hybrid\nparts spin-a, hold\ncounts 10 under, 2 up, 9 under\n",
      pond());
  const Timing result = timing(sheet.routine(), {});
  EXPECT_EQ(result.longest_under, 24);
  EXPECT_EQ(result.longest_starts, 0u);
  EXPECT_EQ(result.longest_under_seconds, number("12"));
}

TEST(Timing, SaysWhereTheLongestStretchStarts) {
  const ReadSheet sheet(
      "routine \"Reeds\"\nevent open\nvalues pond\n"
      "passage \"Short\"\ncounts 8 under, 1 up\n"
      "passage \"Long\"\ncounts 9 under\n"
      "passage \"Longer still\"\ncounts 1 under, 30 arms\n",
      pond());
  const Timing result = timing(sheet.routine(), {});
  EXPECT_EQ(result.longest_under, 10);
  EXPECT_EQ(result.longest_starts, 1u);
}

TEST(Timing, HasNoSecondsWithoutATempo) {
  const Timing result = timing(ReadSheet(replaced(reeds, "tempo 120\n", ""), pond()).routine(), {});
  EXPECT_EQ(result.counts, 120);
  EXPECT_FALSE(result.seconds.has_value());
  EXPECT_FALSE(result.items[0].seconds.has_value());
  EXPECT_FALSE(result.longest_under_seconds.has_value());
  EXPECT_EQ(result.under_share, number("46.7"));
}

TEST(Timing, HasNoShareOfNoCounts) {
  const Timing result =
      timing(ReadSheet("routine \"Reeds\"\nevent open\nvalues pond\n", pond()).routine(), {});
  EXPECT_EQ(result.counts, 0);
  EXPECT_FALSE(result.under_share.has_value());
}

TEST(Timing, CountsTheOptionThatIsWished) {
  const ReadSheet sheet(replaced(reeds, "expect 7.5\n",
                                 "expect 7.5\noption \"safer\"\nparts hold x2\ncounts 8 under\nexpect 8\n"),
                        pond());
  EXPECT_EQ(timing(sheet.routine(), {}).counts, 120);
  EXPECT_EQ(timing(sheet.routine(), {{1}, {}}).counts, 32);
}

TEST(Timing, RefusesMoreCountsThanAnyoneCanSwim) {
  std::string endless = "routine \"Reeds\"\nevent open\nvalues pond\n";
  for (int i = 0; i < 11; ++i) {
    endless += "passage \"On and on\"\ncounts 10000 arms";
    for (int j = 0; j < 9; ++j) endless += ", 10000 arms";
    endless += "\n";
  }
  const ReadSheet sheet(endless, pond());
  EXPECT_EQ(sheet.complaints(),
            "25:8 found more than 1000000 counts in the routine; expected a routine that someone can swim "
            "[too-large]\n");
}

}  // namespace
}  // namespace landdrill
