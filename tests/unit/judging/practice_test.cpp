// An official in training against a recorded panel.
#include "engine/judging/practice.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "engine/judging/practice_compare.h"
#include "engine/judging/practice_report.h"
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
  EXPECT_NEAR(*report.bias.value, 0.25, 1e-12);
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
  EXPECT_EQ(report.sentences,
            std::vector<std::string>{"On average you marked 0.25 higher than the panel; with 5 marks "
                                     "that may be chance."});
}

// One line each at three judges, of whom the second is missing once.
std::vector<PracticeTask> judged(const std::string& meet, int lines) {
  std::vector<PracticeTask> tasks;
  for (int i = 0; i < lines; ++i) {
    PracticeTask one = task("hybrid", 7);
    one.block = meet == "Tarn Open" ? 1 : 2;
    one.panel = meet;
    one.line = std::to_string(i + 1);
    one.declared = kit::difficulty("2");
    one.judges = kit::marks(i == 0 ? "7.00 - 7.25" : "7.00 7.50 7.25");
    tasks.push_back(one);
  }
  return tasks;
}

TEST(PracticeReport, ComparesWithEveryJudgeWhoGaveMarksEnough) {
  const PracticeReport report =
      practice_report(judged("Tarn Open", 3), std::vector{gave("7.5"), gave("7.25"), gave("7.5")});
  ASSERT_EQ(report.judges.size(), 2u);  // the second judge gave two marks
  EXPECT_EQ(report.judges[1].judge, 2u);
  EXPECT_EQ(report.judges[0].bias.rows, 3u);
  EXPECT_NEAR(*report.judges[0].bias.value, 5.0 / 12, 1e-12);
  EXPECT_NEAR(report.judges[1].difference, 2.0 / 12, 1e-12);
}

TEST(PracticeReport, DoesNotTakeSeatsOfTwoMeetsForOneJudge) {
  std::vector<PracticeTask> tasks = judged("Tarn Open", 4);
  const std::vector<PracticeTask> others = judged("Osier Shield", 4);
  tasks.insert(tasks.end(), others.begin(), others.end());
  const PracticeReport report = practice_report(tasks, std::vector<Practised>(8, gave("7.5")));
  ASSERT_EQ(report.judges.size(), 6u);
  EXPECT_EQ(report.judges[0].panel, "Osier Shield");
  EXPECT_EQ(report.judges[3].panel, "Tarn Open");
  EXPECT_EQ(report.judges[0].bias.rows, 4u);
}

TEST(PracticeReport, SaysThatSheMarksHighOnceChanceDoesNotExplainIt) {
  std::vector<PracticeTask> tasks;
  std::vector<Practised> done;
  for (const double kept : {5.0, 5.5, 6.0, 6.5, 7.0, 7.5, 8.0, 8.5}) {
    tasks.push_back(task("lift", kept));
    done.push_back(gave(std::to_string(kept + (tasks.size() % 2 == 0 ? 0.5 : 0.75)).substr(0, 4).c_str()));
  }
  EXPECT_EQ(practice_report(tasks, done).sentences.front(),
            "On average you mark 0.63 higher than the panel: by 0.51 to 0.74, as far as 8 marks of one meet can tell.");
  for (PracticeTask& one : tasks) one.kept += 0.625;
  EXPECT_EQ(practice_report(tasks, done, "Ash").sentences.front(),
            "On average you mark as Ash does, within a step (0.00 higher).");
}

TEST(PracticeReport, SaysADifferenceThatNeverChangesThoughItHasNoInterval) {
  std::vector<PracticeTask> tasks(6, task("lift", 7));
  EXPECT_EQ(practice_report(tasks, std::vector<Practised>(6, gave("8"))).sentences.front(),
            "On average you mark 1.00 higher than the panel, on every line alike.");
}

