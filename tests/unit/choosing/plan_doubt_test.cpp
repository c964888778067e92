// When staying is as good, what is given up for what, and how much a plan hangs on what goes in.
#include <gtest/gtest.h>

#include "engine/choosing/plan.h"
#include "tests/unit/kit/choosing_kit.h"
#include "tests/unit/kit/kit.h"

namespace landdrill {
namespace {

using kit::ReadSheet;
using kit::replaced;

// The safe way is worth 7.6 points less when both are shown; the other falls to its base mark one time in five.
const std::string mill =
    "routine \"Mill\"\nevent open\nvalues pond\nspread 0.4\nday 0.2\n"
    "element 1 throw\ndifficulty 3\nexpect 8\nslip 20%\noption \"safe\"\ndifficulty 2.4\nexpect 8\nslip 0%\n"
    "impression choreography 7.50, performance 8.00\n";

ValueSet with_estimates(const std::string& total, const std::string& chance) {
  return kit::Tables()
      .replace("estimates.csv", "noticed-total,0,", "noticed-total," + total + ",")
      .replace("estimates.csv", "noticed-chance,0,", "noticed-chance," + chance + ",")
      .load();
}

Plan planned(const std::string& text, const ValueSet& set, PlanWish::For aim, const char* target = "0") {
  const ReadSheet sheet(text, set);
  PlanWish how;
  how.event_limits = false;
  how.aim = aim;
  how.share = 0.1;
  how.target = kit::number(target);
  return plan(sheet.routine(), {}, how);
}

TEST(PlanDoubt, OfProgrammesThatReachATargetAlikeTheHighestExpectedTotalIsFirst) {
  const std::string safe_written =
      replaced(replaced(mill, "difficulty 3\nexpect 8\nslip 20%\n", "difficulty 2.4\nexpect 8\nslip 0%\n"),
               "option \"safe\"\ndifficulty 2.4\nexpect 8\nslip 0%\n",
               "option \"hard\"\ndifficulty 3\nexpect 8\nslip 0%\n");
  const Plan sure = planned(safe_written, kit::pond(), PlanWish::For::target, "10");
  ASSERT_EQ(sure.choices.size(), 2u);
  EXPECT_NEAR(sure.choices[1].reaches->chance, 1, 1e-9);
  EXPECT_EQ(sure.choices[0].options[0], 1u) << "the harder one has the higher expected total";
  EXPECT_GT(sure.choices[0].total, sure.choices[1].total);
}

TEST(PlanDoubt, OfEqualOnesNothingIsChanged) {
  const std::string twice = replaced(mill, "option \"safe\"\ndifficulty 2.4\nexpect 8\nslip 0%\n",
                                     "option \"same\"\ndifficulty 3\nexpect 8\nslip 20%\n");
  for (const PlanWish::For aim : {PlanWish::For::expected, PlanWish::For::quantile, PlanWish::For::target}) {
    const ReadSheet sheet(twice, kit::pond());
    PlanWish how;
    how.event_limits = false;
    how.aim = aim;
    how.target = kit::number("80");
    EXPECT_EQ(plan(sheet.routine(), {}, how).choices.at(0).options[0], 0u);
    EXPECT_EQ(plan(sheet.routine(), {{1}, {}}, how).choices.at(0).options[0], 1u)
        << "written is what is wished";
  }
}

TEST(PlanDoubt, WhatNobodyNoticesIsNoReasonForAChange) {
  // 8.6 hundredths of a point more of about 80.
  const std::string little = replaced(mill, "option \"safe\"\ndifficulty 2.4\nexpect 8\nslip 0%\n",
                                      "option \"more\"\ndifficulty 3.01\nexpect 8\nslip 20%\n");
  const Plan changed = planned(little, with_estimates("0.0001", "0"), PlanWish::For::expected);
  EXPECT_EQ(changed.choices.at(0).options[0], 1u);
  const Plan stays = planned(little, with_estimates("0.01", "0"), PlanWish::For::expected);
  ASSERT_EQ(stays.choices.size(), 2u);
  EXPECT_EQ(stays.choices[0].options[0], 0u);
  EXPECT_LT(*stays.choices[1].behind, Decimal()) << "and says that the other is a little ahead";
  EXPECT_GT(stays.noticed, Decimal() - *stays.choices[1].behind);
}

TEST(PlanDoubt, ATargetIsNotBoughtWithPointsForAChanceThatNobodyNotices) {
  // With both a target far below what is expected is all but certain; the safe one is a little surer, and much less.
  const char* const target = "65";
  const Plan strict = planned(mill, with_estimates("0", "0"), PlanWish::For::target, target);
  EXPECT_EQ(strict.choices.at(0).options[0], 1u);
  const Plan wise = planned(mill, with_estimates("0", "0.9"), PlanWish::For::target, target);
  EXPECT_EQ(wise.choices.at(0).options[0], 0u);
  EXPECT_EQ(wise.noticed, Decimal::whole(90));
}

TEST(PlanDoubt, OfChancesThatNobodyTellsApartTheHighestExpectedTotalIsTaken) {
  const std::string three =
      replaced(mill, "difficulty 3\nexpect 8\nslip 20%\n",
               "difficulty 1\nexpect 8\nslip 0%\noption \"hard\"\ndifficulty 3\nexpect 8\nslip 20%\n");
  EXPECT_EQ(planned(three, with_estimates("0", "0"), PlanWish::For::target, "65").choices.at(0).options[0],
            2u);
  EXPECT_EQ(planned(three, with_estimates("0", "0.5"), PlanWish::For::target, "65").choices.at(0).options[0],
            1u);
}

TEST(PlanDoubt, WhatIsGivenUpForATargetIsTold) {
  const Plan daring = planned(mill, with_estimates("0", "0"), PlanWish::For::target, "65");
  ASSERT_TRUE(daring.highest_total);
  EXPECT_EQ(daring.highest_total->options[0], 0u);
  EXPECT_GT(daring.highest_total->total, daring.choices.at(0).total);
  EXPECT_LT(daring.highest_total->reaches->chance, daring.choices.at(0).reaches->chance);
  EXPECT_LT(*daring.highest_total->quantile, *daring.choices.at(0).quantile) << "a bad day's total";
}

TEST(PlanDoubt, ABadDaysTotalStandsBesideTheExpectedOne) {
  const Plan plain = planned(mill, kit::pond(), PlanWish::For::expected);
  ASSERT_TRUE(plain.choices.at(0).quantile);
  EXPECT_LT(*plain.choices[0].quantile, plain.choices[0].total.value());
  const Plan without = planned(replaced(mill, "spread 0.4\n", ""), kit::pond(), PlanWish::For::expected);
  EXPECT_FALSE(without.choices.at(0).quantile) << "nothing says how far marks scatter";
}

// 3 x 8 x (1 - p) + 0.8 x 8 x p = 2.4 x 8 at p = 27.3 %; at a mark of 7.31 with 20 %.
TEST(PlanDoubt, SaysWhereAnotherTurnsBetter) {
  const Plan plain = planned(mill, kit::pond(), PlanWish::For::expected);
  ASSERT_EQ(plain.doubt.turns.size(), 1u);
  const PlanDoubt::Turn& turn = plain.doubt.turns[0];
  EXPECT_EQ(turn.expected, Mark(Decimal::whole(8)));
  EXPECT_EQ(turn.at_chance, Decimal::whole(28));
  // (0.8 x 3 + 0.2 x 0.8) m < 19.2 from m = 7.25 on, on the step of a quarter.
  EXPECT_EQ(turn.at_mark, Mark(kit::number("7.25")));
}

TEST(PlanDoubt, ATurnIsWhereThePlanItselfTurns) {
  const Plan plain = planned(mill, kit::pond(), PlanWish::For::expected);
  const PlanDoubt::Turn& turn = plain.doubt.turns.at(0);
  const auto first_with = [](const char* mark, const char* slip) {
    const std::string text = replaced(mill, "difficulty 3\nexpect 8\nslip 20%",
                                      std::string("difficulty 3\nexpect ") + mark + "\nslip " + slip + "%");
    return planned(text, kit::pond(), PlanWish::For::expected).choices.at(0).options[0];
  };
  EXPECT_EQ(first_with("7.5", "20"), 0u);
  EXPECT_EQ(first_with(turn.at_mark->text().c_str(), "20"), 1u);
  EXPECT_EQ(first_with("8", "27"), 0u);
  EXPECT_EQ(first_with("8", turn.at_chance->text().c_str()), 1u);
}

TEST(PlanDoubt, SaysWhichIsBestWithOtherInputs) {
  // A quarter more than 24 % is 30 %: the safe one.
  const std::string near = replaced(mill, "slip 20%", "slip 24%");
  const Plan plain = planned(near, kit::pond(), PlanWish::For::expected);
  ASSERT_EQ(plain.doubt.otherwise.size(), 2u) << "neither scatter nor day moves what is expected";
  EXPECT_EQ(plain.doubt.otherwise[0].what, WhatIf::base_likelier);
  EXPECT_NE(plain.doubt.otherwise[0].best, 0u);
  EXPECT_EQ(plain.doubt.otherwise[1].best, 0u);
  EXPECT_EQ(planned(near, kit::pond(), PlanWish::For::target, "80").doubt.otherwise.size(), 4u);
}

TEST(PlanDoubt, DrawsTheSameOnEveryDayAndMoreWhereItIsClearer) {
  const auto stays = [](const char* slip) {
    const Plan plain = planned(replaced(mill, "slip 20%", std::string("slip ") + slip + "%"), kit::pond(),
                               PlanWish::For::expected);
    EXPECT_EQ(plain.doubt.draws, 200u);
    std::size_t all = 0;
    for (const std::size_t one : plain.doubt.best) all += one;
    EXPECT_EQ(all, 200u);
    return plain.doubt.best.at(0);
  };
  const std::size_t close = stays("24"), clear = stays("5");
  EXPECT_EQ(close, stays("24"));
  EXPECT_GT(clear, close + 20);
  EXPECT_GT(close, 60u);
  EXPECT_LT(close, 180u);
}

TEST(PlanDoubt, DrawsForATargetToo) {
  const Plan aimed = planned(mill, kit::pond(), PlanWish::For::target, "80");
  EXPECT_EQ(aimed.doubt.draws, 40u);
  EXPECT_GT(aimed.doubt.best.at(0), 20u);
}

TEST(PlanDoubt, OfTooManyWaysForOddsTheHighestExpectedTotalIsToldAndNothingProved) {
  std::string many =
      "routine \"Many\"\nevent open\nvalues pond\nspread 0.4\nimpression choreography 7, performance 7\n";
  for (int i = 1; i <= 61; ++i)
    many += "element " + std::to_string(i) +
            " throw\ndifficulty 2\nexpect 7\noption \"more\"\ndifficulty 2.1\nexpect 7\n";
  const Plan aimed = planned(many, kit::pond(), PlanWish::For::target, "900");
  ASSERT_FALSE(aimed.choices.empty());
  EXPECT_FALSE(aimed.proved);
  EXPECT_FALSE(aimed.gap);
  EXPECT_FALSE(aimed.choices[0].reaches);
  EXPECT_EQ(aimed.choices[0].total, planned(many, kit::pond(), PlanWish::For::expected).choices.at(0).total);
  ASSERT_EQ(aimed.notes.size(), 1u);
  EXPECT_NE(aimed.notes[0].find("more than 120"), std::string::npos);
}

}  // namespace
}  // namespace landdrill
