#include "engine/score/build_up.h"

#include <gtest/gtest.h>

#include <functional>
#include <set>

#include "tests/unit/kit/kit.h"

namespace landdrill {
namespace {

using kit::number;
using kit::pond;
using kit::ReadSheet;
using kit::reeds;
using kit::replaced;

Step estimate_of(const Routine& routine, const Wish& wish = {}) {
  const Showing showing = expected(routine, wish);
  return build_up(routine, wish, showing, score(routine, showing));
}
Step recorded_of(const Routine& routine, const RecordedPanel& panel) {
  const Showing showing = recorded(routine, panel, {});
  return build_up(routine, {}, showing, score(routine, showing));
}
void visit(const Step& step, const std::function<void(const Step&)>& each) {
  each(step);
  for (const Step& input : step.inputs) visit(input, each);
}
// "Undertow 23.1000 = 7.5 x 3.85 x 0.8 (remark)"
std::string told(const Step& step) {
  std::string text = step.label + " " + step.value;
  if (!step.rule.empty()) text += " = " + step.rule;
  if (!step.remark.empty()) text += " (" + step.remark + ")";
  return text;
}
std::string told(const Step& tree, std::string_view path) {
  const Step* step = tree.at(path);
  return step == nullptr ? "no such step" : told(*step);
}

const std::string runs =
    "run 2026-04-14 \"Tuesday\"\n"
    "element 1: bent-knee small, bent-knee large x2\n"
    "element 2: lost spin-b\n"
    "sync: small x3, clear\n"
    "run 2026-04-21\n"
    "element 1: bent-knee small\n"
    "sync: small, clear, small\n"
    "penalty: overtime x2, bottom\n";
const std::string tarn_open =
    "panel 2026-05-09\n"
    "element 1: 7.25 - 7.25 7.00 7.75\n"
    "element 2 base: 6.75 7.00 6.50 7.00 6.75\n"
    "choreography: 7 7 7 7 7\n"
    "performance: 8 8 8.25 8.25 8\n"
    "sync: small x4\n"
    "penalty: bottom\n";

TEST(BuildUp, TellsHowAnElementComesToItsPoints) {
  const ReadSheet sheet(reeds, pond());
  const Step tree = estimate_of(sheet.routine());
  EXPECT_EQ(told(tree, "element 1"), "Ripple 13.5000 = (22.5 / 3) x 1.80 x 1, rounded half-up to 4 places");
  EXPECT_EQ(told(tree, "element 2"), "Hybrid 18.9000 = (21 / 3) x 2.70 x 1, rounded half-up to 4 places");
  EXPECT_EQ(told(tree, "element 1 difficulty"), "declared difficulty 1.80 = base + sum(parts) = 0.5 + 1.3");
  EXPECT_EQ(told(tree, "element 1 spin-a"), "spin-a 0.90 (Slow spin)");
  EXPECT_EQ(told(tree, "element 2 hold"), "hold x2 0.80 = 2 x 0.40 (A hold)");
  EXPECT_EQ(told(tree, "element 1 mark"), "mark 7.50 (expected on the sheet)");
  EXPECT_EQ(told(tree, "element 1 weight"), "weight 1");
  EXPECT_EQ(told(tree, "choreography"), "Choreography 30.0000 = (22.5 / 3) x 4, rounded half-up to 4 places");
  EXPECT_EQ(told(tree), "Total 86.4000 = 13.5000 + 18.9000 + 30.0000 + 24.0000");
}

TEST(BuildUp, NamesTheRowsThatAStepRestsOn) {
  const ReadSheet sheet(reeds, pond());
  const Step tree = estimate_of(sheet.routine());
  const Step* hold = tree.at("element 1 hold");
  ASSERT_NE(hold, nullptr);
  ASSERT_EQ(hold->rows.size(), 1u);
  EXPECT_EQ(hold->rows[0].table, "parts");
  EXPECT_EQ(hold->rows[0].key, "hold");
  EXPECT_EQ(hold->rows[0].line, 4u);
  EXPECT_EQ(hold->rows[0].source, "from memory");
  EXPECT_EQ(hold->rows[0].status, Status::memory);
  EXPECT_EQ(tree.at("element 1 difficulty")->rows[0].table, "kinds");
  EXPECT_EQ(tree.at("element 1")->rows[0].table, "panels");
}

TEST(BuildUp, TellsWhatBecameOfEachJudgesMark) {
  const ReadSheet sheet(reeds + tarn_open, pond());
  const Step tree = recorded_of(sheet.routine(), sheet.routine().panels[0]);
  EXPECT_EQ(told(tree, "element 1 mark"), "mark 7.25 = mean of 3 kept marks: 21.75 / 3");
  EXPECT_EQ(told(tree, "element 1 judge 1"), "judge 1 7.25");
  EXPECT_EQ(told(tree, "element 1 judge 2"), "judge 2 7.25 (missing: given the mean of the others)");
  EXPECT_EQ(told(tree, "element 1 judge 4"), "judge 4 7.00 (dropped: lowest)");
  EXPECT_EQ(told(tree, "element 1 judge 5"), "judge 5 7.75 (dropped: highest)");
  EXPECT_EQ(told(tree, "element 2 mark"), "mark 6.8333 = mean of 3 kept marks: 20.50 / 3");
  EXPECT_EQ(
      told(tree, "element 2 credited"),
      "credited difficulty 0.50 = the base mark of the kind hybrid instead of what was declared (base mark)");
  EXPECT_EQ(told(tree, "element 2 difficulty"), "declared difficulty 2.70 = base + sum(parts) = 0.5 + 2.2");
  EXPECT_EQ(told(tree), "Total 66.3167 = 13.0500 + 3.4167 + 28.0000 + 24.2500 - 0.4000 - 2.0000");
}

TEST(BuildUp, TellsWhatARunTookFromTheMark) {
  const ReadSheet sheet(reeds + runs, pond());
  const Step tree = estimate_of(sheet.routine(), {{}, {RunWish::Which::dated, "2026-04-14"}});
  EXPECT_EQ(told(tree, "element 1 mark"), "mark 8.50 (from the run of 2026-04-14)");
  EXPECT_EQ(told(tree, "element 1 run 2026-04-14"),
            "run 2026-04-14 8.50 = 10 less the deductions, in steps of 0.25 (Tuesday)");
  EXPECT_EQ(told(tree, "element 1 bent-knee"), "Bent knee, small -0.25");
  EXPECT_EQ(told(tree, "element 1 bent-knee 2"),
            "Bent knee, large x2 -1.25 (no more than 1.5 for this fault)");
  EXPECT_EQ(told(tree, "element 2 lost spin-b"), "lost spin-b  (base mark, in the run of 2026-04-14)");
  EXPECT_EQ(
      told(tree, "element 2 credited"),
      "credited difficulty 0.50 = the base mark of the kind hybrid instead of what was declared (base mark)");
}

TEST(BuildUp, TellsHowAMissingMarkWasRoundedWhereTheSetHasARoundingForIt) {
  ValueSet set = kit::Tables().load();
  for (PanelRule& rule : set.panels) rule.missing_rounding = Rounding::down;
  const ReadSheet sheet(reeds + tarn_open, set);
  EXPECT_EQ(told(recorded_of(sheet.routine(), sheet.routine().panels[0]), "element 1 judge 2"),
            "judge 2 7.25 (missing: given the mean of the others, rounded down to steps of 0.25)");
}

TEST(BuildUp, TellsHowAMarkOfRunsWasRoundedWhereTheSetHasARoundingForIt) {
  ValueSet set = kit::Tables().load();
  for (PanelRule& rule : set.panels) rule.run_rounding = Rounding::half_even;
  const ReadSheet sheet(reeds + runs, set);
  const Step tree = estimate_of(sheet.routine(), {{}, {RunWish::Which::mean, {}}});
  EXPECT_EQ(told(tree, "element 1 mark"),
            "mark 9.00 (mean of 2 runs, in steps of 0.25, rounded half-even)");  // (8.5 + 9.75) / 2 = 9.125
  EXPECT_EQ(told(tree, "element 1 run 2026-04-14"),
            "run 2026-04-14 8.50 = 10 less the deductions, in steps of 0.25, rounded half-even (Tuesday)");
}

TEST(BuildUp, TellsTheMeanOfSeveralRuns) {
  const ReadSheet sheet(reeds + runs, pond());
  const Step tree = estimate_of(sheet.routine(), {{}, {RunWish::Which::mean, {}}});
  EXPECT_EQ(told(tree, "element 1 mark"),
            "mark 9.25 (mean of 2 runs, in steps of 0.25)");  // (8.5 + 9.75) / 2 = 9.125
  EXPECT_NE(tree.at("element 1 run 2026-04-14"), nullptr);
  EXPECT_NE(tree.at("element 1 run 2026-04-21"), nullptr);
}

TEST(BuildUp, TellsSyncErrorsAndPenaltiesAndWhatARowAllowsAtMost) {
  const ReadSheet sheet(reeds + runs, pond());
  const Step tree = estimate_of(sheet.routine());
  EXPECT_EQ(told(tree, "sync"), "Sync errors -0.7000");
  EXPECT_EQ(told(tree, "sync small"), "Small difference x2 -0.2000 = 2 x 0.1");
  EXPECT_EQ(told(tree, "penalties"), "Penalties -3.0000");
  EXPECT_EQ(told(tree, "penalties overtime"), "Over time x2 -1.0000 = 1 x 1 (counted at most x1)");
}

TEST(BuildUp, SaysWhatIsMissing) {
  const ReadSheet sheet(replaced(replaced(reeds, "expect 7.5\n", ""), ", performance 8.00", ""), pond());
  const Step tree = estimate_of(sheet.routine());
  EXPECT_EQ(told(tree, "element 1"), "Ripple  (no mark yet)");
  EXPECT_EQ(told(tree, "performance"), "Performance  (no mark yet)");
  EXPECT_EQ(told(tree), "Total 48.9000 = 18.9000 + 30.0000 (not complete: marks are missing)");
}

TEST(BuildUp, TellsADifficultyThatTheSheetStates) {
  const ReadSheet sheet(replaced(reeds, "parts spin-a, hold\n", "difficulty 2.35\n"), pond());
  EXPECT_EQ(told(estimate_of(sheet.routine()), "element 1 difficulty"),
            "declared difficulty 2.35 (stated on the sheet, not from the tables)");
}

const std::string session =
    "routine \"Reeds\"\nevent session\nvalues pond\n"
    "element 1 figure \"Heron\"\nparts heron\nexpect 7\n"
    "element 2 figure\nparts otter\nexpect 8.5\n"
    "panel 2026-05-09\nelement 1: 7 7.1 7 7 9\nelement 2: 6 6.1 6.1 6.3 6\n";

TEST(BuildUp, TellsHowMarksAreWeighedByDifficulty) {
  const ReadSheet sheet(session, pond());
  const Step tree = recorded_of(sheet.routine(), sheet.routine().panels[0]);
  EXPECT_EQ(told(tree, "element 1"), "Heron  = (21.1 / 3) x 2.10, weighed with the others");
  EXPECT_EQ(told(tree, "elements"),
            "Elements together 66.4667 = ((21.1 / 3) x 2.1 + (18.2 / 3) x 1.4) / (2.1 + 1.4) x 10, rounded "
            "half-up to 4 "
            "places");
  EXPECT_EQ(told(tree), "Total 66.4667 = 66.4667");
}

TEST(BuildUp, SaysWhenNothingWasCreditedToWeighBy) {
  const ReadSheet sheet(
      replaced(replaced(session, "parts heron", "difficulty 0"), "parts otter", "difficulty 0"), pond());
  EXPECT_EQ(told(estimate_of(sheet.routine()), "elements"),
            "Elements together  = ((21 / 3) x 0 + (25.5 / 3) x 0) / (0 + 0) x 10, rounded half-up to 4 "
            "places (every "
            "credited difficulty is 0)");
}

// The laws that hold for every build-up.
class BuildUpOf : public testing::TestWithParam<std::string> {
 protected:
  // Each tree that the sheet has: with each wish for runs, and of its panels.
  void for_each_tree(const std::function<void(const Step&, const Score&)>& each) {
    const ReadSheet sheet(GetParam(), pond());
    const Routine& routine = sheet.routine();
    for (const auto which : {RunWish::Which::latest, RunWish::Which::mean, RunWish::Which::none}) {
      const Wish wish{{}, {which, {}}};
      each(estimate_of(routine, wish), score(routine, expected(routine, wish)));
    }
    for (const RecordedPanel& panel : routine.panels) {
      each(recorded_of(routine, panel), score(routine, recorded(routine, panel, {})));
    }
  }
};

TEST_P(BuildUpOf, GivesEveryElementTheValueOfTheScore) {
  for_each_tree([](const Step& tree, const Score& score) {
    for (std::size_t i = 0; i < score.elements.size(); ++i) {
      ASSERT_EQ(tree.inputs.at(i).role, Role::element);
      ASSERT_EQ(score.elements[i].has_value(), !tree.inputs[i].value.empty()) << i;
      if (!score.elements[i]) continue;
      EXPECT_EQ(number(tree.inputs[i].value), score.elements[i]->value());
    }
    EXPECT_EQ(number(tree.value), score.so_far.value());
  });
}

TEST_P(BuildUpOf, AddsUpToItsTotal) {
  for_each_tree([](const Step& tree, const Score&) {
    Decimal sum;
    for (const Step& input : tree.inputs) sum += input.value.empty() ? Decimal() : number(input.value);
    EXPECT_EQ(number(tree.value), sum);
  });
}

TEST_P(BuildUpOf, AddsUpToItsSyncErrorsAndItsPenalties) {
  for_each_tree([](const Step& tree, const Score& score) {
    for (const Role role : {Role::sync, Role::penalty}) {
      const Step* taken = tree.at(role == Role::sync ? "sync" : "penalties");
      const Points off = role == Role::sync ? score.sync : score.penalties;
      ASSERT_EQ(taken == nullptr, off == Points());
      if (taken == nullptr) continue;
      Decimal sum;
      for (const Step& input : taken->inputs) sum += number(input.value);
      EXPECT_EQ(sum, number(taken->value));
      EXPECT_EQ(sum, (Points() - off).value());
    }
  });
}

TEST_P(BuildUpOf, GivesEachStepAPathOfItsOwnByWhichItIsFound) {
  for_each_tree([](const Step& tree, const Score&) {
    std::set<std::string> paths;
    visit(tree, [&](const Step& step) {
      EXPECT_TRUE(paths.insert(step.path).second) << step.path;
      EXPECT_EQ(tree.at(step.path), &step) << step.path;
    });
    EXPECT_EQ(tree.at("element 77"), nullptr);
  });
}

TEST_P(BuildUpOf, ReadsEveryValueBackAsANumber) {
  for_each_tree([](const Step& tree, const Score&) {
    visit(tree, [&](const Step& step) {
      EXPECT_TRUE(step.value.empty() || Decimal::parse(step.value)) << step.path << " " << step.value;
    });
  });
}

INSTANTIATE_TEST_SUITE_P(
    Sheets, BuildUpOf,
    testing::Values(
        reeds, reeds + runs + tarn_open, session,
        replaced(reeds, "spin-a, hold", "hold, spin-a, hold") + runs + tarn_open,
        replaced(replaced(reeds, "expect 7.5\n", ""), ", performance 8.00", ""),
        std::string("routine \"Reeds\"\nevent mixed\nvalues pond\n"
                    "element 1 figure\nparts heron\nexpect 7\nelement 2 hybrid\nparts spin-a\nexpect 8\n"
                    "element 3 figure\nparts otter\nexpect 8.5\nimpression choreography 6\n"),
        std::string("routine \"Reeds\"\nevent plain\nvalues pond\nelement 1 hybrid\nparts spin-a\n"
                    "panel 2026-05-09\nelement 1: 7 7.5 8 8.5 -\n"),
        std::string("routine \"Reeds\"\nevent whole\nvalues pond\nelement 1 hybrid\nparts spin-a\n"
                    "impression choreography 7.5, performance 8\n")));

}  // namespace
}  // namespace landdrill