TEST(PracticeReport, NamesTheKindOnWhichSheMarksOtherwise) {
  std::vector<PracticeTask> tasks;
  std::vector<Practised> done;
  for (int i = 0; i < 24; ++i) {
    tasks.push_back(task(i % 3 == 0 ? "lift" : "hybrid", 7 + i % 2 * 0.25));
    done.push_back(gave(i % 3 == 0 ? "8.25" : "7.25"));
  }
  const PracticeReport report = practice_report(tasks, done);
  ASSERT_EQ(report.sentences.size(), 3u);
  EXPECT_EQ(report.sentences[1],
            "You are further off on lift than elsewhere: 1.13 from the panel on average, elsewhere 0.13.");
  EXPECT_EQ(report.sentences[2],
            "You mark higher on lift than elsewhere: +1.13 against the panel on average, elsewhere +0.13.");
  EXPECT_TRUE(report.where.front().told);
}

TEST(PracticeReport, LeavesOutWhatSheHadMetBefore) {
  std::vector<PracticeTask> tasks(6, task("lift", 7));
  tasks[0].again = true;
  std::vector<Practised> done(6, gave("7.25"));
  done[0] = gave("9");
  const PracticeReport report = practice_report(tasks, done);
  EXPECT_EQ(report.again, 1u);
  EXPECT_NEAR(*report.bias.value, 0.25, 1e-12);
  EXPECT_EQ(report.warnings.front(),
            "1 of the 6 marks is of a line that you had met before, and been told the panel's marks: it is "
            "left out of "
            "what follows.");
}

TEST(PracticeReport, SaysThatSheRanksOtherwiseOnlyWhereTheJudgesRankAlike) {
  std::vector<PracticeTask> alike, apart;
  std::vector<Practised> done;
  for (int i = 0; i < 12; ++i) {
    const double shown = 5 + i * 0.25;
    alike.push_back(task("lift", shown));
    apart.push_back(task("lift", shown));
    for (int judge = 0; judge < 3; ++judge) {
      alike.back().judges.push_back(mark(std::to_string(shown + (judge + i) % 2 * 0.25).substr(0, 4)));
      apart.back().judges.push_back(mark(std::to_string(5 + (7 * i + 5 * judge) % 12 * 0.25).substr(0, 4)));
    }
    done.push_back(gave(std::to_string(5 + 5 * i % 12 * 0.25).substr(0, 4).c_str()));
  }
  const auto told = [&](const std::vector<PracticeTask>& tasks) {
    const std::vector<std::string> said = practice_report(tasks, done).sentences;
    return std::count(said.begin(), said.end(),
                      "You rank the elements otherwise than the panel: look at which you find better.");
  };
  EXPECT_EQ(told(alike), 1);
  EXPECT_EQ(told(apart), 0);
}

TEST(PracticeReport, SaysThatSheUsesLessOfTheScale) {
  std::vector<PracticeTask> tasks;
  std::vector<Practised> done;
  for (int i = 0; i < 10; ++i) {
    tasks.push_back(task("lift", 5 + i * 0.5));
    done.push_back(gave(i % 2 == 0 ? "7.25" : "7.5"));
  }
  EXPECT_EQ(practice_report(tasks, done).sentences.back(),
            "You use less of the scale than the panel: be bolder with high and low marks.");
}

TEST(PracticeReport, SaysWhenThereIsTooLittleOrNothing) {
  const PracticeReport nothing = practice_report({}, {});
  EXPECT_EQ(nothing.warnings.front(), "0 marks: too few to say much; mark at least 5");
  EXPECT_FALSE(nothing.bias.value);
  const PracticeReport one = practice_report(std::vector{task("lift", 7)}, std::vector{gave("7.25")});
  EXPECT_FALSE(one.warnings.empty());
  EXPECT_TRUE(one.sentences.empty());
  EXPECT_FALSE(one.order.value);
}

TEST(PracticeDraw, DrawsTheSameTasksForTheSameSeedEachOnceAndInOrder) {
  std::vector<PracticeTask> tasks(20, task("hybrid", 7));
  const std::vector<std::size_t> drawn = draw_tasks(tasks, {{}, 8, 42});
  EXPECT_EQ(drawn.size(), 8u);
  EXPECT_TRUE(std::is_sorted(drawn.begin(), drawn.end()));
  EXPECT_EQ(std::adjacent_find(drawn.begin(), drawn.end()), drawn.end());
  EXPECT_EQ(drawn, draw_tasks(tasks, {{}, 8, 42}));
  EXPECT_NE(drawn, draw_tasks(tasks, {{}, 8, 43}));
  EXPECT_EQ(draw_tasks(tasks, {{}, 50, 1}).size(), 20u);
}

