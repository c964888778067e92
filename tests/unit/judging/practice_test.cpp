// An official in training against a recorded panel.
#include "engine/judging/practice.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "tests/unit/kit/kit.h"

namespace landdrill {
namespace {

using kit::mark;
using Does = Answer::Does;

PanelRule execution() {
  PanelRule rule;
  rule.judges = 5;
  rule.drop_high = rule.drop_low = 1;
  rule.step = kit::number("0.25");
  rule.most = mark("10");
  return rule;
}
const PanelRule rule = execution();

PracticeTask task(const std::string& kind, double kept) {
  PracticeTask one;
  one.kind = kind;
  one.rule = &rule;
  one.kept = kept;
  return one;
}
Practised gave(const char* text) {
  return {mark(text), false};
}

TEST(Practice, UnderstandsMarksAndTheFewWordsOfASession) {
  const PracticeTask any = task("hybrid", 7);
  EXPECT_EQ(*read_answer(" 7,25 ", any).mark, mark("7.25"));
  EXPECT_EQ(read_answer("B", any).does, Does::back);
  EXPECT_EQ(read_answer("skip", any).does, Does::skip);
  EXPECT_EQ(read_answer("p", any).does, Does::pause);
  EXPECT_EQ(read_answer("?", any).does, Does::help);
}

TEST(Practice, RefusesMarksOffTheStepOrTheScaleAndSaysWhatIsExpected) {
  const PracticeTask any = task("hybrid", 7);
  for (const char* typed : {"7.3", "10.25", "-1", "seven", ""}) {
    const Answer answer = read_answer(typed, any);
    EXPECT_EQ(answer.does, Does::nothing) << typed;
    EXPECT_EQ(answer.complaint, "found \"" + std::string(typed) +
                                    "\"; expected a mark from 0 to 10 in steps of 0.25, or b, s, p or ?");
  }
}

TEST(Practice, MakesTasksOfTheLinesThatHaveMarksWithTheMeanOfTheKeptOnes) {
  const kit::ReadSheet sheet(
      kit::reeds + "panel 2026-05-09 \"Tarn Open\"\n  element 2: 7.0 8.0 6.0 7.5 9.0\n", kit::pond());
  const Routine& routine = sheet.routine();
  const std::vector<PracticeTask> tasks = practice_tasks(routine, routine.panels.back(), 7);
  ASSERT_EQ(tasks.size(), 1u);
  EXPECT_EQ(tasks[0].line, "2");
  EXPECT_EQ(tasks[0].panel, "2026-05-09 Tarn Open");
  EXPECT_EQ(tasks[0].block, 7);
  EXPECT_NEAR(tasks[0].kept, (7.0 + 8.0 + 7.5) / 3, 1e-12);
}

// By hand: off by +0.25, -0.5, 0, +1, +0.5: mean 0.25, mean of the absolute 0.45; within a step 2 of 5,
// within two 4.
TEST(PracticeReport, TellsBiasDifferenceAndSharesOfWhatWasMarked) {
  const std::vector<PracticeTask> tasks = {task("hybrid", 7), task("hybrid", 8), task("lift", 6),
                                           task("lift", 5),   task("lift", 7.5), task("lift", 9)};
  const std::vector<Practised> done = {gave("7.25"), gave("7.5"), gave("6"),
                                       gave("6"),    gave("8"),   {std::nullopt, true}};
  const PracticeReport report = practice_report(tasks, done);
  EXPECT_EQ(report.marked, 5u);
  EXPECT_EQ(report.skipped, 1u);
  EXPECT_EQ(report.late, 1u);
  EXPECT_NEAR(*report.bias, 0.25, 1e-12);
  EXPECT_NEAR(*report.difference, 0.45, 1e-12);
  EXPECT_NEAR(*report.within_one, 0.4, 1e-12);
  EXPECT_NEAR(*report.within_two, 0.8, 1e-12);
  EXPECT_NEAR(*report.lowest, 6, 1e-12);
  EXPECT_NEAR(*report.highest, 8, 1e-12);
  EXPECT_NEAR(*report.panel_lowest, 5, 1e-12);
  EXPECT_NEAR(*report.first_half, 0.375, 1e-12);
  EXPECT_NEAR(*report.second_half, 0.5, 1e-12);
  ASSERT_EQ(report.where.size(), 2u);
  EXPECT_EQ(report.where[0].name, "lift");
  EXPECT_NEAR(report.where[0].difference, 0.5, 1e-12);
  EXPECT_EQ(report.sentences.front(), "On average you mark 0.25 higher than the panel.");
}

TEST(PracticeReport, ComparesWithEveryJudgeWhoGaveAMark) {
  PracticeTask one = task("hybrid", 7), other = task("hybrid", 8);
  one.judges = kit::marks("7.00 7.25");
  other.judges = kit::marks("8.00 -");
  const PracticeReport report = practice_report(std::vector{one, other}, std::vector{gave("7.5"), gave("8")});
  ASSERT_EQ(report.judges.size(), 2u);
  EXPECT_NEAR(report.judges[0].bias, 0.25, 1e-12);
  EXPECT_EQ(report.judges[1].tasks, 1u);
  EXPECT_NEAR(report.judges[1].bias, 0.25, 1e-12);
}

TEST(PracticeReport, SaysWhenThereIsTooLittleOrNothing) {
  const PracticeReport nothing = practice_report({}, {});
  EXPECT_EQ(nothing.warnings.front(), "0 marks: too few to say much; mark at least 5");
  EXPECT_FALSE(nothing.bias);
  const PracticeReport one = practice_report(std::vector{task("lift", 7)}, std::vector{gave("7.25")});
  EXPECT_FALSE(one.warnings.empty());
  EXPECT_TRUE(one.sentences.empty());
  EXPECT_FALSE(one.order.value);
}

TEST(PracticeDraw, DrawsTheSameTasksForTheSameSeedEachOnceAndInOrder) {
  std::vector<PracticeTask> tasks(20, task("hybrid", 7));
  const std::vector<std::size_t> drawn = draw_tasks(tasks, {}, 8, 42);
  EXPECT_EQ(drawn.size(), 8u);
  EXPECT_TRUE(std::is_sorted(drawn.begin(), drawn.end()));
  EXPECT_EQ(std::adjacent_find(drawn.begin(), drawn.end()), drawn.end());
  EXPECT_EQ(drawn, draw_tasks(tasks, {}, 8, 42));
  EXPECT_NE(drawn, draw_tasks(tasks, {}, 8, 43));
  EXPECT_EQ(draw_tasks(tasks, {}, 50, 1).size(), 20u);
}

TEST(PracticeDraw, DrawsWhereSheWasFurtherOffMoreOften) {
  std::vector<PracticeTask> tasks(10, task("hybrid", 7));
  tasks.resize(20, task("lift", 7));
  const std::vector<Weakness> known = {{"hybrid", {}, {}, 0.1}, {"lift", {}, {}, 0.9}};
  int lifts = 0;
  for (std::uint64_t seed = 0; seed < 200; ++seed) {
    for (std::size_t drawn : draw_tasks(tasks, known, 5, seed)) lifts += drawn >= 10 ? 1 : 0;
  }
  EXPECT_GT(lifts, 700);  // of 1,000; alike would be about 500
  EXPECT_LT(lifts, 1000);
}

// Nine lifts: near the panel on the low and the middle marks, a whole mark off on the high ones.
TEST(PracticeDraw, DrawsTheLevelWhereSheWasFurtherOffMoreOften) {
  std::vector<PracticeTask> tasks;
  std::vector<Practised> done;
  for (const double kept : {4.0, 4.5, 5.0, 6.0, 6.25, 6.5, 8.0, 8.5, 9.0}) {
    tasks.push_back(task("lift", kept));
    done.push_back(
        {Mark(Decimal::from_units(static_cast<std::int64_t>((kept + (kept < 8 ? 0 : 1)) * Decimal::one))),
         false});
  }
  const std::vector<Weakness> known = weaknesses(practice_report(tasks, done));
  ASSERT_EQ(known.size(), 4u);
  EXPECT_EQ(known[0].kind, "lift");
  EXPECT_NEAR(known[0].difference, 1.0 / 3, 1e-12);
  EXPECT_NEAR(*known[1].from, 8, 1e-12);
  EXPECT_FALSE(known[1].below);
  EXPECT_NEAR(known[1].difference, 1, 1e-12);
  EXPECT_NEAR(known[2].difference, 0, 1e-12);

  int high = 0;
  for (std::uint64_t seed = 0; seed < 200; ++seed) {
    for (std::size_t drawn : draw_tasks(tasks, known, 3, seed)) high += drawn >= 6 ? 1 : 0;
  }
  EXPECT_GT(high, 280);  // of 600; alike would be about 200
  EXPECT_LT(high, 600);
}

}  // namespace
}  // namespace landdrill
