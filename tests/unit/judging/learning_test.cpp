// What is learned from lessons; the checks against the outside are in tests/outside/lessons_test.cpp.
#include "engine/judging/learning.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

#include "engine/judging/lessons.h"

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
  EXPECT_TRUE(warns(learned, "no lessons"));
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
  EXPECT_TRUE(warns(learned, "1 lesson in all, fewer than 8"));
  EXPECT_TRUE(warns(learned, "one lesson only of kind hybrid"));
  expect_all_finite(learned);
}

TEST(Learning, OfFewLessonsLeavesExpectedMarksAsTheyAre) {
  const Learned seven = learn(several("hybrid", {-1, -1, -1, -1, -1, -1, -1}));
  EXPECT_DOUBLE_EQ(calibrated(seven, lesson("hybrid", 0)), 7);
  EXPECT_TRUE(warns(seven, "7 lessons in all"));
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
    EXPECT_NEAR(*one.shrunk_low, -0.3, 1e-12);
    EXPECT_NEAR(*one.shrunk_high, -0.3, 1e-12);
  }
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
  EXPECT_TRUE(warns(learned, "one lesson only of kind throw"));
}

TEST(Learning, OfKindsSeenOnceEachDrawsAllToTheirMean) {
  const Learned learned =
      learn(several("a", {-1}) + several("b", {0}) + several("c", {0.25}) + several("d", {0.75}));
  EXPECT_FALSE(learned.within || learned.between);
  for (const std::string kind : {"a", "b", "c", "d"}) {
    EXPECT_NEAR(of(learned, Of::kind, kind).weight, 0, 1e-12);
    EXPECT_NEAR(of(learned, Of::kind, kind).shrunk, 0, 1e-12);
    EXPECT_NEAR(*of(learned, Of::kind, kind).shrunk_low, *of(learned, Of::all, "").low, 1e-12);
  }
  EXPECT_TRUE(warns(learned, "no kind has two lessons"));
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

TEST(Learning, SaysWhenAllIsOfOneDay) {
  std::vector<Lesson> found;
  for (int i = 0; i < 9; ++i) found.push_back(lesson("hybrid", -0.5 + 0.1 * i));
  EXPECT_TRUE(warns(learn(found), "are of one day"));
  EXPECT_EQ(learn(found).days, 1u);
  found.back().date = "2026-06-01";
  EXPECT_FALSE(warns(learn(found), "are of one day"));
}

TEST(Learning, SaysHowMuchWiderIntervalsAreWhenMarksOfADayHangTogether) {
  std::vector<Lesson> moody, steady;
  for (int day = 1; day <= 4; ++day) {
    for (int i = 0; i < 4; ++i) {
      const std::string date = "2026-05-0" + std::to_string(day);
      moody.push_back(lesson("hybrid", day % 2 == 0 ? 0.5 : -0.5, date));
      steady.push_back(lesson("hybrid", i % 2 == 0 ? 0.5 : -0.5, date));
    }
  }
  // All of a day the same: 16 lessons are worth no more than 4 days, half the root.
  EXPECT_DOUBLE_EQ(learn(moody).wider, 2);
  EXPECT_TRUE(warns(learn(moody), "hang together: read the intervals as 2.0 times as wide"));
  EXPECT_DOUBLE_EQ(learn(steady).wider, 1);
  EXPECT_EQ(*learn(steady).between_days, 0);
  EXPECT_FALSE(warns(learn(steady), "hang together"));
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

TEST(DrawTogether, OfNoGroupIsNothing) {
  const DrawnTogether drawn = draw_together({}, {1});
  EXPECT_TRUE(drawn.groups.empty());
  EXPECT_EQ(drawn.between, 0);
}

}  // namespace
}  // namespace landdrill
