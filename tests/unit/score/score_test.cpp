#include "engine/score/score.h"

#include <gtest/gtest.h>

#include "tests/unit/kit/kit.h"

namespace landdrill {
namespace {

using kit::points;
using kit::pond;
using kit::ReadSheet;
using kit::reeds;
using kit::replaced;

Score expected_score(const ReadSheet& sheet) {
  return score(sheet.routine(), expected(sheet.routine(), {}));
}
Score recorded_score(const ReadSheet& sheet) {
  return score(sheet.routine(), recorded(sheet.routine(), sheet.routine().panels.front(), {}));
}

const std::string panel =
    "panel 2026-05-09\n"
    "element 1: 7.25 7.50 7.25 7.00 7.75\n"       // 22 / 3 x 1.8 = 13.2
    "element 2 base: 6.75 7.00 6.50 7.00 6.75\n"  // 20.5 / 3 x 0.5 = 3.4167
    "choreography: 7 7 7 7 7\n"                   // 28
    "performance: 8 8 8.25 8.25 8\n";             // 24.25 / 3 x 3 = 24.25

TEST(Score, MultipliesMarkDifficultyAndWeightForEachElement) {
  const ReadSheet sheet(reeds, pond());
  const Score result = expected_score(sheet);
  EXPECT_EQ(result.elements[0], points("13.5"));
  EXPECT_EQ(result.elements[1], points("18.9"));
  EXPECT_EQ(result.aspects[0], points("30"));
  EXPECT_EQ(result.aspects[1], points("24"));
  EXPECT_EQ(result.total, points("86.4"));
  EXPECT_EQ(result.declared.text(), "4.5");
  EXPECT_EQ(result.credited.text(), "4.5");
}

TEST(Score, CreditsTheBaseMarkForWhatAPanelDidNotSee) {
  const ReadSheet sheet(reeds + panel, pond());
  const Score result = recorded_score(sheet);
  EXPECT_EQ(result.elements[0], points("13.2"));
  EXPECT_EQ(result.elements[1], points("3.4167"));
  EXPECT_EQ(result.declared.text(), "4.5");
  EXPECT_EQ(result.credited.text(), "2.3");
  EXPECT_EQ(result.total, points("68.8667"));
}

TEST(Score, CreditsTheBaseMarkThatARunShowed) {
  const ReadSheet sheet(reeds + "run 2026-04-14\nelement 2: lost spin-b\n", pond());
  EXPECT_EQ(expected_score(sheet).elements[1], points("3.5"));  // 7 x 0.5
}

TEST(Score, TakesSyncErrorsAndPenaltiesOff) {
  const ReadSheet sheet(reeds + panel + "sync: small x4, clear\npenalty: bottom x2\n", pond());
  const Score result = recorded_score(sheet);
  EXPECT_EQ(result.sync, points("0.9"));
  EXPECT_EQ(result.penalties, points("4"));
  EXPECT_EQ(result.total, points("63.9667"));
  EXPECT_EQ(result.so_far, points("63.9667"));
}

TEST(Score, TakesSyncErrorsAndPenaltiesOfARunOffTheEstimate) {
  const ReadSheet sheet(reeds + "run 2026-04-14\nsync: clear x3\npenalty: bottom\n", pond());
  EXPECT_EQ(expected_score(sheet).total, points("82.9"));
}

TEST(Score, CountsAPenaltyNoMoreOftenThanItsRowAllows) {
  EXPECT_EQ(recorded_score(ReadSheet(reeds + panel + "penalty: overtime x3\n", pond())).penalties,
            points("1"));
  EXPECT_EQ(
      recorded_score(ReadSheet(reeds + panel + "penalty: overtime, bottom, overtime\n", pond())).penalties,
      points("3"));
}

TEST(Score, TakesTheMarksOfARunForTheWholeRoutineBeforeTheExpectedOnes) {
  const ReadSheet sheet(reeds + "run 2026-04-14\nchoreography: 6\n", pond());
  EXPECT_EQ(expected_score(sheet).aspects[0], points("24"));
  EXPECT_EQ(expected_score(sheet).aspects[1], points("24"));
  const Score without = score(sheet.routine(), expected(sheet.routine(), {{}, {RunWish::Which::none, {}}}));
  EXPECT_EQ(without.aspects[0], points("30"));
}

TEST(Score, LeavesOutTheRunsOfADayAndAfterIt) {
  const ReadSheet sheet(reeds + "run 2026-04-14\nchoreography: 6\nrun 2026-05-01\nchoreography: 9\n", pond());
  const auto before = [&](std::string_view day) {
    Wish wish;
    wish.runs.before = day;
    return score(sheet.routine(), expected(sheet.routine(), wish)).aspects[0];
  };
  EXPECT_EQ(before(""), points("36"));
  EXPECT_EQ(before("2026-05-02"), points("36"));
  EXPECT_EQ(before("2026-05-01"), points("24"));
  EXPECT_EQ(before("2026-04-14"), points("30"));
}

TEST(Score, PricesTheOptionThatIsWished) {
  const ReadSheet sheet(
      replaced(reeds, "expect 7.5\n", "expect 7.5\noption \"safer\"\nparts hold x2\nexpect 8\n"), pond());
  const Score result = score(sheet.routine(), expected(sheet.routine(), {{1}, {}}));
  EXPECT_EQ(result.elements[0], points("10.4"));  // 8 x 1.3
  EXPECT_EQ(result.elements[1], points("18.9"));
}

TEST(Score, HasNoTotalWhileAnElementHasNoMark) {
  const Score result = expected_score(ReadSheet(replaced(reeds, "expect 7.5\n", ""), pond()));
  EXPECT_FALSE(result.elements[0].has_value());
  EXPECT_FALSE(result.total.has_value());
  EXPECT_EQ(result.so_far, points("72.9"));
}

TEST(Score, HasNoTotalWhileAnAspectHasNoMark) {
  const Score result = expected_score(ReadSheet(replaced(reeds, ", performance 8.00", ""), pond()));
  EXPECT_FALSE(result.aspects[1].has_value());
  EXPECT_FALSE(result.total.has_value());
  EXPECT_EQ(result.so_far, points("62.4"));
  const Score seen =
      recorded_score(ReadSheet(reeds + replaced(panel, "choreography: 7 7 7 7 7\n", ""), pond()));
  EXPECT_FALSE(seen.total.has_value());
  EXPECT_EQ(seen.so_far, points("40.8667"));
}

const std::string session =
    "routine \"Reeds\"\nevent session\nvalues pond\n"
    "element 1 figure\nparts heron\nexpect 7\n"
    "element 2 figure\nparts otter\nexpect 8.5\n";

TEST(Score, WeighsMarksByDifficultyOverTheRoutineAndRoundsOnce) {
  const ReadSheet sheet(session, pond());
  const Score result = expected_score(sheet);
  EXPECT_FALSE(result.elements[0].has_value());
  ASSERT_EQ(result.weighted.size(), 1u);
  EXPECT_EQ(result.weighted[0].points, points("76"));  // (7 x 2.1 + 8.5 x 1.4) / 3.5 x 10
  EXPECT_EQ(result.total, points("76"));
}

TEST(Score, RoundsTheWeightedPointsOnlyAtTheEnd) {
  const ReadSheet sheet(session + "panel 2026-05-09\nelement 1: 7 7.1 7 7 9\nelement 2: 6 6.1 6.1 6.3 6\n",
                        pond());
  // (21.1 / 3 x 2.1 + 18.2 / 3 x 1.4) / 3.5 x 10 = 66.4666...
  EXPECT_EQ(recorded_score(sheet).total, points("66.4667"));
}

TEST(Score, HasNoTotalWhenEveryCreditedDifficultyIsZero) {
  const ReadSheet sheet(
      replaced(replaced(session, "parts heron", "difficulty 0"), "parts otter", "difficulty 0"), pond());
  const Score result = expected_score(sheet);
  EXPECT_FALSE(result.weighted[0].points.has_value());
  EXPECT_FALSE(result.total.has_value());
}

TEST(Score, AddsTheSumOfTheMarksWhenTheEventLooksAtNoDifficulty) {
  const ReadSheet sheet(
      "routine \"Reeds\"\nevent plain\nvalues pond\nelement 1 hybrid\nparts spin-a\n"
      "panel 2026-05-09\nelement 1: 7 7.5 8 8.5 -\n",
      pond());
  EXPECT_EQ(recorded_score(sheet).elements[0], points("31"));  // (7.5 + 8) x 2
}

TEST(Score, WeighsOneKindAndMultipliesTheOthersWhenTheRowsSaySo) {
  const ReadSheet sheet(
      "routine \"Reeds\"\nevent mixed\nvalues pond\n"
      "element 1 figure\nparts heron\nexpect 7\n"
      "element 2 hybrid\nparts spin-a\nexpect 8\n"
      "element 3 figure\nparts otter\nexpect 8.5\n"
      "impression choreography 6\n",
      pond());
  const Score result = expected_score(sheet);
  EXPECT_FALSE(result.elements[0].has_value());
  EXPECT_EQ(result.elements[1], points("12.32"));        // 8 x 1.4 x 1.1
  EXPECT_EQ(result.weighted[0].points, points("30.4"));  // (7 x 2.1 + 8.5 x 1.4) / 3.5 x 4
  EXPECT_EQ(result.total, points("60.72"));
}

TEST(Score, CountsOnlyTheWholeRoutineWhereNoElementIsMarked) {
  const ReadSheet sheet(
      "routine \"Reeds\"\nevent whole\nvalues pond\nelement 1 hybrid\nparts spin-a\n"
      "impression choreography 7.5, performance 8\n",
      pond());
  const Score result = expected_score(sheet);
  EXPECT_FALSE(result.elements[0].has_value());
  EXPECT_EQ(result.total, points("77"));
}

}  // namespace
}  // namespace landdrill
