// Work shared by all processors: everything once, in order, and nothing left running.
#include "engine/files/in_order.h"

#include <gtest/gtest.h>

#include <atomic>
#include <chrono>
#include <stdexcept>
#include <thread>
#include <type_traits>

namespace landdrill {
namespace {

// `make(i)` of 0 ... count - 1 by all processors, and `take` of what it made here, in order.
template <class Make, class Take>
void make_in_order(std::size_t count, Make make, Take take) {
  struct Slot {
    std::size_t which = 0;
    std::optional<std::invoke_result_t<Make, std::size_t>> made;
  };
  std::size_t begun = 0;
  const auto begin = [&](Slot& slot) {
    slot.which = begun;
    return begun++ < count ? std::optional<std::size_t>(0) : std::nullopt;
  };
  InOrder<Slot> order(begin, [&](Slot& slot) { slot.made = make(slot.which); });
  order.ahead();
  while (Slot* slot = order.next()) take(std::move(*slot->made));
}

TEST(InOrder, HandsOutEverythingOnceAndInOrder) {
  std::vector<std::size_t> made;
  make_in_order(
      1000, [](std::size_t i) { return i * i; }, [&](std::size_t square) { made.push_back(square); });
  ASSERT_EQ(made.size(), 1000u);
  for (std::size_t i = 0; i < made.size(); ++i) ASSERT_EQ(made[i], i * i);
}

TEST(InOrder, HandsOutASlowOneBeforeTheQuickOnesBehindIt) {
  std::vector<std::size_t> made;
  const auto slow_at_first = [](std::size_t i) {
    if (i % 10 == 0) std::this_thread::sleep_for(std::chrono::milliseconds(5));
    return i;
  };
  make_in_order(60, slow_at_first, [&](std::size_t i) { made.push_back(i); });
  for (std::size_t i = 0; i < made.size(); ++i) ASSERT_EQ(made[i], i);
  EXPECT_EQ(made.size(), 60u);
}

TEST(InOrder, OfNothingMakesNothing) {
  int made = 0;
  make_in_order(
      0, [](std::size_t i) { return i; }, [&](std::size_t) { ++made; });
  EXPECT_EQ(made, 0);
}

TEST(InOrder, StartsNoThreadForOneThing) {
  const std::thread::id here = std::this_thread::get_id();
  std::thread::id there;
  make_in_order(
      1, [&](std::size_t) { return std::this_thread::get_id(); }, [&](std::thread::id id) { there = id; });
  EXPECT_EQ(there, here);
}

TEST(InOrder, ThrowsInItsTurn) {
  std::vector<std::size_t> made;
  const auto fails = [](std::size_t i) {
    if (i == 7) throw std::runtime_error("the seventh");
    return i;
  };
  const auto take = [&](std::size_t i) { made.push_back(i); };
  EXPECT_THROW(make_in_order(100, fails, take), std::runtime_error);
  EXPECT_EQ(made, (std::vector<std::size_t>{0, 1, 2, 3, 4, 5, 6}));
}

TEST(InOrder, FillsNoMoreThanItNeedsAheadAndEndsWithWorkLeft) {
  const std::size_t most_ahead = 1 + std::thread::hardware_concurrency();
  std::atomic<std::size_t> filled = 0;
  {
    InOrder<std::size_t> order(
        [&](std::size_t& thing) {
          thing = filled++;
          return std::optional<std::size_t>(0);
        },
        [](std::size_t& thing) { thing *= 2; });
    order.ahead();
    for (std::size_t i = 0; i < 5; ++i) {
      const std::size_t* thing = order.next();
      ASSERT_TRUE(thing);
      EXPECT_EQ(*thing, 2 * i);
      EXPECT_LE(filled, i + most_ahead);
    }
  }
  EXPECT_GE(filled, 5u);
}

}  // namespace
}  // namespace landdrill