TEST(PracticeDraw, DrawsWhereSheWasFurtherOffMoreOften) {
  std::vector<PracticeTask> tasks(10, task("hybrid", 7));
  tasks.resize(20, task("lift", 7));
  const std::vector<Weakness> known = {{"hybrid", {}, {}, 0.1}, {"lift", {}, {}, 0.9}};
  int lifts = 0;
  for (std::uint64_t seed = 0; seed < 200; ++seed) {
    for (std::size_t drawn : draw_tasks(tasks, {known, 5, seed})) lifts += drawn >= 10 ? 1 : 0;
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
    for (std::size_t drawn : draw_tasks(tasks, {known, 3, seed})) high += drawn >= 6 ? 1 : 0;
  }
  EXPECT_GT(high, 280);  // of 600; alike would be about 200
  EXPECT_LT(high, 600);
}

TEST(PracticeDraw, DrawsWhatSheHasMetOnlyWhenNothingElseIsLeft) {
  std::vector<PracticeTask> tasks(10, task("hybrid", 7));
  for (std::size_t i = 0; i < 6; ++i) tasks[i].again = true;
  for (std::uint64_t seed = 1; seed <= 20; ++seed) {
    const std::vector<std::size_t> four = draw_tasks(tasks, {{}, 4, seed});
    EXPECT_EQ(four, (std::vector<std::size_t>{6, 7, 8, 9}));
    const std::vector<std::size_t> six = draw_tasks(tasks, {{}, 6, seed});
    EXPECT_EQ(std::count_if(six.begin(), six.end(), [](std::size_t i) { return i < 6; }), 2);
  }
}

TEST(PracticeDraw, DrawsWholeRoutinesInTheOrderInWhichTheyAreSwum) {
  std::vector<PracticeTask> tasks(9, task("hybrid", 7));
  for (std::size_t i = 0; i < 9; ++i) tasks[i].block = static_cast<std::int64_t>(i / 3);
  const std::vector<std::size_t> drawn = draw_tasks(tasks, {{}, 2, 5, true});
  ASSERT_EQ(drawn.size(), 6u);
  EXPECT_EQ(drawn[0] % 3, 0u);
  EXPECT_EQ(drawn[2], drawn[0] + 2);
  EXPECT_EQ(draw_tasks(tasks, {{}, 7, 5, true}).size(), 9u);
}

TEST(PracticeCompare, ComparesTraineesWithThePanelAndOnCommonLinesWithEachOther) {
  TraineeMarks robin{"Robin", judged("Tarn Open", 6), std::vector<Practised>(6, gave("7.5"))};
  TraineeMarks sam{"Sam", judged("Tarn Open", 5), std::vector<Practised>(5, gave("7"))};
  sam.done[0].mark.reset();
  TraineeMarks kim{"Kim", judged("Osier Shield", 6), std::vector<Practised>(6, gave("7"))};
  const PracticeComparison all = compare_trainees(std::vector{robin, sam, kim}, "the panel");
  ASSERT_EQ(all.ones.size(), 3u);
  EXPECT_NEAR(*all.ones[0].bias.value, 0.5, 1e-12);
  ASSERT_EQ(all.pairs.size(), 1u);  // Kim marked other panels
  EXPECT_EQ(all.pairs[0].bias.rows, 4u);
  EXPECT_NEAR(*all.pairs[0].bias.value, 0.5, 1e-12);
  EXPECT_EQ(all.sentences,
            std::vector<std::string>{"Robin marks 0.50 higher than the panel on average, over 6 lines."});
  EXPECT_EQ(all.warnings, std::vector<std::string>{"Sam has 4 marks to compare: too few to say much of."});
}

TEST(PracticeCompare, SaysWhenNothingIsLargerThanChanceMakesIt) {
  TraineeMarks robin{"Robin", judged("Tarn Open", 6), std::vector<Practised>(6, gave("7"))};
  robin.done[0] = gave("7.25");
  const PracticeComparison all = compare_trainees(std::vector{robin}, "the panel");
  EXPECT_EQ(all.sentences, std::vector<std::string>{"No difference here is larger than chance makes them."});
}

}  // namespace
}  // namespace landdrill
