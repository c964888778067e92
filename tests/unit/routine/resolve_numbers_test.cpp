// Numbers of a sheet: their scale, their step, how many judges; nothing is scored from a number in error.
#include <gtest/gtest.h>

#include "tests/unit/kit/kit.h"

namespace landdrill {
namespace {

using kit::complaints;
using kit::ReadSheet;
using kit::reeds;
using kit::replaced;

const std::string run = "run 2026-04-14\n";      // line 15
const std::string panel = "panel 2026-05-09\n";  // line 15

TEST(ResolveNumbers, ReadsADecimalCommaAsAPoint) {
  const ReadSheet sheet(replaced(reeds, "expect 7.5", "expect 7,5"), kit::pond());
  EXPECT_EQ(kit::expected_total(sheet.routine()), "86.4");
}

TEST(ResolveNumbers, RefusesANumberOfMorePlacesThanAreExact) {
  EXPECT_EQ(complaints(replaced(reeds, "expect 7.5", "expect 7.1234567")),
            "9:8 found the mark \"7.1234567\"; expected at most six decimal places [bad-number]\n");
}

TEST(ResolveNumbers, RefusesWhatCannotBeCounted) {
  EXPECT_EQ(
      complaints(replaced(reeds, "element 1 ", "element 1001 ")),
      "6:9 found the number of the element \"1001\"; expected a whole number from 1 to 1000 [bad-number]\n");
  EXPECT_EQ(complaints(replaced(reeds, "32 under", "32000 under")),
            "8:8 found the counts \"32000\"; expected a whole number from 0 to 10000 [bad-number]\n");
  EXPECT_EQ(complaints(replaced(reeds, "swimmers 1", "swimmers 0")),
            "5:10 found the number of swimmers \"0\"; expected a whole number from 1 to 100 [bad-number]\n");
  EXPECT_EQ(complaints(replaced(reeds, "hold x2", "hold x0")),
            "11:21 found x0; expected how many times, from x1 to x1000 [bad-number]\n");
}

TEST(ResolveNumbers, RefusesAMarkOutsideTheScale) {
  EXPECT_EQ(complaints(replaced(reeds, "expect 7.5", "expect 10.25")),
            "9:8 found the mark 10.25; expected a mark from 0 to 10 for execution [out-of-range]\n");
  EXPECT_EQ(complaints(replaced(reeds, "performance 8.00", "performance 80")),
            "14:43 found the mark 80; expected a mark from 0 to 10 for performance [out-of-range]\n");
  EXPECT_EQ(complaints(reeds + panel + "element 1: 7 7 11 7 7\n"),
            "16:16 found the mark 11; expected a mark from 0 to 10 for execution [out-of-range]\n");
}

TEST(ResolveNumbers, TakesTheFootAndTheTopOfTheScale) {
  EXPECT_EQ(complaints(reeds + panel + "element 1: 0 10 0 10 0\n"), "");
}

TEST(ResolveNumbers, RefusesAJudgesMarkBetweenTwoStepsAndNamesBoth) {
  EXPECT_EQ(complaints(reeds + panel + "element 1: 7 7.3 7 7 7\n"),
            "16:14 found the mark 7.3; expected a mark in steps of 0.25 for execution [off-step] "
            "hint: it lies between two steps: write 7.25 or 7.50\n");
}

TEST(ResolveNumbers, LetsTheCoachExpectAMarkBetweenTwoSteps) {
  EXPECT_EQ(complaints(replaced(reeds, "expect 7.5", "expect 7.3")), "");
}

TEST(ResolveNumbers, RefusesATempoNobodyCountsTo) {
  EXPECT_EQ(complaints(replaced(reeds, "tempo 120", "tempo 12")),
            "4:7 found the tempo 12; expected beats a minute, from 20 to 400 [out-of-range]\n");
  EXPECT_EQ(complaints(replaced(reeds, "tempo 120", "tempo 1200")),
            "4:7 found the tempo 1200; expected beats a minute, from 20 to 400 [out-of-range]\n");
}

TEST(ResolveNumbers, RefusesAChanceAboveAHundred) {
  EXPECT_EQ(complaints(replaced(reeds, "expect 7.5\n", "expect 7.5\nslip 120%\n")),
            "10:6 found a chance of 120 %; expected a chance from 0 % to 100 % [out-of-range]\n");
}

TEST(ResolveNumbers, AsksForAMarkFromEveryJudge) {
  EXPECT_EQ(complaints(reeds + panel + "element 1: 7 7 7 7\n"),
            "16:9 found 4 marks; expected 5, one for each judge of execution [wrong-judges] "
            "hint: write - for a judge who is missing\n");
  EXPECT_EQ(complaints(reeds + panel + "choreography: 7 7 7 7 7 7\n"),
            "16:1 found 6 marks; expected 5, one for each judge of choreography [wrong-judges]\n");
}

TEST(ResolveNumbers, LetsTheCoachMarkAnAspectBetweenTwoSteps) {
  EXPECT_EQ(complaints(reeds + run + "choreography: 7.3\n"), "");
}

TEST(ResolveNumbers, RefusesAMissingJudgeWhenTheRuleSaysSo) {
  EXPECT_EQ(
      complaints(
          "routine \"Reeds\"\nevent session\nvalues pond\nelement 1 figure\nparts heron\nelement 2 figure\n"
          "parts otter\npanel 2026-05-09\nelement 1: 7 - 7 7 7\n"),
      "9:9 found a missing judge (-); expected a mark from every judge of figure-mark [judge-missing] "
      "hint: panels.csv of pond says `refuse` for a missing judge\n");
}

TEST(ResolveNumbers, WantsEnoughJudgesToKeepAMark) {
  EXPECT_EQ(
      complaints(reeds + panel + "element 1: - - - - -\n"),
      "16:9 found marks from 0 of 5 judges; expected at least 1, so that a mark is kept [judge-missing]\n");
  EXPECT_EQ(complaints(reeds + panel + "element 1: 7 - - - -\n"),
            "");  // the mean of the others fills the rest
  const std::string plain =
      "routine \"Reeds\"\nevent plain\nvalues pond\nelement 1 hybrid\nparts spin-a, hold\npanel 2026-05-09\n";
  EXPECT_EQ(
      complaints(plain + "element 1: 7 7 - - -\n"),
      "7:9 found marks from 2 of 5 judges; expected at least 3, so that a mark is kept [judge-missing]\n");
  EXPECT_EQ(complaints(plain + "element 1: 7 7 7 - -\n"), "");
}

TEST(ResolveNumbers, AsksForPartsOrADifficulty) {
  EXPECT_EQ(complaints(replaced(reeds, "parts spin-a, hold\n", "")),
            "6:9 found an element with nothing that gives it a difficulty; expected a line `parts ...`, or "
            "`difficulty` "
            "with the declared value [no-difficulty]\n");
  EXPECT_EQ(complaints(replaced(reeds, "expect 7.5\n", "expect 7.5\noption \"safer\"\nexpect 8\n")),
            "10:9 found an element with nothing that gives it a difficulty; expected a line `parts ...`, or "
            "`difficulty` "
            "with the declared value [no-difficulty]\n");
  EXPECT_EQ(complaints(replaced(reeds, "parts spin-a, hold\n", "difficulty 1.8\n")), "");
}

TEST(ResolveNumbers, SaysWhyAFormulaGivesNoDifficulty) {
  const std::string ratio =
      replaced(reeds, "element 2 hybrid\nparts spin-b, hold x2", "element 2 ratio\nparts hold");
  EXPECT_EQ(complaints(ratio),
            "10:9 found no difficulty by the formula of ratio: divides by count(spins), which is 0; expected "
            "a difficulty "
            "of 0 or more [formula-fails] hint: look at the formula in kinds.csv of pond\n");
  const std::string sunk =
      replaced(reeds, "element 2 hybrid\nparts spin-b, hold x2", "element 2 sunk\nparts hold");
  EXPECT_EQ(
      complaints(sunk),
      "10:9 found no difficulty by the formula of sunk: it gives -0.6; expected a difficulty of 0 or more "
      "[formula-fails] hint: look at the formula in kinds.csv of pond\n");
}

TEST(ResolveNumbers, DoesNotBlameTheFormulaForAPartInError) {
  EXPECT_EQ(complaints(replaced(reeds, "element 2 hybrid\nparts spin-b, hold x2",
                                "element 2 ratio\nparts spin-c, hold")),
            "11:7 found the part \"spin-c\"; expected a part of pond [unknown-part] hint: the nearest are "
            "spin-a, spin-b\n");
}

TEST(ResolveNumbers, ReportsADifficultyTooLargeToStayExact) {
  EXPECT_EQ(
      complaints(replaced(reeds, "hold x2", "vast x2")),
      "10:9 found a difficulty too large to stay exact; expected one below 9000000000000 [too-large]\n");
}

constexpr std::string_view score_too_large =
    "1:10 found a score too large to stay exact; expected one below 9000000000000 [too-large] hint: look at "
    "the "
    "difficulties of the sheet and the weights of the set\n";

TEST(ResolveNumbers, RefusesASheetWhoseTotalWouldNotStayExact) {
  const std::string stated = replaced(reeds, "parts spin-a, hold\n", "difficulty 8000000000000\n");
  EXPECT_EQ(complaints(stated), score_too_large);
  EXPECT_EQ(ReadSheet(replaced(stated, "expect 7.5\n", ""), kit::pond()).complaints(), score_too_large);
  EXPECT_FALSE(ReadSheet(stated, kit::pond()).sheet().routine().has_value());
}

TEST(ResolveNumbers, RefusesAnOptionWhoseTotalWouldNotStayExact) {
  const std::string option =
      replaced(reeds, "expect 7.5\n", "expect 7.5\noption \"far\"\ndifficulty 8000000000000\n");
  EXPECT_EQ(complaints(option), score_too_large);
}

TEST(ResolveNumbers, RefusesATotalThatAFormulaMakesTooLargeFromSmallParts) {
  kit::Tables tables;
  tables.replace("kinds.csv", "hybrid,Hybrid,base + sum(parts),",
                 "hybrid,Hybrid,sum(parts) * 1000000 * 1000000,");
  const ValueSet vast = tables.load();
  EXPECT_EQ(ReadSheet(reeds, vast).complaints(), score_too_large);
}

TEST(ResolveNumbers, TakesALargeDifficultyWhoseTotalStaysExact) {
  EXPECT_EQ(ReadSheet(replaced(reeds, "parts spin-a, hold\n", "difficulty 2000\n"), kit::pond()).complaints(),
            "");
}

TEST(ResolveNumbers, ScoresNothingFromALineInError) {
  for (const std::string& wrong :
       {reeds + panel + "element 1: 7 7 7 7\n", reeds + panel + "element 1: 7 7.3 7 7 7\n",
        replaced(reeds, "expect 7.5", "expect 11"), replaced(reeds, "spin-a", "spin-x")}) {
    const ReadSheet sheet(wrong, kit::pond());
    EXPECT_EQ(sheet.sheet().messages().errors(), 1u) << wrong;
    EXPECT_FALSE(sheet.sheet().routine().has_value()) << wrong;
  }
}

}  // namespace
}  // namespace landdrill
