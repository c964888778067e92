#include "engine/judging/statistics/figures.h"

#include <gtest/gtest.h>

namespace landdrill {
namespace {

TEST(Figures, AreRoundedHalfUpAwayFromZero) {
  EXPECT_EQ(figure(7.125), "7.13");
  EXPECT_EQ(figure(-0.125), "-0.13");
  EXPECT_EQ(figure(7.1249), "7.12");
  EXPECT_EQ(figure(0.5, 0), "1");
}

TEST(Figures, AreRoundedAsTheExactNumberThatTheBinaryOneStandsFor) {
  EXPECT_EQ(figure(1.005), "1.01");        // binary: a hair below
  EXPECT_EQ(figure(7.6 - 7.125), "0.48");  // 0.47499999999999964
  EXPECT_EQ(figure(21.855 / 3), "7.29");   // 7.285
}

TEST(Figures, HaveTheirPlacesAndNoNegativeNothing) {
  EXPECT_EQ(figure(7), "7.00");
  EXPECT_EQ(figure(-0.001), "0.00");
  EXPECT_EQ(figure(0.1234565, 6), "0.123457");
}

TEST(Figures, AreShortWithoutNoiseForOtherPrograms) {
  EXPECT_EQ(exact_figure(0.1 + 0.2), "0.3");
  EXPECT_EQ(exact_figure(-2.0 / 3), "-0.666667");
}

TEST(Figures, ThatNoExactNumberHoldsAreToldAllTheSame) {
  EXPECT_EQ(figure(1e15), "1000000000000000.00");
  EXPECT_EQ(exact_figure(1e15), "1000000000000000");
}

}  // namespace
}  // namespace landdrill
