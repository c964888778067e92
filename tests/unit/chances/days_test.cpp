#include "engine/chances/days.h"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/unit/kit/kit.h"

namespace landdrill {
namespace {

using kit::number;

PanelRule five_judges() {
  PanelRule rule;
  rule.judges = 5;
  rule.step = number("0.25");
  rule.least = Mark(number("0"));
  rule.most = Mark(number("10"));
  return rule;
}

TEST(Days, WithoutSpreadAreOneWithoutShift) {
  const PanelRule rule = five_judges();
  const Days days = days_of(number("0"), {{{&rule, number("7"), number("0.4")}}});
  ASSERT_EQ(days.shifts.cases().size(), 1u);
  EXPECT_EQ(days.shifts.cases().front().value.text(), "0");
  EXPECT_EQ(days.off, 0);
}
TEST(Days, HaveTheSpreadThatWasAskedFor) {
  const PanelRule rule = five_judges();
  for (const char* spread : {"0.02", "0.25", "0.3", "3"}) {
    const Days days = days_of(number(spread), {{{&rule, number("7"), number("0.4")}}});
    EXPECT_NEAR(days.shifts.mean(), 0, 1e-12);
    EXPECT_NEAR(days.shifts.deviation() / std::stod(spread), 1, 1e-3) << spread;
    EXPECT_NEAR(days.shifts.whole(), 1, 1e-14);
    EXPECT_LT(days.off, 1e-4);
  }
}
TEST(Days, AreMoreWhereJudgesAreOfOneMind) {
  const PanelRule rule = five_judges();
  const auto kinds = [&](const char* spread) {
    return days_of(number("0.3"), {{{&rule, number("7"), number(spread)}}}).shifts.cases().size();
  };
  EXPECT_GT(kinds("0.1"), 3 * kinds("0.4"));
  EXPECT_LE(kinds("0.001"), 1503u);
}
TEST(Days, SayHowFarTooFewOfThemAreOff) {
  const PanelRule rule = five_judges();
  EXPECT_GT(days_of(number("0.3"), {{{&rule, number("7"), number("0.0001")}}}).off, 0.5);
}

// Of a judge without spread the mark is known on each day: at least 7.25 from a shift of 0.125 on, and at least
// 7.5 from 0.375 on.
TEST(Days, KeepApartWhatAJudgeWithoutSpreadMarks) {
  const PanelRule rule = five_judges();
  const DayLine sure{&rule, number("7"), number("0")};
  for (const bool with_another : {false, true}) {
    std::vector<DayLine> lines = {sure};
    if (with_another) lines.push_back({&rule, number("8"), number("0.2")});
    const Days days = days_of(number("0.3"), lines);
    for (const double change : {0.125, 0.375, -0.125, -0.625}) {
      Chance above = 0;
      for (const Odds::Case& one : days.shifts.cases()) {
        const double shift = std::stod(one.value.text());
        EXPECT_GT(std::abs(shift - change), 1e-6);
        if (shift > change) above += one.chance;
      }
      EXPECT_NEAR(above, std::erfc(change / 0.3 / std::sqrt(2)) / 2, days.off) << change;
    }
    EXPECT_LT(days.off, 1e-4);
  }
}

}  // namespace
}  // namespace landdrill
