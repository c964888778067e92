#include "engine/chances/total_odds.h"

#include <gtest/gtest.h>

#include <cmath>
#include <map>
#include <random>

#include "tests/unit/kit/kit.h"

namespace landdrill {
namespace {

using kit::number;

Odds random_odds(std::mt19937& random, int cases, int most) {
  std::vector<Odds::Case> list;
  double sum = 0;
  for (int i = 0; i < cases; ++i) {
    list.push_back(
        {Decimal::from_units(static_cast<std::int64_t>(random() % static_cast<unsigned>(most)) * 100),
         1.0 + static_cast<double>(random() % 1000)});
    sum += list.back().chance;
  }
  for (Odds::Case& one : list) one.chance /= sum;
  return Odds(list);
}

std::vector<Odds> pieces(unsigned seed, int count) {
  std::mt19937 random(seed);
  std::vector<Odds> result;
  for (int i = 0; i < count; ++i) result.push_back(random_odds(random, 30, 200'000));  // up to 20 points
  return result;
}
World world(const std::vector<Odds>& all, double chance = 1) {
  World result{chance, {}};
  for (const Odds& one : all) result.pieces.push_back(&one);
  return result;
}

// Every pair of cases.
Odds sum(const Odds& a, const Odds& b) {
  std::vector<Odds::Case> cases;
  cases.reserve(a.cases().size() * b.cases().size());
  for (const Odds::Case& one : a.cases()) {
    for (const Odds::Case& other : b.cases()) {
      cases.push_back({one.value + other.value, one.chance * other.chance});
    }
  }
  return Odds(std::move(cases));
}

TEST(TotalOdds, AreThePairwiseSumsWhenTheGridIsThatOfTheValues) {
  const std::vector<Odds> three = pieces(1, 3);
  const World all = world(three);
  const TotalOdds total = total_odds({&all, 1}, {});
  const Odds slow = sum(sum(three[0], three[1]), three[2]);
  EXPECT_EQ(total.bound.text(), "0");
  ASSERT_EQ(total.odds.cases().size(), slow.cases().size());
  for (std::size_t i = 0; i < slow.cases().size(); ++i) {
    EXPECT_EQ(total.odds.cases()[i].value, slow.cases()[i].value);
    EXPECT_NEAR(total.odds.cases()[i].chance, slow.cases()[i].chance, 1e-15);
  }
}
TEST(TotalOdds, MixTheDaysByTheirChances) {
  const Odds low = Odds::certain(number("1")), high = Odds::certain(number("3.5"));
  const std::vector<World> days = {{0.25, {&low, &low}}, {0.75, {&high, &low}}};
  const TotalOdds total = total_odds(days, {});
  ASSERT_EQ(total.odds.cases().size(), 2u);
  EXPECT_EQ(total.odds.cases()[0].value.text(), "2");
  EXPECT_DOUBLE_EQ(total.odds.cases()[0].chance, 0.25);
  EXPECT_EQ(total.odds.cases()[1].value.text(), "4.5");
}
TEST(TotalOdds, OfNothingAreZeroForCertain) {
  const World none{1, {}};
  const TotalOdds total = total_odds({&none, 1}, {});
  ASSERT_EQ(total.odds.cases().size(), 1u);
  EXPECT_EQ(total.odds.cases()[0].value.text(), "0");
}

// For every coarse grid, the true chance of at least t, from the finest grid, lies within the bounds.
void check_bound(unsigned seed, const char* grid) {
  const std::vector<Odds> some = pieces(seed, 5);
  const World all = world(some);
  const TotalOdds fine = total_odds({&all, 1}, {number("0.0001"), 0});
  const TotalOdds coarse = total_odds({&all, 1}, {number(grid), 0});
  ASSERT_EQ(fine.bound.text(), "0");
  ASSERT_GT(coarse.bound.units(), 0);
  EXPECT_LE(coarse.bound.units(), 5 * number(grid).units() / 2);
  bool differs = false;
  for (int t = 0; t <= 300; ++t) {
    const Decimal target = Decimal::from_units(t * 330'007);
    const double chance = fine.odds.at_least(target);
    ASSERT_GE(chance, coarse.odds.at_least(target + coarse.bound) - 1e-13) << target.text();
    ASSERT_LE(chance, coarse.odds.at_least(target - coarse.bound) + coarse.lost + 1e-13) << target.text();
    differs = differs || std::abs(chance - coarse.odds.at_least(target)) > 1e-9;
  }
  EXPECT_TRUE(differs);  // else nothing was put to the test
}
TEST(TotalOdds, TheBoundHoldsAgainstTheFinestGrid) {
  check_bound(2, "0.0007");
  check_bound(3, "0.01");
  check_bound(4, "0.5");
}
TEST(TotalOdds, HalvesGoUpAndDownSoThatTheMeanStays) {
  std::vector<Odds::Case> cases;
  for (int i = 0; i < 1000; ++i) cases.push_back({Decimal::from_units(i * 500), 0.001});
  const Odds even(cases);
  const World one{1, {&even}};
  EXPECT_NEAR(total_odds({&one, 1}, {number("0.001"), 0}).odds.mean(), even.mean(), 1e-6);
}
TEST(TotalOdds, TakeACoarserGridWhenThereIsLessWork) {
  const std::vector<Odds> some = pieces(5, 6);
  const World all = world(some);
  Decimal before;
  for (std::int64_t work : {200'000'000LL, 10'000'000LL, 100'000LL, 1'000LL}) {
    const TotalOdds total = total_odds({&all, 1}, {std::nullopt, work});
    EXPECT_GT(total.grid, before) << work;
    before = total.grid;
  }
}
// Multiples of a 240th, told to four places: as points of difficulties in twentieths and means of three are.
TEST(TotalOdds, FindTheGridOnWhichThePointsLieButForTheirRounding) {
  std::mt19937 random(7);
  std::vector<Odds> some;
  for (int i = 0; i < 6; ++i) {
    std::vector<Odds::Case> cases;
    for (int k = 0; k < 60; ++k) {
      const Exact value = Exact(Decimal::whole(random() % 4800)) / Exact(number("240"));
      cases.push_back({round(value, 4, Rounding::half_up), 1.0 / 60});
    }
    some.emplace_back(cases);
  }
  const World all = world(some);
  const TotalOdds total = total_odds({&all, 1}, {std::nullopt, 6'000'000});
  EXPECT_EQ(total.grid.text(), "0.004167");
  EXPECT_LE(total.bound, number("0.00031"));  // six times half of the fourth place, and a millionth each
  const TotalOdds finest = total_odds({&all, 1}, {number("0.0001"), 0});
  const Decimal target = number("60.0021");  // between two points
  EXPECT_NEAR(total.odds.at_least(target), finest.odds.at_least(target), 1e-13);
}
TEST(TotalOdds, CountWhatTheyCutOff) {
  const Odds rare({{number("0"), 1 - 1e-19}, {number("1"), 1e-19}});
  const World two{1, {&rare, &rare}};
  const TotalOdds total = total_odds({&two, 1}, {});
  EXPECT_EQ(total.odds.cases().size(), 1u);
  EXPECT_NEAR(total.lost, 2e-19, 1e-21);
}
TEST(TotalOdds, SayWhenEachDayIsDone) {
  const Odds one = Odds::certain(number("1"));
  const std::vector<World> days = {{0.5, {&one}}, {0.5, {&one}}};
  std::vector<std::size_t> done;
  total_odds(days, {}, [&](std::size_t so_far) { done.push_back(so_far); });
  EXPECT_EQ(done, (std::vector<std::size_t>{1, 2}));
}
TEST(TotalOdds, OfValuesAsFarApartAsNumbersGoDoNotHang) {
  const Odds wide({{Decimal::from_units(1), 0.5}, {Decimal::whole(4'000'000'000'000), 0.5}});
  const World two{1, {&wide, &wide}};
  const TotalOdds total = total_odds({&two, 1}, {number("0.000001"), 0});
  EXPECT_NEAR(total.odds.at_least(Decimal::whole(7'000'000'000'000)), 0.25, 1e-15);
  EXPECT_GT(total.bound.units(), 0);
}

}  // namespace
}  // namespace landdrill
