// What is learned from lessons; the checks against the outside are in tests/outside/lessons_test.cpp.
#include "engine/judging/learning.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

#include "engine/judging/lessons.h"
#include "engine/judging/statistics/by_day.h"

namespace landdrill {
namespace {

using Of = LearnedBias::Of;

// A lesson of a mark of 7 that the panel made `bias` higher.
Lesson lesson(const std::string& kind, double bias, const std::string& date = "2026-05-09") {
  Lesson one;
  one.date = date;
  one.kind = kind;
  one.expected = 7;
  one.given = 7 + bias;
  return one;
}
std::vector<Lesson> several(const std::string& kind, const std::vector<double>& biases) {
  std::vector<Lesson> result;
  for (std::size_t i = 0; i < biases.size(); ++i) {
    result.push_back(lesson(kind, biases[i], "2026-05-0" + std::to_string(1 + i % 9)));
  }
  return result;
}
std::vector<Lesson> operator+(std::vector<Lesson> some, const std::vector<Lesson>& more) {
  some.insert(some.end(), more.begin(), more.end());
  return some;
}
const LearnedBias& of(const Learned& learned, Of sort, const std::string& code) {
  const auto found = std::find_if(learned.biases.begin(), learned.biases.end(), [&](const LearnedBias& bias) {
    return bias.of == sort && bias.code == code;
  });
  EXPECT_NE(found, learned.biases.end()) << code;
  return *found;
}
bool warns(const Learned& learned, const std::string& of_what) {
  return std::any_of(learned.warnings.begin(), learned.warnings.end(),
                     [&](const std::string& warning) { return warning.find(of_what) != std::string::npos; });
}
void expect_all_finite(const Learned& learned) {
  for (const LearnedBias& one : learned.biases) {
    for (double number :
         {one.bias, one.towards, one.shrunk, one.weight, one.spread.value_or(0), one.low.value_or(0),
          one.high.value_or(0), one.shrunk_low.value_or(0), one.shrunk_high.value_or(0)}) {
      EXPECT_TRUE(std::isfinite(number)) << one.code;
    }
    EXPECT_GE(one.weight, 0);
    EXPECT_LE(one.weight, 1);
  }
}

TEST(Learning, OfNoLessonsKnowsNothingAndSaysSo) {
  const Learned learned = learn({});
  ASSERT_EQ(learned.biases.size(), 1u);
  EXPECT_EQ(learned.biases[0].lessons, 0u);
  EXPECT_FALSE(learned.within || learned.between || learned.biases[0].low);
  EXPECT_TRUE(warns(learned, "no panel marked an element"));
  expect_all_finite(learned);
  EXPECT_DOUBLE_EQ(calibrated(learned, lesson("hybrid", 0)), 7);
}

TEST(Learning, OfOneLessonHasABiasButNoSpreadAndNoInterval) {
  const Learned learned = learn(several("hybrid", {-0.5}));
  for (const LearnedBias& one : learned.biases) {
    EXPECT_DOUBLE_EQ(one.bias, -0.5);
    EXPECT_DOUBLE_EQ(one.shrunk, -0.5);
    EXPECT_FALSE(one.spread || one.low || one.high || one.shrunk_low || one.shrunk_high);
  }
  EXPECT_TRUE(warns(learned, "1 element in all, fewer than 8"));
  EXPECT_TRUE(warns(learned, "one element only of kind hybrid"));
  expect_all_finite(learned);
}

TEST(Learning, OfFewLessonsLeavesExpectedMarksAsTheyAre) {
  const Learned seven = learn(several("hybrid", {-1, -1, -1, -1, -1, -1, -1}));
  EXPECT_DOUBLE_EQ(calibrated(seven, lesson("hybrid", 0)), 7);
  EXPECT_TRUE(warns(seven, "7 elements in all"));
  const Learned eight = learn(several("hybrid", {-1, -1, -1, -1, -1, -1, -1, -1}));
  EXPECT_DOUBLE_EQ(calibrated(eight, lesson("hybrid", 0)), 6);
  EXPECT_FALSE(warns(eight, "in all"));
}

TEST(Learning, OfOneKindDrawsItTowardsNothing) {
  const Learned learned = learn(several("hybrid", {-0.5, 0, -0.25, -0.25}));
  const LearnedBias& hybrid = of(learned, Of::kind, "hybrid");
  EXPECT_DOUBLE_EQ(hybrid.weight, 1);
  EXPECT_DOUBLE_EQ(hybrid.shrunk, -0.25);
  EXPECT_DOUBLE_EQ(*hybrid.shrunk_low, *hybrid.low);
  EXPECT_DOUBLE_EQ(*hybrid.shrunk_high, *hybrid.high);
  EXPECT_FALSE(learned.between);
  EXPECT_TRUE(warns(learned, "of one kind"));
}

// Given less expected leaves remnants of binary fractions, which are no spread.
TEST(Learning, OfEqualLessonsFindsNoSpread) {
  std::vector<Lesson> equal;
  for (int i = 0; i < 12; ++i) {
    Lesson one = lesson(i % 2 == 0 ? "hybrid" : "lift", 0, "2026-05-0" + std::to_string(1 + i % 3));
    one.expected = 5.1 + 0.1 * i;
    one.given = one.expected - 0.3;
    equal.push_back(one);
  }
  const Learned learned = learn(equal);
  EXPECT_NEAR(*learned.within, 0, 1e-12);
  EXPECT_EQ(*learned.between, 0);
  for (const LearnedBias& one : learned.biases) {
    EXPECT_NEAR(one.shrunk, -0.3, 1e-12);
    EXPECT_FALSE(one.low || one.shrunk_low);  // nothing tells how far the next day may be off
  }
  EXPECT_FALSE(learned.tells);
  expect_all_finite(learned);
}

TEST(Learning, TakesTheRestOfABinaryFractionForNoDifferenceOfKinds) {
  Lesson hybrid = lesson("hybrid", 0), lift = lesson("lift", 0);
  hybrid.given = 7.3;
  lift.expected = 0;
  lift.given = 0.3;
  ASSERT_NE(hybrid.given - hybrid.expected, lift.given - lift.expected);
  EXPECT_EQ(*learn(std::vector<Lesson>{hybrid, hybrid, lift, lift}).between, 0);
}

TEST(Learning, PoolsAllWhenKindsDifferNoMoreThanLessonsDo) {
  const Learned learned =
      learn(several("hybrid", {-0.5, 0.5, -0.5, 0.5}) + several("lift", {-0.5, 0.5, -0.25, 0.5}));
  EXPECT_EQ(*learned.between, 0);
  for (const std::string kind : {"hybrid", "lift"}) {
    EXPECT_EQ(of(learned, Of::kind, kind).weight, 0) << kind;
    EXPECT_DOUBLE_EQ(of(learned, Of::kind, kind).shrunk, 0.25 / 8) << kind;
  }
}

TEST(Learning, KeepsKindsApartThatDifferWithoutAnySpread) {
  const Learned learned = learn(several("hybrid", {-0.5, -0.5}) + several("lift", {0.25, 0.25, 0.25}));
  EXPECT_EQ(*learned.within, 0);
  EXPECT_DOUBLE_EQ(of(learned, Of::kind, "hybrid").shrunk, -0.5);
  EXPECT_DOUBLE_EQ(of(learned, Of::kind, "lift").shrunk, 0.25);
  expect_all_finite(learned);
}

TEST(Learning, DrawsAKindWithFewLessonsCloserToTheOthers) {
  const Learned learned =
      learn(several("hybrid", {-0.6, -0.4, -0.5, -0.3, -0.7, -0.5, -0.4, -0.6, -0.5, -0.5}) +
            several("lift", {0.3, 0.5, 0.4, 0.2, 0.6, 0.4}) + several("throw", {1.2}));
  const LearnedBias& hybrid = of(learned, Of::kind, "hybrid");
  const LearnedBias& lift = of(learned, Of::kind, "lift");
  const LearnedBias& thrown = of(learned, Of::kind, "throw");
  EXPECT_GT(hybrid.weight, lift.weight);
  EXPECT_GT(lift.weight, thrown.weight);
  EXPECT_LT(thrown.shrunk, 1.2);
  EXPECT_GT(thrown.shrunk, thrown.towards);
  EXPECT_FALSE(thrown.low);
  ASSERT_TRUE(thrown.shrunk_low);
  EXPECT_LT(*thrown.shrunk_low, thrown.shrunk);
  EXPECT_TRUE(warns(learned, "one element only of kind throw"));
}

TEST(Learning, OfKindsSeenOnceEachDrawsAllToTheirMean) {
  const Learned learned =
      learn(std::vector<Lesson>{lesson("a", -1, "2026-05-01"), lesson("b", 0, "2026-05-02"),
                                lesson("c", 0.25, "2026-05-03"), lesson("d", 0.75, "2026-05-04")});
  EXPECT_FALSE(learned.within || learned.between);
  for (const std::string kind : {"a", "b", "c", "d"}) {
    EXPECT_NEAR(of(learned, Of::kind, kind).weight, 0, 1e-12);
    EXPECT_NEAR(of(learned, Of::kind, kind).shrunk, 0, 1e-12);
    EXPECT_NEAR(*of(learned, Of::kind, kind).shrunk_low, *of(learned, Of::all, "").low, 1e-12);
  }
  EXPECT_TRUE(warns(learned, "no kind was marked twice"));
}

TEST(Learning, CountsALessonUnderEachOfItsFamiliesAndFaultsOnce) {
  Lesson both = lesson("hybrid", -0.5);
  both.families = {"spins", "holds", "spins"};
  both.faults = {"bent-knee", "bent-knee"};
  Lesson one = lesson("hybrid", 0.25);
  one.families = {"spins"};
  const Learned learned = learn(std::vector<Lesson>{both, one});
  EXPECT_EQ(of(learned, Of::family, "spins").lessons, 2u);
  EXPECT_EQ(of(learned, Of::family, "holds").lessons, 1u);
  EXPECT_EQ(of(learned, Of::fault, "bent-knee").lessons, 1u);
  EXPECT_DOUBLE_EQ(of(learned, Of::fault, "bent-knee").shrunk, -0.5);
  EXPECT_TRUE(warns(learned, "family holds, fault bent-knee"));
  expect_all_finite(learned);
}

// Three lessons cannot tell three families apart, though each family has its own mean.
TEST(Learning, DrawsAllToOneMeanWithNoMoreLessonsThanGroups) {
  Lesson low = lesson("hybrid", -1), high = lesson("hybrid", 1);
  low.families = {"spins", "holds"};
  high.families = {"thrusts"};
  const Learned learned = learn(std::vector<Lesson>{low, low, high});
  for (const std::string family : {"spins", "holds", "thrusts"}) {
    EXPECT_EQ(of(learned, Of::family, family).weight, 0) << family;
    EXPECT_DOUBLE_EQ(of(learned, Of::family, family).shrunk, -0.6) << family;
  }
}

// One lesson in two families is still one lesson.
TEST(Learning, FindsNoSpreadInOneLessonHoweverManyFamiliesItHas) {
  Lesson one = lesson("hybrid", -0.5);
  one.families = {"spins", "holds"};
  const Learned learned = learn(std::vector<Lesson>{one});
  EXPECT_FALSE(of(learned, Of::family, "spins").shrunk_low);
  EXPECT_FALSE(of(learned, Of::family, "holds").shrunk_high);
}

TEST(Learning, NeverSaysWhatIsNoNumberAndNeverDrawsPastTheMean) {
  std::mt19937 random(20261125);
  const auto up_to = [&](int most) { return static_cast<int>(random() % static_cast<unsigned>(most + 1)); };
  for (int season = 0; season < 3000; ++season) {
    std::vector<Lesson> found;
    for (int i = up_to(12); i > 0; --i) {
      found.push_back(lesson(std::string(1, static_cast<char>('a' + up_to(3))), 0.25 * (up_to(4) - 2),
                             "2026-05-0" + std::to_string(1 + up_to(3))));
      for (int family = up_to(2); family > 0; --family) {
        found.back().families.push_back(std::string(1, static_cast<char>('r' + up_to(2))));
      }
    }
    const Learned learned = learn(found);
    expect_all_finite(learned);
    for (const LearnedBias& one : learned.biases) {
      const auto [least, most] = std::minmax(one.bias, one.towards);
      EXPECT_GE(one.shrunk, least - 1e-12);
      EXPECT_LE(one.shrunk, most + 1e-12);
      EXPECT_EQ(one.shrunk_low.has_value(), one.shrunk_high.has_value());
      EXPECT_LE(one.shrunk_low.value_or(one.shrunk), one.shrunk_high.value_or(one.shrunk));
    }
    const BackTest test = back_test(found);
    EXPECT_TRUE(std::isfinite(test.better) && std::isfinite(test.better_low.value_or(0)));
  }
}

TEST(Learning, ListsAllThenKindsFamiliesFaultsWithMostLessonsFirst) {
  Lesson lift = lesson("lift", -0.5);
  lift.families = {"jumps"};
  lift.faults = {"splash"};
  std::vector<Lesson> found = {lift, lesson("hybrid", 0), lesson("hybrid", 0.25), lesson("arm", 0)};
  std::string order;
  for (const LearnedBias& one : learn(found).biases) order += one.code + " ";
  EXPECT_EQ(order, " hybrid arm lift jumps splash ");
}

TEST(Learning, SaysWhenAllIsOfFewDays) {
  std::vector<Lesson> found;
  for (int i = 0; i < 9; ++i) found.push_back(lesson("hybrid", -0.5 + 0.1 * i));
  EXPECT_TRUE(warns(learn(found), "from one day, fewer than 3"));
  EXPECT_EQ(learn(found).days, 1u);
  found.back().date = "2026-06-01";
  EXPECT_TRUE(warns(learn(found), "from 2 days, fewer than 3"));
  EXPECT_FALSE(learn(found).biases[0].low);
  found.front().date = "2026-06-02";
  EXPECT_FALSE(warns(learn(found), "fewer than 3"));
  EXPECT_TRUE(learn(found).biases[0].low);
}

// Of each day, as many lessons as it has biases.
std::vector<Lesson> days_of(const std::string& kind, const std::vector<std::vector<double>>& days) {
  std::vector<Lesson> found;
  for (std::size_t day = 0; day < days.size(); ++day) {
    for (double bias : days[day]) found.push_back(lesson(kind, bias, "2026-05-0" + std::to_string(1 + day)));
  }
  return found;
}

TEST(Learning, CountsDaysNotLessons) {
  const std::vector<double> low(4, -0.5), high(4, 0.5), mixed = {-0.5, 0.5, -0.5, 0.5};
  // As sure as four lessons of -0.5 and 0.5: a standard error of 0.2887, and three degrees of freedom.
  const LearnedBias moody = learn(days_of("hybrid", {low, high, low, high})).biases[0];
  EXPECT_NEAR(*moody.high, 3.182446 * 0.288675, 1e-5);
  EXPECT_FALSE(learn(days_of("hybrid", {mixed, mixed, mixed, mixed})).biases[0].low);
}

TEST(Learning, WithOneLessonADayHasStudentsInterval) {
  const LearnedBias all = learn(days_of("hybrid", {{-0.5}, {0}, {-0.25}, {-0.25}, {0.5}})).biases[0];
  EXPECT_NEAR(*all.high - all.bias, 2.776445 * *all.spread / std::sqrt(5.0), 1e-6);
}

TEST(Learning, ClaimsNothingOfFewLessonsOrDaysHoweverAlike) {
  const std::vector<double> four = {-0.5, -0.4, -0.5, -0.4};
  for (const std::vector<Lesson>& few : {days_of("hybrid", {{-0.5}}), days_of("hybrid", {four, four}),
                                         days_of("hybrid", {{-0.5, -0.4}, {-0.4}, {-0.5, -0.4}, {-0.4}})}) {
    const Learned learned = learn(few);
    EXPECT_FALSE(learned.tells);
    EXPECT_TRUE(learned.claims.empty());
  }
  const Learned enough = learn(days_of("hybrid", {four, four, {-0.5, -0.5}}));
  EXPECT_TRUE(enough.tells);
  EXPECT_EQ(enough.claims.size(), 1u);
}

TEST(Learning, ClaimsNothingThatADayOrTwoMayHaveDone) {
  const std::vector<double> strict(8, -0.6), usual(8, 0), kind(8, 0.1);
  const Learned learned = learn(days_of("hybrid", {strict, usual, kind, strict}));
  EXPECT_TRUE(learned.tells);
  EXPECT_TRUE(learned.claims.empty());
}

const std::vector<std::vector<double>> much_less = {
    {-0.5, -0.4, -0.6}, {-0.5, -0.5, -0.4}, {-0.6, -0.5, -0.5}, {-0.4, -0.5, -0.5}};
const std::vector<std::vector<double>> much_more = {{0.2, 0.3}, {0.3, 0.3}, {0.2, 0.2}, {0.3, 0.2}};

TEST(Learning, ClaimsOfTheOnlyKindWhatItSaw) {
  const Learned learned = learn(days_of("hybrid", much_less));
  ASSERT_EQ(learned.claims.size(), 1u);
  EXPECT_EQ(learned.claims[0].kind, "hybrid");
  EXPECT_EQ(learned.only_kind, "hybrid");
  EXPECT_DOUBLE_EQ(learned.claims[0].high, *learned.biases[0].high);
}

TEST(Learning, ClaimsOfAllWhatHoldsForEveryKind) {
  const Learned learned = learn(days_of("hybrid", much_less) + days_of("lift", much_less));
  ASSERT_EQ(learned.claims.size(), 1u);
  EXPECT_EQ(learned.claims[0].kind, "");
}

TEST(Learning, CountsOnlyKindsThatCanBeLookedAt) {
  const std::vector<Lesson> two = days_of("hybrid", much_less) + days_of("lift", much_less);
  const Learned learned = learn(two + several("throw", {-0.4}) + several("figure", {0.1}));
  ASSERT_EQ(learned.claims.size(), 1u);
  EXPECT_EQ(learned.claims[0].kind, "");
  const Learned hybrids = learn(days_of("hybrid", much_less) + several("throw", {-0.4}));
  ASSERT_EQ(hybrids.claims.size(), 1u);
  EXPECT_EQ(hybrids.claims[0].kind, "hybrid");
  EXPECT_DOUBLE_EQ(hybrids.claims[0].high, *of(hybrids, Of::kind, "hybrid").high);
}

TEST(Learning, ClaimsOfAKindAloneWhatComesFromItAlone) {
  const Learned learned =
      learn(days_of("hybrid", much_less) + days_of("lift", {{0.1, -0.1}, {0, 0.1}, {-0.1, -0.1}, {0.1, 0}}));
  ASSERT_EQ(learned.claims.size(), 1u);
  EXPECT_EQ(learned.claims[0].kind, "hybrid");
  // Wider than its own interval, as two kinds were looked at.
  EXPECT_GT(learned.claims[0].high, *of(learned, Of::kind, "hybrid").high);
}

TEST(Learning, ClaimsOfEachKindWhereTheyGoDifferentWays) {
  const Learned learned = learn(days_of("hybrid", much_less) + days_of("lift", much_more));
  ASSERT_EQ(learned.claims.size(), 2u);
  EXPECT_LT(learned.claims[0].high, 0);
  EXPECT_GT(learned.claims[1].low, 0);
}

TEST(Learning, CalibratesAKindThatWasNeverSeenByTheBiasOfAll) {
  const Learned learned =
      learn(several("hybrid", {-0.5, -0.5, -0.5, -0.5}) + several("lift", {0.25, 0.25, 0.25, 0.25}));
  EXPECT_DOUBLE_EQ(calibrated(learned, lesson("throw", 0)), 7 - 0.125);
  EXPECT_DOUBLE_EQ(calibrated(learned, lesson("lift", 0)), 7.25);
}

TEST(Learning, HoldsACalibratedMarkWithinItsScale) {
  const Learned up = learn(several("hybrid", {2, 2, 2, 2, 2, 2, 2, 2}));
  Lesson high = lesson("hybrid", 0);
  high.expected = 9.5;
  EXPECT_DOUBLE_EQ(calibrated(up, high), 10);
  high.most = 20;
  EXPECT_DOUBLE_EQ(calibrated(up, high), 11.5);
  const Learned down = learn(several("hybrid", {-2, -2, -2, -2, -2, -2, -2, -2}));
  Lesson low = lesson("hybrid", 0);
  low.expected = 1.5;
  EXPECT_DOUBLE_EQ(calibrated(down, low), 0);
}

TEST(ErrorByDay, IsThatOfTheDaysMeans) {
  const std::optional<DayError> two = error_by_day(std::vector<DayShare>{{0.5, 0.1}, {0.5, -0.1}});
  EXPECT_NEAR(two->error, 0.2, 1e-12);
  EXPECT_NEAR(two->freedom, 1, 1e-12);
}

TEST(ErrorByDay, HasFewerDegreesOfFreedomWhereOneDayHasMost) {
  const std::optional<DayError> error =
      error_by_day(std::vector<DayShare>{{0.8, 0.1}, {0.1, -0.1}, {0.1, 0.05}});
  EXPECT_GT(error->freedom, 1);
  EXPECT_LT(error->freedom, 1.5);
}

TEST(ErrorByDay, IsNotThereOfOneDayOrOfDaysThatAreAllAlike) {
  EXPECT_FALSE(error_by_day({}));
  EXPECT_FALSE(error_by_day(std::vector<DayShare>{{1, 0}}));
  EXPECT_FALSE(error_by_day(std::vector<DayShare>{{0.5, 1e-17}, {0.5, 0}}));
}

TEST(DrawTogether, OfNoGroupIsNothing) {
  const DrawnTogether drawn = draw_together({}, {1});
  EXPECT_TRUE(drawn.groups.empty());
  EXPECT_EQ(drawn.between, 0);
}

}  // namespace
}  // namespace landdrill
