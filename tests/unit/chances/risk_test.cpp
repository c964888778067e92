#include "engine/chances/risk.h"

#include <gtest/gtest.h>

#include "tests/unit/kit/kit.h"

namespace landdrill {
namespace {

using kit::number;
using kit::points;
using kit::pond;
using kit::ReadSheet;
using kit::reeds;
using kit::replaced;

const Wish averaged{{}, {RunWish::Which::mean, {}}};

std::string chance(const std::string& text, std::size_t element, const Wish& wish = {}) {
  const ReadSheet sheet(text, pond());
  const BaseChance found = base_chance(sheet.routine(), element, wish);
  const char* from[] = {"nobody", "sheet", "set"};
  return std::string(from[static_cast<int>(found.from)]) + " " + found.percent.text();
}

std::string total(const Routine& routine, const Wish& wish = {}) {
  const std::optional<Exact> found = expected_total(routine, risked(routine, wish));
  return found ? kit::fraction(*found) : "none";
}
std::string total(const std::string& text, const Wish& wish = {}) {
  return total(ReadSheet(text, pond()).routine(), wish);
}

std::string with_slip(std::string_view percent) {
  return replaced(reeds, "expect 7.5\n", "expect 7.5\nslip " + std::string(percent) + "%\n");
}

const std::string runs =
    "run 2026-04-07\nelement 1: splash small\n"
    "run 2026-04-14\nelement 1: lost spin-a\nelement 2: splash small\n"
    "run 2026-04-21\nelement 1: splash small\n";

const std::string session =
    "routine \"Reeds\"\nevent mixed\nvalues pond\n"
    "element 1 throw\ndifficulty 2.1\nexpect 7\nslip 20%\n"
    "element 2 lift\ndifficulty 1.4\nexpect 8.5\n"
    "impression choreography 6\n";

TEST(Risk, TakesTheChanceFromTheSlipOfTheOption) {
  EXPECT_EQ(chance(with_slip("12.5"), 0), "sheet 12.5");
  EXPECT_EQ(chance(with_slip("0"), 0), "sheet 0");
}

TEST(Risk, TakesTheChanceOfTheKindWhereTheSheetSaysNone) {
  ValueSet with = kit::Tables().load();
  for (Kind& kind : with.kinds.rows()) kind.slip = number("7");
  const ReadSheet sheet(reeds, with);
  EXPECT_EQ(base_chance(sheet.routine(), 0, {}).percent.text(), "7");
  EXPECT_EQ(base_chance(sheet.routine(), 0, {}).from, BaseChance::From::set);
}

// The usual weight: what the coach says counts as six runs.
TEST(Risk, DrawsTheRunsTowardTheSlipWhileTheyAreFew) {
  EXPECT_EQ(chance(with_slip("12") + runs, 0), "sheet 19.111111");  // (6 x 12 + 100) / (6 + 3)
  EXPECT_EQ(chance(with_slip("12") + "run 2026-04-07\nelement 1: clean\n", 0), "sheet 10.285714");
  EXPECT_EQ(chance(reeds + runs, 0), "nobody 11.111111");  // toward nothing: (6 x 0 + 100) / (6 + 3)
}

TEST(Risk, CountsAllRunsWhicheverTheMarkIsFrom) {
  EXPECT_EQ(chance(reeds + runs, 0, averaged), "nobody 11.111111");
  EXPECT_EQ(chance(reeds + runs, 0, {{}, {RunWish::Which::dated, "2026-04-14"}}), "nobody 11.111111");
  EXPECT_EQ(chance(reeds + runs, 0, {{}, {RunWish::Which::none, {}}}), "nobody 0");
  EXPECT_EQ(chance(reeds + runs, 0, {{}, {RunWish::Which::latest, {}, "2026-04-15"}}), "nobody 12.5");
  const ReadSheet sheet(reeds + runs, pond());
  EXPECT_EQ(base_chance(sheet.routine(), 0, {}).runs.base, 1u);
  EXPECT_EQ(base_chance(sheet.routine(), 0, {}).runs.all, 3u);
}

// With enough runs the coach's word no longer matters, and never is it drawn to one half.
TEST(Risk, ComesToTheShareOfTheRunsWhenThereAreMany) {
  std::string many = with_slip("40");
  for (int i = 0; i < 600; ++i) many += "run 2026-04-14 \"" + std::to_string(i) + "\"\nelement 1: clean\n";
  EXPECT_EQ(chance(many, 0), "sheet 0.39604");  // 240 / 606
}

TEST(Risk, TakesNoChanceFromARunForAnotherOptionThanTheOneThatWasSwum) {
  const std::string text =
      replaced(reeds, "expect 7.5\n", "expect 7.5\noption \"safer\"\nparts hold x2\nexpect 8\n") +
      "run 2026-04-14\nelement 1: lost spin-a\n";
  EXPECT_EQ(chance(text, 0), "nobody 14.285714");
  EXPECT_EQ(chance(text, 0, {{1}, {}}), "nobody 0");
}

TEST(Risk, HasNoChanceForAnElementThatTheEventDoesNotMark) {
  EXPECT_EQ(chance("routine \"Reeds\"\nevent whole\nvalues pond\nelement 1 hybrid\nparts spin-a\nslip 10%\n"
                   "impression choreography 7.5, performance 8\n",
                   0),
            "nobody 0");
}

TEST(Risk, CreditsEveryElementAsDeclaredAndPutsTheChanceBeside) {
  const ReadSheet sheet(reeds + "run 2026-04-14\nelement 2: lost spin-b\nsync: clear\n", pond());
  const Risked found = risked(sheet.routine(), {});
  EXPECT_FALSE(found.showing.elements[1].base);
  EXPECT_EQ(found.showing.elements[1].credited.text(), "2.7");
  EXPECT_EQ(found.chances[1].percent.text(), "14.285714");  // 1 of 1 run, beside no `slip`
  EXPECT_TRUE(found.showing.sync.empty());
  EXPECT_EQ(found.errors.size(), 1u);
}

TEST(Risk, WeighsDeclaredAndBasePointsByTheChance) {
  const ReadSheet sheet(with_slip("12"), pond());
  const auto found = risked_points(sheet.routine(), risked(sheet.routine(), {}), 0);
  ASSERT_TRUE(found.has_value());
  EXPECT_EQ(found->declared, points("13.5"));
  EXPECT_EQ(found->base, points("3.75"));              // 7.5 x 0.5
  EXPECT_EQ(kit::fraction(found->expected), "12.33");  // 0.88 x 13.5 + 0.12 x 3.75
  EXPECT_EQ(total(with_slip("12")), "85.23");          // 86.4 - 0.12 x 9.75
  EXPECT_EQ(total(with_slip("100")), "76.65");         // 86.4 - 9.75
  EXPECT_EQ(total(with_slip("0")), "86.4");
}

TEST(Risk, ExpectsTheScoreWhenNothingIsUncertain) {
  for (const std::string& text : {reeds, reeds + "run 2026-04-14\nelement 2: 6.5\n",
                                  reeds + "run 2026-04-14\nsync: small x4, clear\npenalty: overtime x3\n"}) {
    EXPECT_EQ(total(text), kit::expected_total(ReadSheet(text, pond()).routine())) << text;
  }
}

TEST(Risk, HasNoExpectedTotalWhileAMarkIsMissing) {
  EXPECT_EQ(total(replaced(reeds, "expect 7.5\n", "")), "none");
  EXPECT_EQ(total(replaced(reeds, ", performance 8.00", "")), "none");
}

TEST(Risk, LeavesMarksAloneWhereTheEventLooksAtNoDifficulty) {
  EXPECT_EQ(total("routine \"Reeds\"\nevent plain\nvalues pond\nelement 1 hybrid\nparts spin-a\n"
                  "expect 7.5\nslip 30%\n"),
            "45");  // 3 kept marks x 7.5 x 2
}

TEST(Risk, HasNoBasePointsForAKindWithoutABaseMark) {
  const ReadSheet sheet(
      "routine \"Reeds\"\nevent open\nvalues pond\nelement 1 figure\nparts heron\nexpect 7.5\n"
      "impression choreography 7, performance 8\n",
      pond());
  const auto found = risked_points(sheet.routine(), risked(sheet.routine(), {}), 0);
  ASSERT_TRUE(found.has_value());
  EXPECT_FALSE(found->base.has_value());
  EXPECT_EQ(kit::fraction(found->expected), "15.75");
}

TEST(Risk, AveragesSyncErrorsAndPenaltiesOfTheRunsWhenRunsAreAveraged) {
  const std::string text = reeds +
                           "run 2026-04-07\nsync: small x2, clear\npenalty: overtime x3\n"
                           "run 2026-04-14\nsync: clear x2\npenalty: none\n"
                           "run 2026-04-21\nelement 1: splash small\n";
  const ReadSheet sheet(text, pond());
  const auto errors = expected_errors(sheet.routine(), averaged.runs);
  ASSERT_EQ(errors.size(), 2u);
  EXPECT_EQ(errors[0].sync->code + " " + errors[0].number.text(), "small 1");
  EXPECT_EQ(errors[1].sync->code + " " + errors[1].number.text(), "clear 1.5");
  const auto penalties = expected_penalties(sheet.routine(), averaged.runs);
  ASSERT_EQ(penalties.size(), 1u);
  EXPECT_EQ(penalties[0].number.text(), "0.5");  // counted once at most
  EXPECT_EQ(expected_errors(sheet.routine(), {}).size(), 1u);
  EXPECT_TRUE(expected_penalties(sheet.routine(), {}).empty());
}

TEST(Risk, TakesTheErrorsAndRisksOfTheSheetBeforeThoseOfTheRuns) {
  const ReadSheet sheet(reeds + "run 2026-04-07\nsync: small x2\npenalty: bottom\n", pond());
  Routine routine = sheet.routine();
  routine.errors = {{routine.set->sync.find("clear"), number("2.5")}};
  routine.risks = {{routine.set->penalties.find("overtime"), number("10")},
                   {routine.set->penalties.find("bottom"), number("2")}};
  EXPECT_EQ(total(routine), "85.01");  // 86.4 - 2.5 x 0.5 - 0.1 x 1 - 0.02 x 2
}

TEST(Risk, TakesEveryWayInWhichBaseMarksCanFallWhereTheEventWeighsTogether) {
  const ValueSet set =
      kit::Tables()
          .replace("kinds.csv", "throw,Throw,base + sum(parts),0.8,,,,2,half-up,throw,",
                   "throw,Throw,base + sum(parts),0.8,,,,2,half-up,,")
          .replace("panels.csv",
                   "mixed,execution,,Execution,element,3,0,0,mean,0.1,0,10,times-difficulty,1.1",
                   "mixed,execution,,Execution,element,3,0,0,mean,0.1,0,10,weighted,4")
          .replace("panels.csv", "mixed,execution,figure,Figure marks,element,3,0,0,mean,0.1,0,10,weighted",
                   "mixed,execution,figure,Figure marks,element,3,0,0,mean,0.1,0,10,times-difficulty")
          .load();
  const ReadSheet sheet(session, set);
  // Declared: (7 x 2.1 + 8.5 x 1.4) / 3.5 x 4 = 30.4; base: (7 x 0.8 + 8.5 x 1.4) / 2.2 x 4 = 31.8182.
  // 0.8 x 30.4 + 0.2 x 31.8182 + 18
  EXPECT_EQ(total(sheet.routine()), "48.68364");
}

TEST(Risk, HasNoExpectedTotalWhenAllCreditedDifficultiesCanBeZero) {
  const ValueSet set =
      kit::Tables()
          .replace("kinds.csv", "throw,Throw,base + sum(parts),0.8,", "throw,Throw,base + sum(parts),0,")
          .replace("panels.csv",
                   "mixed,execution,,Execution,element,3,0,0,mean,0.1,0,10,times-difficulty,1.1",
                   "mixed,execution,,Execution,element,3,0,0,mean,0.1,0,10,weighted,4")
          .replace("panels.csv", "mixed,execution,figure,Figure marks,element,3,0,0,mean,0.1,0,10,weighted",
                   "mixed,execution,figure,Figure marks,element,3,0,0,mean,0.1,0,10,times-difficulty")
          .load();
  const std::string text =
      replaced(session, "element 2 lift\ndifficulty 1.4", "element 2 lift\ndifficulty 0");
  EXPECT_EQ(total(ReadSheet(text, set).routine()), "none");
  EXPECT_NE(total(ReadSheet(replaced(text, "slip 20%", "slip 0%"), set).routine()), "none");
}

}  // namespace
}  // namespace landdrill
