#include <gtest/gtest.h>

#include <cmath>

#include "engine/judging/lessons.h"

namespace landdrill {
namespace {

Lesson lesson(const std::string& date, double bias) {
  Lesson one;
  one.date = date;
  one.kind = "hybrid";
  one.expected = 7;
  one.given = 7 + bias;
  return one;
}
std::vector<Lesson> a_day(const std::string& date, const std::vector<double>& biases) {
  std::vector<Lesson> lessons;
  for (double bias : biases) lessons.push_back(lesson(date, bias));
  return lessons;
}
std::vector<Lesson> operator+(std::vector<Lesson> some, const std::vector<Lesson>& more) {
  some.insert(some.end(), more.begin(), more.end());
  return some;
}

const std::vector<Lesson> first_day = a_day("2026-03-01", {-0.5, -0.5, -0.5, -0.5, -0.5, -0.5, -0.5, -0.5});

TEST(BackTest, IsUntestedWithoutEnoughLessonsBefore) {
  for (const std::vector<Lesson>& lessons :
       {std::vector<Lesson>(), first_day,
        a_day("2026-03-01", {-1, -1, -1, -1, -1, -1, -1}) + a_day("2026-03-02", {-1})}) {
    const BackTest test = back_test(lessons);
    EXPECT_EQ(test.tested, 0u);
    EXPECT_EQ(test.verdict, BackTest::Verdict::untested);
    EXPECT_EQ(test.error_before, 0);
    EXPECT_FALSE(test.better_low);
    ASSERT_EQ(test.warnings.size(), 1u);
  }
}

TEST(BackTest, JudgesADayByEarlierDaysAlone) {
  // -0.5 was learned before: errors 0.5 and 1 become 0 and 1.5.
  const BackTest test = back_test(first_day + a_day("2026-03-02", {-0.5, 1}));
  EXPECT_EQ(test.tested, 2u);
  EXPECT_EQ(test.days, 1u);
  EXPECT_DOUBLE_EQ(test.error_before, 0.75);
  EXPECT_DOUBLE_EQ(test.error_after, 0.75);
  EXPECT_DOUBLE_EQ(test.better, 0);
  EXPECT_FALSE(test.better_low);
  EXPECT_EQ(test.verdict, BackTest::Verdict::open);
  EXPECT_EQ(test.warnings.size(), 1u);
}

TEST(BackTest, DoesNotLookAheadHoweverTheLessonsAreOrdered) {
  const std::vector<Lesson> second = a_day("2026-03-02", {-0.5, 1}), later = a_day("2026-04-01", {3});
  // The last day alone is judged by what came before it: -0.5 x 9 and 1 give -0.35.
  for (const std::vector<Lesson>& lessons : {later + second + first_day, first_day + second + later}) {
    const BackTest test = back_test(lessons);
    EXPECT_EQ(test.tested, 3u);
    EXPECT_EQ(test.days, 2u);
    EXPECT_NEAR(test.error_after, (0 + 1.5 + 3.35) / 3, 1e-12);
  }
}

TEST(BackTest, CountsSeveralPanelsOfOneDayAsOneDay) {
  std::vector<Lesson> morning = a_day("2026-03-02", {-0.25}), evening = a_day("2026-03-02", {-0.75});
  morning[0].routine = "Reeds";
  evening[0].routine = "Harbour Lights";
  const BackTest test = back_test(first_day + morning + evening);
  EXPECT_EQ(test.days, 1u);
  EXPECT_DOUBLE_EQ(test.error_after, 0.25);
}

TEST(BackTest, NeedsEnoughLessonsBeforeTheDayNotWithinIt) {
  const BackTest test = back_test(a_day("2026-03-01", {-1, -1, -1, -1, -1, -1, -1}) +
                                  a_day("2026-03-02", {-1, -1}) + a_day("2026-03-03", {-1}));
  EXPECT_EQ(test.tested, 1u);
  EXPECT_NEAR(test.error_after, 0, 1e-12);
}

TEST(BackTest, GivesTheIntervalOfTheGainOverDays) {
  const BackTest test = back_test(first_day + a_day("2026-03-02", {-0.5, -0.5}) +
                                  a_day("2026-03-03", {-0.5, -0.5}) + a_day("2026-03-04", {-0.5, -0.5}));
  EXPECT_DOUBLE_EQ(test.better, 0.5);
  EXPECT_NEAR(*test.better_low, 0.5, 1e-9);
  EXPECT_NEAR(*test.better_high, 0.5, 1e-9);
  EXPECT_EQ(test.verdict, BackTest::Verdict::helped);
  EXPECT_TRUE(test.warnings.empty());
}

TEST(BackTest, LeavesOpenWhatTwoDaysSayHoweverAlikeTheyAre) {
  const BackTest test =
      back_test(first_day + a_day("2026-03-02", {-0.5, -0.5}) + a_day("2026-03-03", {-0.5, -0.5}));
  EXPECT_EQ(test.days, 2u);
  EXPECT_GT(*test.better_low, 0);
  EXPECT_EQ(test.verdict, BackTest::Verdict::open);
}

TEST(BackTest, SaysWhenCalibrationDidHarm) {
  std::vector<Lesson> lessons = first_day;
  for (int day = 2; day <= 9; ++day) {
    lessons = lessons + a_day("2026-03-0" + std::to_string(day), {0.02 * (day % 3)});
  }
  const BackTest test = back_test(lessons);
  EXPECT_LT(test.better, 0);
  EXPECT_EQ(test.verdict, BackTest::Verdict::harmed);
}

TEST(BackTest, DoesNotChangeWithTheTellingDayAfterTheOneTested) {
  const std::vector<Lesson> quiet = a_day("2026-03-02", {-0.5, -0.25});
  const BackTest before = back_test(first_day + quiet);
  const BackTest after = back_test(first_day + quiet + a_day("2026-03-03", {5}));
  // What the later day adds is its own error of 5 and of 5 + 0.475, nothing else.
  EXPECT_NEAR(after.error_before * 3 - before.error_before * 2, 5, 1e-12);
  EXPECT_NEAR(after.error_after * 3 - before.error_after * 2, 5.475, 1e-12);
}

}  // namespace
}  // namespace landdrill
