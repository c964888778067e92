#include "engine/choosing/search/choose_best.h"

#include <gtest/gtest.h>

#include "tables/decimal.h"
#include "tests/unit/kit/choosing_kit.h"

namespace landdrill {
namespace {

using kit::all_best;
using kit::Dice;
using kit::made_up;
using kit::Shape;

ChooseWish best(std::size_t how_many) {
  return {how_many, {}, 20'000'000};
}

// Whether the sides of the conflict cannot be met together, and without any one of them can.
void expect_minimal(const Choosing& choosing, const std::vector<LimitSide>& conflict) {
  const auto with_only = [&](std::size_t left_out) {
    Choosing some = choosing;
    for (ChoiceLimit& limit : some.limits) limit.least = limit.most = std::nullopt;
    some.chain.reset();
    for (std::size_t i = 0; i < conflict.size(); ++i) {
      if (i == left_out) continue;
      const std::size_t j = conflict[i].limit;
      if (conflict[i].side == LimitSide::Side::least) some.limits[j].least = choosing.limits[j].least;
      if (conflict[i].side == LimitSide::Side::most) some.limits[j].most = choosing.limits[j].most;
      if (conflict[i].side == LimitSide::Side::chain) some.chain = choosing.chain;
    }
    return some;
  };
  EXPECT_TRUE(all_best(with_only(conflict.size()), 1).empty());
  for (std::size_t i = 0; i < conflict.size(); ++i) EXPECT_FALSE(all_best(with_only(i), 1).empty());
}

void expect_as_by_trying_all(const Choosing& choosing, std::size_t how_many) {
  const BestChoices found = choose_best(choosing, best(how_many));
  const std::vector<Chosen> all = all_best(choosing, how_many);
  EXPECT_TRUE(found.proved);
  EXPECT_EQ(found.infeasible, all.empty());
  ASSERT_EQ(found.best.size(), all.size());
  for (std::size_t i = 0; i < all.size(); ++i) {
    EXPECT_EQ(found.best[i].worth, all[i].worth) << "place " << i;
    EXPECT_EQ(found.best[i].choices, all[i].choices) << "place " << i;
  }
  if (all.empty()) expect_minimal(choosing, found.conflict);
}

TEST(ChooseBest, TakesWhatIsWorthMostWithinALimit) {
  const Choosing two{{{{30, {8}}, {20, {4}}}, {{25, {8}}, {5, {2}}}}, {{"seconds", {}, 12}}, {}};
  const BestChoices found = choose_best(two, {});
  ASSERT_EQ(found.best.size(), 1u);
  EXPECT_EQ(found.best[0].choices, (std::vector<std::size_t>{1, 0}));
  EXPECT_EQ(found.best[0].worth, 45);
  EXPECT_TRUE(found.proved);
}

TEST(ChooseBest, PutsFirstChoicesFirstWhereTheWorthIsEqual) {
  const Choosing even{{{{1, {}}, {1, {}}}, {{2, {}}, {2, {}}}}, {}, {}};
  const BestChoices found = choose_best(even, best(3));
  ASSERT_EQ(found.best.size(), 3u);
  EXPECT_EQ(found.best[0].choices, (std::vector<std::size_t>{0, 0}));
  EXPECT_EQ(found.best[1].choices, (std::vector<std::size_t>{0, 1}));
  EXPECT_EQ(found.best[2].choices, (std::vector<std::size_t>{1, 0}));
}

TEST(ChooseBest, ChoosesNothingFromNoLists) {
  const BestChoices found = choose_best({}, {});
  ASSERT_EQ(found.best.size(), 1u);
  EXPECT_TRUE(found.best[0].choices.empty());
}

TEST(ChooseBest, NamesListsWithoutChoices) {
  const BestChoices found = choose_best({{{{1, {}}}, {}}, {}, {}}, {});
  EXPECT_TRUE(found.infeasible);
  EXPECT_EQ(found.empty_lists, (std::vector<std::size_t>{1}));
}

TEST(ChooseBest, NamesOnlyTheLimitsThatConflict) {
  const Choosing narrow{{{{5, {1, 6, 1}}, {4, {0, 3, 1}}}, {{5, {1, 6, 1}}, {4, {0, 3, 1}}}},
                        {{"hybrids", 2, {}}, {"seconds", {}, 10}, {"elements", {}, 3}},
                        {}};
  const BestChoices found = choose_best(narrow, {});
  EXPECT_TRUE(found.infeasible);
  EXPECT_EQ(found.conflict,
            (std::vector<LimitSide>{{0, LimitSide::Side::least}, {1, LimitSide::Side::most}}));
}

TEST(ChooseBest, IsAsGoodAsTryingEverything) {
  for (std::uint64_t seed = 0; seed < 500; ++seed) {
    SCOPED_TRACE("seed " + std::to_string(seed));
    Dice dice(seed);
    const Shape shape{dice.from_to(1, 6),     dice.from_to(1, 5),  dice.from_to(0, 4),
                      dice.from_to(1, 60),    dice.from_to(1, 12), false,
                      dice.from_to(0, 3) == 0};
    expect_as_by_trying_all(made_up(dice, shape), static_cast<std::size_t>(dice.from_to(1, 8)));
  }
}

TEST(ChooseBest, KeepsAWorthOfMillionsOfMillionthsExact) {
  Dice dice(3);
  expect_as_by_trying_all(made_up(dice, {6, 5, 3, 900'000'000'000'000, 7, true, true}), 6);
  expect_as_by_trying_all(made_up(dice, {6, 5, 3, 50, 900'000'000'000'000, true, false}), 6);
}

TEST(ChooseBest, RefusesSumsThatWouldOverflow) {
  EXPECT_THROW(choose_best({{{{std::int64_t{1} << 56, {}}}}, {}, {}}, {}), Overflow);
  EXPECT_THROW(choose_best({{{{1, {std::int64_t{1} << 56}}}}, {{"seconds", {}, 5}}, {}}, {}), Overflow);
}

TEST(ChooseBest, StopsWhenToldAndSaysHowMuchBetterAnotherCouldBe) {
  for (std::uint64_t seed = 0; seed < 20; ++seed) {
    SCOPED_TRACE("seed " + std::to_string(seed));
    Dice dice(seed);
    const Choosing large = made_up(dice, {40, 12, 5, 100'000, 300, true, false});
    const BestChoices whole = choose_best(large, {1, {}, 2'000'000});
    const BestChoices stopped = choose_best(large, {1, [](std::uint64_t) { return false; }, 20'000'000});
    EXPECT_LT(stopped.nodes, 400'000u);
    if (stopped.proved) continue;
    ASSERT_TRUE(stopped.at_most);
    if (whole.best.empty()) continue;
    EXPECT_GE(*stopped.at_most, whole.best[0].worth);
    if (stopped.best.empty()) continue;
    EXPECT_LE(stopped.best[0].worth, whole.best[0].worth);
    EXPECT_TRUE(meets(large, stopped.best[0].choices));
  }
}

TEST(ChooseBest, AnswersSixtyListsOfTwentyWithinItsNodes) {
  for (std::uint64_t seed = 0; seed < 4; ++seed) {
    SCOPED_TRACE("seed " + std::to_string(seed));
    Dice dice(seed);
    const Choosing large =
        made_up(dice, {60, 20, 4 + static_cast<std::int64_t>(seed), 50'000'000, 40, true, false});
    const BestChoices found = choose_best(large, {6, {}, 3'000'000});
    EXPECT_LT(found.nodes, 20'000'000u);
    if (found.infeasible) continue;
    ASSERT_FALSE(found.best.empty());
    EXPECT_TRUE(meets(large, found.best[0].choices));
    EXPECT_TRUE(found.proved || *found.at_most >= found.best[0].worth);
  }
}

}  // namespace
}  // namespace landdrill
