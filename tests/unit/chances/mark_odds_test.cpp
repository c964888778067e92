#include "engine/chances/mark_odds.h"

#include <gtest/gtest.h>

#include <cmath>
#include <map>

#include "engine/score/panel.h"
#include "tests/unit/kit/kit.h"

namespace landdrill {
namespace {

using kit::number;

PanelRule panel(const char* step, int judges = 5, int drop_high = 1, int drop_low = 1) {
  PanelRule rule;
  rule.judges = judges;
  rule.drop_high = drop_high;
  rule.drop_low = drop_low;
  rule.step = number(step);
  rule.least = Mark(number("0"));
  rule.most = Mark(number("10"));
  return rule;
}

double chance_of(const Odds& odds, const char* value) {
  for (const Odds::Case& one : odds.cases()) {
    if (one.value == number(value)) return one.chance;
  }
  return 0;
}

double below(double z) {
  return 0.5 * (1 + std::erf(z / std::sqrt(2)));
}

TEST(MarkOdds, AreTheBellCurveCutHalfWayBetweenTheSteps) {
  const Odds mark = mark_odds(panel("0.25"), number("7.3"), number("0.4"));
  EXPECT_NEAR(chance_of(mark, "7.25"), below((7.375 - 7.3) / 0.4) - below((7.125 - 7.3) / 0.4), 1e-15);
  EXPECT_NEAR(chance_of(mark, "8"), below((8.125 - 7.3) / 0.4) - below((7.875 - 7.3) / 0.4), 1e-15);
  EXPECT_NEAR(chance_of(mark, "10"), 1 - below((9.875 - 7.3) / 0.4), 1e-15);
}
TEST(MarkOdds, GiveTheTailsToTheEndsOfTheScale) {
  const Odds mark = mark_odds(panel("0.5"), number("9.75"), number("1"));
  EXPECT_NEAR(chance_of(mark, "10"), 0.5, 1e-15);
  const Odds outside = mark_odds(panel("0.5"), number("14"), number("1"));
  EXPECT_NEAR(chance_of(outside, "10"), below(4.25), 1e-15);
}
TEST(MarkOdds, AddUpToOneWhateverTheSpread) {
  for (const char* spread : {"0.001", "0.1", "0.4", "3", "50", "999"}) {
    for (const char* expected : {"-3", "0", "0.125", "7.3", "10", "11.7"}) {
      const Odds mark = mark_odds(panel("0.1"), number(expected), number(spread));
      EXPECT_NEAR(mark.whole(), 1, 1e-15) << spread << " " << expected;
    }
  }
}
TEST(MarkOdds, KeepTheirTailsFarOutOnBothSides) {
  // erfc(0.5 x 8.75 / sqrt 2 x ...): the chance of a 10 at 8.75 spreads is far below what 1 - erf can tell.
  const Odds mark = mark_odds(panel("0.5"), number("5"), number("0.5"));
  const double expected = std::erfc(4.75 / 0.5 / std::sqrt(2)) / 2;
  EXPECT_LT(expected, 1e-20);
  EXPECT_NEAR(chance_of(mark, "10") / expected, 1, 1e-12);
  EXPECT_NEAR(chance_of(mark, "0") / expected, 1, 1e-12);
}
TEST(MarkOdds, WithoutSpreadAreTheNearestStepHalfWayUpwards) {
  const auto certain = [](const char* expected) {
    const Odds mark = mark_odds(panel("0.25"), number(expected), number("0"));
    return mark.cases().size() == 1 ? mark.cases().front().value.text() : "several";
  };
  EXPECT_EQ(certain("7.3"), "7.25");
  EXPECT_EQ(certain("7.375"), "7.5");
  EXPECT_EQ(certain("7.374999"), "7.25");
  EXPECT_EQ(certain("12"), "10");
  EXPECT_EQ(certain("-0.2"), "0");
}

// Every way in which the judges can mark, one by one, with keep().
void each_way(const PanelRule& rule, const Odds& mark, JudgeMarks& marks, int judges, double chance,
              std::map<Decimal, double>& sums) {
  if (judges == rule.judges) {
    sums[keep(rule, marks).sum.value()] += chance;
    return;
  }
  for (const Odds::Case& one : mark.cases()) {
    JudgeMarks more = marks;
    more.push_back(Mark(one.value));
    each_way(rule, mark, more, judges + 1, chance * one.chance, sums);
  }
}
void check_all_ways(const PanelRule& rule, const Odds& mark) {
  std::map<Decimal, double> sums;
  JudgeMarks none;
  each_way(rule, mark, none, 0, 1, sums);
  const Odds kept = kept_odds(rule, mark);
  ASSERT_EQ(kept.cases().size(), sums.size());
  for (const Odds::Case& one : kept.cases()) EXPECT_NEAR(one.chance, sums.at(one.value), 1e-13);
}

TEST(KeptOdds, AreThoseOfEveryWayInWhichTheJudgesCanMark) {
  const Odds mark = mark_odds(panel("2.5"), number("6.1"), number("2.2"));
  for (const auto& [judges, high, low] :
       {std::tuple{1, 0, 0}, {3, 0, 0}, {3, 1, 1}, {5, 1, 1}, {5, 0, 2}, {5, 3, 0}}) {
    check_all_ways(panel("2.5", judges, high, low), mark);
  }
}
TEST(KeptOdds, AreThoseOfEveryWayForSevenJudgesWithTwoHighAndTwoLowDropped) {
  check_all_ways(panel("2.5", 7, 2, 2), mark_odds(panel("2.5"), number("4"), number("3")));
}
TEST(KeptOdds, TakeAnyMarksNotOnlyThoseOfAScale) {
  check_all_ways(panel("0.1", 4, 1, 0),
                 Odds({{number("1.3"), 0.2}, {number("4"), 0.5}, {number("9.05"), 0.3}}));
}
TEST(KeptOdds, OfOneCertainMarkAreCertain) {
  const Odds kept = kept_odds(panel("0.25"), Odds::certain(number("7.25")));
  ASSERT_EQ(kept.cases().size(), 1u);
  EXPECT_EQ(kept.cases().front().value.text(), "21.75");
  EXPECT_EQ(kept.cases().front().chance, 1);
}
TEST(KeptOdds, AddUpToOneForALargePanel) {
  const Odds mark = mark_odds(panel("0.1"), number("7.3"), number("0.4"));
  EXPECT_NEAR(kept_odds(panel("0.1", 20, 2, 2), mark).whole(), 1, 1e-13);
}

}  // namespace
}  // namespace landdrill
