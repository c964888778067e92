// Sums of values that are printed: numerical values of figures, groups of figures, required elements.
#include "tests/outside/published.h"

namespace landdrill {
namespace {

std::string sum_of(const std::string& parts) {
  return published::declared_sum(
      published::head("values", "figure-values-2009") + "element 1 figure-sum\nparts " + parts + "\n",
      "figure-values-2009");
}

// Source: FINA Manual for Judges, Coaches & Referees 2009-2013 (rev. Jan 2010), pp. 88 and 110.
TEST(NumericalValues, OfTheFiguresAddUpToThePrintedSums) {
  EXPECT_EQ(sum_of("225-1, 225-2, 225-3, 225-4, 225-5, 225-6, 225-7, 225-8, 225-9"), "127.0");
  EXPECT_EQ(sum_of("326-1, 326-2, 326-3, 326-4, 326-5, 326-6"), "98.0");
  EXPECT_EQ(sum_of("201-1, 201-2, 201-3, 201-4"), "32.0");
}

// Source: the same, p. 72.
TEST(NumericalValues, OfTheBasicMovementsAreThePrintedOnes) {
  EXPECT_EQ(sum_of("bm-16-1"), "14.0");
  EXPECT_EQ(sum_of("bm-17-1"), "14.0");
  EXPECT_EQ(sum_of("bm-18-1"), "14.0");
  EXPECT_EQ(sum_of("bm-18-2"), "8.0");
  EXPECT_EQ(sum_of("bm-18-1, bm-18-2"), "22.0");
}

// Secondary: club and national pages repeating the figure groups 2022-2025; each 13-15 group of two adds up
// to 5.5.
TEST(FigureGroups, OfTwoAddUpToFiveAndAHalf) {
  const std::pair<const char*, const char*> groups[] = {
      {"flamingo-bent-knee-twist-spin", "cyclone-open-180"},
      {"barracuda-airborne-split-spin-up-180", "swordfish-straight-leg-ariana-rotation"},
      {"whip-continuous-spin-720", "saturn"},
      {"venus", "albatross-spin-up-360"},
      {"rio-straight-leg", "walkover-back-closing-360"},
      {"ipanema-spinning-180", "kip-combined-spin"}};
  for (const auto& [one, other] : groups) {
    const std::string text = published::head("figures-7", "figure-groups-2022") + "element 1 figure\nparts " +
                             one + "\nelement 2 figure\nparts " + other + "\n";
    EXPECT_EQ(published::declared_sum(text, "figure-groups-2022"), "5.5") << one;
  }
}

std::string required(const std::string& event, const std::string& set, int elements) {
  std::string text = published::head(event, "routines-2013");
  for (int i = 1; i <= elements; ++i) {
    text += "element " + std::to_string(i) + " required\nparts " + set + "-" + std::to_string(i) + "\n";
  }
  return published::declared_sum(text, "routines-2013");
}

// Secondary: required elements of senior teams 2017-2021, sum 12.9.
TEST(RequiredElements, OfATeamAddUpToTheReportedSum) {
  EXPECT_EQ(required("team-technical", "team", 5), "12.9");
}

// Source: the set of 2013 as printed, 3.3, 3.1, 2.5, 2.9, 3.0, 3.2; the sum is arithmetic.
TEST(RequiredElements, OfASoloAddUp) {
  EXPECT_EQ(required("solo-technical", "solo", 6), "18.0");
}

}  // namespace
}  // namespace landdrill
