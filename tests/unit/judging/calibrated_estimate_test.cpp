#include <gtest/gtest.h>

#include "engine/judging/lessons.h"
#include "tests/unit/kit/kit.h"

namespace landdrill {
namespace {

using kit::ReadSheet;

// So many lessons of hybrids, each off by `bias`.
Learned learned(std::size_t lessons, double bias) {
  std::vector<Lesson> all(lessons);
  for (std::size_t i = 0; i < lessons; ++i) {
    all[i].date = i % 2 == 0 ? "2026-03-01" : "2026-04-01";
    all[i].kind = "hybrid";
    all[i].expected = 7;
    all[i].given = 7 + bias;
  }
  return learn(all);
}
CalibratedEstimate estimate_of(const std::string& text, const Learned& known) {
  const ReadSheet sheet(text, kit::pond());
  return calibrated_estimate(sheet.routine(), {}, known);
}

TEST(CalibratedEstimate, IsTheEstimateOfASheetThatExpectsTheCalibratedMarks) {
  const CalibratedEstimate both = estimate_of(kit::reeds, learned(8, -0.5));
  std::string lower = kit::replaced(kit::reeds, "expect 7.5", "expect 7.0");
  lower = kit::replaced(lower, "expect 7\n", "expect 6.5\n");
  const ReadSheet sheet(lower, kit::pond());
  EXPECT_EQ(both.calibrated_total->text(), kit::expected_total(sheet.routine()));
  EXPECT_EQ(both.raw_total->text(), "86.4");
  EXPECT_EQ(*both.change, *both.calibrated_total - *both.raw_total);
  EXPECT_EQ(both.elements[0].label, "1 Ripple");
  EXPECT_EQ(both.elements[0].kind, "hybrid");
  EXPECT_EQ(both.elements[0].raw, kit::mark("7.5"));
  EXPECT_EQ(both.elements[0].calibrated, kit::mark("7"));
}

TEST(CalibratedEstimate, RoundsTheMarkToFourPlaces) {
  EXPECT_EQ(estimate_of(kit::reeds, learned(8, -1.0 / 3)).elements[0].calibrated, kit::mark("7.1667"));
}

TEST(CalibratedEstimate, StaysWithinTheScale) {
  EXPECT_EQ(estimate_of(kit::reeds, learned(8, 3)).elements[0].calibrated, kit::mark("10"));
}

TEST(CalibratedEstimate, LeavesMarksAsTheyAreWhereLessonsAreFew) {
  const CalibratedEstimate both = estimate_of(kit::reeds, learned(7, -0.5));
  EXPECT_EQ(both.elements[0].calibrated, both.elements[0].raw);
  EXPECT_EQ(both.change, Points());
}

// Two lessons of hybrids on each day, and as many of lifts.
Learned of_days(const std::vector<double>& biases, const std::vector<double>& of_lifts = {}) {
  std::vector<Lesson> all(2 * biases.size());
  for (std::size_t i = 0; i < all.size(); ++i) {
    all[i].date = "2026-03-0" + std::to_string(1 + i / 2);
    all[i].kind = "hybrid";
    all[i].expected = 7;
    all[i].given = 7 + biases[i / 2];
  }
  for (std::size_t i = 0; i < 2 * of_lifts.size(); ++i) {
    all.push_back(all[i]);
    all.back().kind = "lift";
    all.back().given = 7 + of_lifts[i / 2];
  }
  return learn(all);
}

TEST(CalibratedEstimate, SaysWhetherWhatWasAddedMayBeChance) {
  EXPECT_FALSE(estimate_of(kit::reeds, of_days({-0.5, -0.4, -0.5, -0.6})).may_be_chance);
  EXPECT_TRUE(estimate_of(kit::reeds, of_days({-0.5, 0.4, -0.5, -0.6})).may_be_chance);
  EXPECT_TRUE(estimate_of(kit::reeds, learned(8, -0.5)).may_be_chance);  // of two days
  // No more is said of a kind than of the season.
  EXPECT_TRUE(estimate_of(kit::reeds, of_days({-0.5, -0.4, -0.5, -0.6}, {0.5, 0.6, 0.4, 0.5})).may_be_chance);
  EXPECT_FALSE(estimate_of(kit::reeds, learned(7, -0.5)).may_be_chance);  // nothing was added
}

TEST(CalibratedEstimate, HasNoTotalWhileAMarkIsMissing) {
  const CalibratedEstimate both =
      estimate_of(kit::replaced(kit::reeds, "expect 7.5\n", ""), learned(8, -0.5));
  EXPECT_FALSE(both.elements[0].raw);
  EXPECT_FALSE(both.elements[0].calibrated);
  EXPECT_TRUE(both.elements[1].calibrated);
  EXPECT_FALSE(both.calibrated_total);
  EXPECT_FALSE(both.change);
}

}  // namespace
}  // namespace landdrill
