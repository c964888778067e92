#include <gtest/gtest.h>

#include "engine/report/figures.h"
#include "sample.h"

namespace landdrill::report {
namespace {

using report_test::d;

TEST(ChanceText, NeverCallsWhatMayHappenNeverOrAlways) {
  EXPECT_EQ(per_cent(0), "0 %");
  EXPECT_EQ(per_cent(0.0001), "under 0.1 %");
  EXPECT_EQ(per_cent(0.1834), "18.3 %");
  EXPECT_EQ(per_cent(0.9999), "over 99.9 %");
  EXPECT_EQ(per_cent(1), "100 %");
}

TEST(ChanceText, TakesARoundingErrorOfManyChancesForWhatItIs) {
  EXPECT_EQ(per_cent(1e-14), "0 %");
  EXPECT_EQ(per_cent(1 - 1e-14), "100 %");
}

TEST(ChanceText, CountsTimesTheWayPeopleDo) {
  EXPECT_EQ(times_in_words(0), "never");
  EXPECT_EQ(times_in_words(0.025), "about 1 time in 40");
  EXPECT_EQ(times_in_words(0.11), "about 1 time in 10");
  EXPECT_EQ(times_in_words(0.44), "about 4 times in 10");
  EXPECT_EQ(times_in_words(0.98), "all but about 1 time in 50");
  EXPECT_EQ(times_in_words(1), "always");
}

TEST(ChanceText, ShortensAmountsWithTiesAwayFromZero) {
  EXPECT_EQ(to_places(d("2.345"), 2), "2.35");
  EXPECT_EQ(to_places(d("-0.004"), 2), "0.00");
  EXPECT_EQ(to_places(-0.004, 2), "0.00");
  EXPECT_EQ(to_places(17.5, 2), "17.50");
}

TEST(ChanceText, ShowsAChanceThatWasGivenAsItWasTyped) {
  EXPECT_EQ(given_per_cent(d("12")), "12 %");
  EXPECT_EQ(given_per_cent(d("33.333333")), "33.33 %");
}

}  // namespace
}  // namespace landdrill::report
