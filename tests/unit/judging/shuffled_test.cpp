// Claims that are corrected for chance, against what can be counted or worked out by hand.
#include "engine/judging/statistics/shuffled.h"

#include <gtest/gtest.h>

#include "engine/judging/statistics/less_alike.h"

namespace landdrill {
namespace {

const std::vector<std::size_t> one_meet(6, 0);

// Of the 20 ways to choose three of six numbers, one has the highest sum.
TEST(Shuffled, FindsTheChanceThatCanBeCounted) {
  const Look highest{{1, 2, 3, 4, 5, 6}, {3, 4, 5}, Look::For::above};
  EXPECT_NEAR(chances_by_shuffling(std::vector{highest}, one_meet)[0], 1.0 / 20, 0.015);
  const Look either{{1, 2, 3, 4, 5, 6}, {3, 4, 5}, Look::For::either};
  EXPECT_NEAR(chances_by_shuffling(std::vector{either}, one_meet)[0], 2.0 / 20, 0.02);
}

// The three highest or the three lowest: 2 of 20; a look at nothing makes no difference.
TEST(Shuffled, CorrectsForEveryGroupThatIsLookedAt) {
  const std::vector<double> numbers = {1, 2, 3, 4, 5, 6};
  const std::vector<Look> looks = {{numbers, {3, 4, 5}, Look::For::above},
                                   {numbers, {0, 1, 2}, Look::For::above},
                                   {numbers, {}, Look::For::above}};
  const std::vector<double> chances = chances_by_shuffling(looks, one_meet);
  EXPECT_NEAR(chances[0], 2.0 / 20, 0.02);
  EXPECT_EQ(chances[1], 1);
  EXPECT_EQ(chances[2], 1);
}

TEST(Shuffled, SaysNothingOfAGroupThatIsAMeetOfItsOwn) {
  const Look meet{{1, 2, 3, 14, 15, 16}, {3, 4, 5}, Look::For::either};
  EXPECT_EQ(chances_by_shuffling(std::vector{meet}, std::vector<std::size_t>{0, 0, 0, 1, 1, 1})[0], 1);
}

// By hand: r = -0.870533 of sums and differences, t = -3.063969 with 3 degrees of freedom, a chance of 0.027411 (the
// distribution of t has a closed form there).
TEST(LessAlike, FindsTheSmallerSpreadAtTheChanceOfPitmanAndMorgan) {
  const Pairs pairs = {{1, 2}, {2, 4}, {3, 5}, {4, 9}, {5, 8}};
  EXPECT_TRUE(spreads_less(pairs, 0.028));
  EXPECT_FALSE(spreads_less(pairs, 0.027));
  Pairs swapped;
  for (const auto& [a, b] : pairs) swapped.emplace_back(b, a);
  EXPECT_FALSE(spreads_less(swapped, 0.4));
}

}  // namespace
}  // namespace landdrill
