// A list that keeps its first items within itself: the same as a vector, whatever is done to it.
#include "grammar/short_list.h"

#include <gtest/gtest.h>

#include <random>
#include <vector>

namespace landdrill {
namespace {

using Few = ShortList<int, 4>;

bool is_within(const Few& few) {
  const char* const at = reinterpret_cast<const char*>(few.data());
  const char* const self = reinterpret_cast<const char*>(&few);
  return at >= self && at < self + sizeof few;
}

std::vector<int> items(const Few& few) {
  return {few.begin(), few.end()};
}

TEST(ShortList, KeepsFourWithinItselfAndMovesOutWithTheFifth) {
  Few few = {1, 2, 3, 4};
  EXPECT_TRUE(is_within(few));
  few.push_back(5);
  EXPECT_FALSE(is_within(few));
  EXPECT_EQ(items(few), (std::vector{1, 2, 3, 4, 5}));
}

TEST(ShortList, TakesAnItemOfItselfWhileItMoves) {
  Few few = {7, 2, 3, 4};
  few.push_back(few.front());
  EXPECT_EQ(few.back(), 7);
}

TEST(ShortList, LeavesAMovedOneEmptyAndUsable) {
  for (const int count : {3, 9}) {
    Few one;
    for (int i = 0; i < count; ++i) one.push_back(i);
    Few other = std::move(one);
    EXPECT_EQ(other.size(), static_cast<std::size_t>(count));
    EXPECT_TRUE(one.empty());
    one.push_back(42);
    EXPECT_EQ(items(one), std::vector{42});
    EXPECT_EQ(other[0], 0);
  }
}

TEST(ShortList, AssignsItselfAndOthersOfAnyLength) {
  Few few = {1, 2};
  const Few many = {1, 2, 3, 4, 5, 6};
  const Few& same = few;
  few = same;
  EXPECT_EQ(items(few), (std::vector{1, 2}));
  few = many;
  EXPECT_TRUE(few == many);
  few = Few{9};
  EXPECT_EQ(items(few), std::vector{9});
}

// A thousand steps, each done to a vector as well.
TEST(ShortList, DoesAsAVectorDoes) {
  std::mt19937 dice(7);
  Few few;
  std::vector<int> vector;
  for (int step = 0; step < 1000; ++step) {
    const auto roll = dice() % 10;
    if (roll < 6) {
      few.push_back(step);
      vector.push_back(step);
    } else if (roll < 8 && !vector.empty()) {
      few.pop_back();
      vector.pop_back();
    } else if (roll == 8) {
      Few copy = few;
      few = std::move(copy);
    } else if (dice() % 8 == 0) {
      few.clear();
      vector.clear();
    }
    ASSERT_EQ(items(few), vector) << step;
  }
}

}  // namespace
}  // namespace landdrill
