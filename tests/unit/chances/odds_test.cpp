#include "engine/chances/odds.h"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/unit/kit/kit.h"

namespace landdrill {
namespace {

using kit::number;

Odds odds(std::initializer_list<std::pair<const char*, double>> cases) {
  std::vector<Odds::Case> list;
  for (const auto& [value, chance] : cases) list.push_back({number(value), chance});
  return Odds(list);
}

std::string text(const Odds& of) {
  std::string result;
  for (const Odds::Case& one : of.cases()) {
    result += one.value.text() + ":" + std::to_string(std::lround(one.chance * 1e6)) + " ";
  }
  return result;
}

TEST(Odds, AreInRisingOrderWithEqualValuesPutTogether) {
  EXPECT_EQ(text(odds({{"2", 0.25}, {"1", 0.5}, {"2", 0.25}, {"3", 0}})), "1:500000 2:500000 ");
}
TEST(Odds, MeanAndDeviationAreThoseOfADie) {
  std::vector<Odds::Case> faces;
  for (int face = 1; face <= 6; ++face) faces.push_back({Decimal::whole(face), 1.0 / 6});
  EXPECT_NEAR(Odds(faces).mean(), 3.5, 1e-15);
  EXPECT_NEAR(Odds(faces).deviation(), std::sqrt(35.0 / 12), 1e-15);
}
TEST(Odds, AtLeastCountsTheValueItself) {
  const Odds three = odds({{"1", 0.2}, {"2", 0.3}, {"3", 0.5}});
  EXPECT_DOUBLE_EQ(three.at_least(number("2")), 0.8);
  EXPECT_DOUBLE_EQ(three.at_least(number("2.5")), 0.5);
  EXPECT_EQ(three.at_least(number("4")), 0);
}
TEST(Odds, QuantileIsTheLeastValueThatIsNotExceededSoOften) {
  const Odds four = odds({{"1", 0.1}, {"2", 0.2}, {"3", 0.3}, {"4", 0.4}});
  EXPECT_EQ(four.quantile(0).text(), "1");
  EXPECT_EQ(four.quantile(0.1).text(), "1");
  EXPECT_EQ(four.quantile(0.11).text(), "2");
  EXPECT_EQ(four.quantile(0.3).text(), "2");  // 0.1 + 0.2 is a little more than 0.3 in binary
  EXPECT_EQ(four.quantile(0.6).text(), "3");
  EXPECT_EQ(four.quantile(0.61).text(), "4");
  EXPECT_EQ(four.quantile(1).text(), "4");
}
TEST(Odds, WholeDoesNotLoseSmallChancesAmongLargeOnes) {
  std::vector<Odds::Case> cases = {{number("0"), 1}};
  for (int i = 1; i <= 1000; ++i) cases.push_back({Decimal::whole(i), 1e-17});
  EXPECT_GT(Odds(cases).whole(), 1);
}
TEST(Odds, MixedAreWeighedByTheirChances) {
  const Odds low = odds({{"1", 0.5}, {"2", 0.5}}), high = odds({{"2", 1}});
  const std::vector<WeighedOdds> both = {{0.2, &low}, {0.8, &high}};
  EXPECT_EQ(text(mixed(both)), "1:100000 2:900000 ");
}
TEST(Odds, BeatsEqualsAndIsBeatenAddUpToOne) {
  const Odds a = odds({{"1", 0.3}, {"2", 0.3}, {"4", 0.4}}), b = odds({{"0", 0.1}, {"2", 0.5}, {"3", 0.4}});
  EXPECT_NEAR(beats(a, b), 0.3 * 0.1 + 0.3 * 0.1 + 0.4, 1e-15);
  EXPECT_NEAR(equals(a, b), 0.15, 1e-15);
  EXPECT_NEAR(beats(a, b) + equals(a, b) + beats(b, a), 1, 1e-15);
}
TEST(Odds, BeatsByMoreThanALeadInEitherDirection) {
  const Odds a = odds({{"1", 0.5}, {"3", 0.5}}), b = odds({{"1", 1}});
  EXPECT_DOUBLE_EQ(beats_by_more_than(a, b, number("1.5")), 0.5);
  EXPECT_DOUBLE_EQ(beats_by_more_than(a, b, number("2")), 0);
  EXPECT_DOUBLE_EQ(beats_by_more_than(a, b, number("-0.1")), 1);
}

}  // namespace
}  // namespace landdrill
