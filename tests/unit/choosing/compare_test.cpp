#include "engine/choosing/compare.h"

#include <gtest/gtest.h>

#include "engine/report/sentences.h"
#include "tests/unit/kit/kit.h"

namespace landdrill {
namespace {

using kit::difficulty;
using kit::mark;
using kit::number;
using kit::points;
using kit::pond;
using kit::ReadSheet;
using kit::reeds;
using kit::replaced;

Comparison compared(const std::string& text, const ValueSet& set = pond(), std::size_t element = 0) {
  return compare(ReadSheet(text, set).routine(), element, {}, {});
}

std::string obstacles(const Comparison& comparison) {
  std::string text;
  for (const std::string& one : report::words_of(comparison.obstacles)) text += one + "\n";
  return text;
}
std::string steps(const Duel& duel) {
  std::string text;
  for (const WorthStep& step : duel.steps) text += step.label + ": " + step.change.text() + "\n";
  return text;
}
Points sum(const Duel& duel) {
  Points all;
  for (const WorthStep& step : duel.steps) all += step.change;
  return all;
}

// Ripple as written: 0.5 + 0.9 + 0.4 = 1.8; safer: 0.5 + 2 x 0.4 = 1.3.
std::string ripple(std::string_view written, std::string_view safer) {
  return replaced(reeds, "expect 7.5\n",
                  std::string(written) + "\noption \"safer\"\nparts hold x2\n" + std::string(safer) + "\n");
}
std::string shaky() {
  return ripple("expect 7.5\nslip 20%", "expect 8\nslip 2%");
}

TEST(Compare, TellsWhatEachOptionIsWorth) {
  const Comparison two = compared(shaky());
  EXPECT_EQ(two.label, "1 Ripple");
  ASSERT_EQ(two.options.size(), 2u);
  const OptionWorth& written = two.options[0];
  EXPECT_EQ(written.title, "as written");
  EXPECT_EQ(written.declared, difficulty("1.8"));
  EXPECT_EQ(written.base, difficulty("0.5"));
  EXPECT_EQ(written.chance.percent, number("20"));
  EXPECT_EQ(written.clean, points("13.5"));
  EXPECT_EQ(written.on_base, points("3.75"));
  EXPECT_EQ(written.expected, points("11.55"));  // 0.8 x 13.5 + 0.2 x 3.75
  EXPECT_EQ(written.total, points("84.45"));     // 86.4 - 13.5 + 11.55
  EXPECT_EQ(two.options[1].title, "safer");
  EXPECT_EQ(two.options[1].expected, points("10.272"));  // 0.98 x 10.4 + 0.02 x 4
  EXPECT_EQ(two.options[1].total, points("83.172"));
}

TEST(Compare, BridgesFromTheEasierOptionToTheHarderOneByCause) {
  const Comparison two = compared(shaky());
  ASSERT_EQ(two.duels.size(), 1u);
  EXPECT_EQ(two.duels[0].harder, 0u);
  EXPECT_EQ(two.duels[0].easier, 1u);
  EXPECT_EQ(two.duels[0].gain, points("1.278"));
  // At mark 8 and 2 %: 0.4 of difficulty are 0.98 x 8 x 0.4; then the mark; then the chance.
  EXPECT_EQ(steps(two.duels[0]),
            "without hold: -3.136\n"
            "with spin-a: 7.056\n"
            "mark 8.00 -> 7.50: -0.887\n"
            "base chance 2 % -> 20 %: -1.755\n");
  EXPECT_EQ(sum(two.duels[0]), two.duels[0].gain);
}

TEST(Compare, FindsTheMarkAndTheChanceAtWhichTheHarderOptionStopsPaying) {
  const Duel duel = compared(shaky()).duels.at(0);
  // A mark m is worth m x (0.8 x 1.8 + 0.2 x 0.5) = 1.54 m; 10.272 / 1.54 = 6.67013
  EXPECT_EQ(duel.lowest_mark, mark("6.75"));
  ASSERT_TRUE(duel.even_mark.has_value());
  EXPECT_EQ(kit::fraction(*duel.even_mark), "6.67013");
  // 13.5 - p x 9.75 = 10.272 at 33.107... %
  EXPECT_EQ(duel.highest_chance, number("33.1"));
}

TEST(Compare, SpreadsTheGainOverMarksAndChances) {
  const Duel duel = compared(shaky()).duels.at(0);
  ASSERT_EQ(duel.marks.size(), 7u);
  EXPECT_EQ(duel.marks.front(), mark("8.25"));
  EXPECT_EQ(duel.marks[3], mark("7.5"));
  EXPECT_EQ(duel.marks.back(), mark("6.75"));
  ASSERT_EQ(duel.chances.size(), 7u);
  EXPECT_EQ(duel.chances[4], number("20"));
  ASSERT_EQ(duel.table.size(), 49u);
  EXPECT_EQ(duel.table[3 * 7 + 4], duel.gain);
  EXPECT_EQ(duel.table[0], points("4.578"));     // 8.25 x 1.8 - 10.272
  EXPECT_EQ(duel.table[48], points("-2.5095"));  // 6.75 x (0.5 x 1.8 + 0.5 x 0.5) - 10.272
}

TEST(Compare, PutsItsOwnChanceAmongTheOthersAndKeepsMarksOnTheScale) {
  const Duel duel = compared(ripple("expect 9.8\nslip 12.5%", "expect 8")).duels.at(0);
  EXPECT_EQ(duel.chances.size(), 8u);
  EXPECT_EQ(duel.chances[3], number("12.5"));
  EXPECT_EQ(duel.marks.front(), mark("9.8"));
  EXPECT_EQ(duel.marks.size(), 4u);
}

TEST(Compare, TellsWhatEachPartAddsAndWhatDroppingOrExchangingItDoes) {
  const std::vector<PartWorth> parts = compared(shaky()).options.at(0).parts;
  ASSERT_EQ(parts.size(), 2u);
  EXPECT_EQ(parts[0].code, "spin-a");
  EXPECT_EQ(parts[0].adds, difficulty("0.9"));
  EXPECT_EQ(parts[0].dropping, points("-5.4"));  // 0.8 x 7.5 x 0.9
  EXPECT_FALSE(parts[0].easier.has_value());
  ASSERT_TRUE(parts[0].harder.has_value());
  EXPECT_EQ(parts[0].harder->code, "spin-b");
  EXPECT_EQ(parts[0].harder->declared, difficulty("2.3"));
  EXPECT_EQ(parts[0].harder->change, points("3"));  // 0.8 x 7.5 x 0.5
  EXPECT_EQ(compared(shaky()).options.at(1).parts.at(0).times, 2);
}

TEST(Compare, ExchangesAPartForTheNextOfItsFamilyByValueThatMayStandThere) {
  const ValueSet set = kit::Tables()
                           .add("parts.csv", "hold-d,holds,D,0.4,invented for tests,invented")
                           .add("parts.csv", "hold-e,holds,E,0.2,invented for tests,invented")
                           .add("parts.csv", "hold-f,holds,F,0.7,invented for tests,invented")
                           .add("parts.csv", "hold-g,holds,G,0.7,invented for tests,invented")
                           .add("parts.csv", "hold-h,holds,H,0.9,invented for tests,invented")
                           .load();
  const std::string text = replaced(reeds, "parts spin-a, hold\n", "parts spin-a, hold\n");
  const PartWorth hold = compared(text, set).options.at(0).parts.at(1);
  EXPECT_EQ(hold.easier->code, "hold-e");
  EXPECT_EQ(hold.harder->code, "hold-f");
  // A hybrid has two of one part at most.
  const PartWorth other = compared(replaced(reeds, "parts spin-a, hold\n", "parts hold, hold-f x2\n"), set)
                              .options.at(0)
                              .parts.at(0);
  EXPECT_EQ(other.harder->code, "hold-g");
}

TEST(Compare, TellsPartsTogetherWhenTheFormulaHasNoAnswerBetween) {
  // ratio: sum(parts) / count(spins), which is not there without any spin.
  const std::string text = replaced(replaced(shaky(), "element 1 hybrid", "element 1 ratio"), "parts hold x2",
                                    "parts spin-b, hold x2");
  const Comparison two = compared(text);
  // as written (0.9 + 0.4) / 1 = 1.3; safer (1.4 + 0.8) / 1 = 2.2: it is the harder one.
  ASSERT_EQ(two.duels.size(), 1u);
  EXPECT_EQ(two.duels[0].harder, 1u);
  EXPECT_EQ(steps(two.duels[0]),
            "without spin-a, with spin-b: 3\n"  // 7.5 x 0.8 x 0.5
            "with hold: 2.4\n"
            "mark 7.50 -> 8.00: 0.91\n"
            "base chance 20 % -> 2 %: 2.736\n");
  EXPECT_EQ(sum(two.duels[0]), two.duels[0].gain);
  EXPECT_FALSE(two.options[0].parts.at(0).adds.has_value());
  EXPECT_FALSE(two.options[0].parts.at(0).dropping.has_value());
  EXPECT_EQ(two.options[0].parts.at(0).harder->declared, difficulty("1.8"));
}

TEST(Compare, HasNoPartsWhereTheDifficultyIsStated) {
  const Comparison two = compared(replaced(shaky(), "parts hold x2\n", "difficulty 1.3\nparts hold x2\n"));
  EXPECT_TRUE(two.options.at(1).parts.empty());
  EXPECT_EQ(steps(two.duels.at(0)),
            "difficulty 1.30 -> 1.80: 3.92\n"
            "mark 8.00 -> 7.50: -0.887\n"
            "base chance 2 % -> 20 %: -1.755\n");
}

TEST(Compare, HasNoDuelForAnElementWithOneOption) {
  const Comparison one = compared(reeds);
  EXPECT_EQ(obstacles(one), "");
  EXPECT_EQ(one.options.size(), 1u);
  EXPECT_TRUE(one.duels.empty());
}

TEST(Compare, NamesTheOptionThatHasNoExpectedMark) {
  EXPECT_EQ(obstacles(compared(ripple("expect 7.5", ""))),
            "the option \"safer\" of element 1 has no expected mark: add `expect`\n");
  EXPECT_EQ(obstacles(compared(ripple("", "expect 8"))),
            "element 1 has no expected mark: add `expect`, or a run\n");
  EXPECT_EQ(obstacles(compared(replaced(shaky(), "expect 7\n", ""))),
            "element 2 has no expected mark: add `expect`, or a run\n");
  EXPECT_EQ(obstacles(compared(replaced(shaky(), ", performance 8.00", ""))),
            "performance has no expected mark: add it to a line `impression`\n");
}

TEST(Compare, RestsTheElementAsWrittenOnItsRunsAsTheScoreDoes) {
  const Comparison two =
      compared(ripple("", "expect 8") + "run 2026-04-14\nelement 1: lost spin-a, bent-knee small\n");
  ASSERT_EQ(obstacles(two), "");
  EXPECT_EQ(two.options[0].mark->mark, mark("9.75"));
  EXPECT_EQ(two.options[0].chance.percent, number("14.285714"));
  // 0.85714286 x 9.75 x 1.8 + 0.14285714 x 9.75 x 0.5
  EXPECT_EQ(two.options[0].expected, points("15.7393"));
}

TEST(Compare, SaysThatOptionsScoreTheSameWhereNoElementIsMarked) {
  EXPECT_EQ(obstacles(compared("routine \"Reeds\"\nevent whole\nvalues pond\nelement 1 hybrid\nparts spin-a\n"
                               "option \"b\"\nparts spin-b\nimpression choreography 7, performance 8\n")),
            "element 1 gets no mark of its own in this event: its options score the same\n");
}

TEST(Compare, ComparesAKindWithoutABaseMarkWithoutAnyChance) {
  const Comparison two = compared(
      "routine \"Reeds\"\nevent session\nvalues pond\nelement 1 figure\nparts heron\nexpect 7\n"
      "option \"b\"\nparts otter\nexpect 7.5\nelement 2 figure\nparts otter\nexpect 6\n");
  ASSERT_EQ(obstacles(two), "");
  EXPECT_FALSE(two.options[0].base.has_value());
  EXPECT_FALSE(two.options[0].clean.has_value());
  EXPECT_EQ(two.options[0].expected, points("66"));    // (7 x 2.1 + 6 x 1.4) / 3.5 x 10
  EXPECT_EQ(two.options[1].expected, points("67.5"));  // (7.5 x 1.4 + 6 x 1.4) / 2.8 x 10
  EXPECT_EQ(two.duels[0].gain, points("-1.5"));
  EXPECT_EQ(two.duels[0].chances.size(), 1u);
  EXPECT_EQ(two.duels[0].table.size(), two.duels[0].marks.size());
  EXPECT_FALSE(two.duels[0].highest_chance.has_value());
  EXPECT_EQ(two.duels[0].lowest_mark, mark("7.3"));  // 7.25 is even
  EXPECT_EQ(kit::fraction(*two.duels[0].even_mark), "7.25");
}

TEST(Compare, SaysWhenTheHarderOptionNeverOrAlwaysPays) {
  const Duel never = compared(ripple("expect 3\nslip 5%", "expect 10")).duels.at(0);
  EXPECT_FALSE(never.highest_chance.has_value());
  EXPECT_EQ(never.lowest_mark, mark("7.5"));  // 13 / (0.95 x 1.8 + 0.05 x 0.5) = 7.49...
  const Duel nowhere = compared(ripple("expect 3\nslip 60%", "expect 10")).duels.at(0);
  EXPECT_FALSE(nowhere.lowest_mark.has_value());
  EXPECT_FALSE(nowhere.even_mark.has_value());
  const Duel always = compared(ripple("expect 9\nslip 5%", "expect 0")).duels.at(0);
  EXPECT_EQ(always.highest_chance, number("100"));
  EXPECT_EQ(always.lowest_mark, mark("0"));
  EXPECT_EQ(kit::fraction(*always.even_mark), "0");
}

TEST(Compare, ComparesWhatIsCertainToGetTheBaseMark) {
  const Comparison two = compared(ripple("expect 7.5\nslip 100%", "expect 8\nslip 0%"));
  EXPECT_EQ(two.options[0].expected, points("3.75"));
  EXPECT_EQ(two.options[1].expected, points("10.4"));
  EXPECT_EQ(sum(two.duels[0]), points("-6.65"));
  EXPECT_EQ(two.duels[0].highest_chance, number("31.79"));  // (13.5 - 10.4) / 9.75
  EXPECT_FALSE(two.duels[0].lowest_mark.has_value());       // 10 x 0.5 is less than 10.4
}

TEST(Compare, KeepsItsMeaningWhenTheBaseMarkIsWorthMoreThanWhatWasDeclared) {
  const ValueSet set =
      kit::Tables()
          .replace("kinds.csv", "throw,Throw,base + sum(parts),0.8", "throw,Throw,sum(parts),5")
          .load();
  const std::string text = replaced(replaced(shaky(), "element 1 hybrid", "element 1 throw"),
                                    "parts spin-a, hold\n", "parts hold x3\n");
  // As written 1.2 and 20 %, safer 0.8 and 2 %: the more often the base mark, the better.
  const Duel duel = compared(text, set).duels.at(0);
  EXPECT_EQ(duel.highest_chance, number("100"));
  const Duel worse = compared(replaced(text, "expect 7.5\n", "expect 3\n"), set).duels.at(0);
  EXPECT_FALSE(worse.highest_chance.has_value());
}

TEST(Compare, TakesTheLikelierBaseMarkForTheHarderOneOfTwoWithEqualDifficulty) {
  const Comparison two =
      compared(replaced(replaced(shaky(), "parts hold x2", "parts spin-a, hold"), "slip 2%", "slip 30%"));
  EXPECT_EQ(two.duels.at(0).harder, 1u);
  EXPECT_EQ(steps(two.duels[0]), "mark 7.50 -> 8.00: 0.77\nbase chance 20 % -> 30 %: -1.04\n");
}

TEST(Compare, SaysWhenMarksCannotBeWeightedByDifficulty) {
  EXPECT_EQ(
      obstacles(compared("routine \"Reeds\"\nevent session\nvalues pond\n"
                         "element 1 figure\ndifficulty 0\nexpect 7\noption \"b\"\nparts otter\nexpect 7\n")),
      "every difficulty that is credited can be 0 at once, and then marks cannot be weighted by it: look "
      "at the difficulties and the base marks\n");
}

TEST(Compare, TellsHowFarTheExpectedPointsScatterWhereThereIsAForecast) {
  const ReadSheet sheet(shaky(), pond());
  EXPECT_FALSE(compare(sheet.routine(), 0, {}, {}).options[0].spread.has_value());
  // Judges who agree leave the base mark alone: sqrt(0.2 x 0.8) x (13.5 - 3.75), sqrt(0.02 x 0.98) x 6.4
  ForecastWish agreed;
  agreed.spreads.judges = agreed.spreads.day = Decimal();
  const Comparison two = compare(sheet.routine(), 0, {}, agreed);
  EXPECT_EQ(two.options[0].spread, number("3.9"));
  EXPECT_EQ(two.options[1].spread, number("0.896"));
}

TEST(Compare, TellsTheScatterOfAllElementsThatAreWeightedTogether) {
  ForecastWish agreed;
  agreed.spreads.judges = agreed.spreads.day = Decimal();
  const ReadSheet sheet(
      "routine \"Reeds\"\nevent session\nvalues pond\nelement 1 throw\ndifficulty 2\nexpect 7\nslip 20%\n"
      "element 2 throw\ndifficulty 2\nexpect 6\n",
      pond());
  // 65 as declared, (7 x 0.8 + 6 x 2) / 2.8 x 10 = 62.85714... with one base mark; sqrt(0.2 x 0.8) of what lies
  // between, 2.142857, before anything is rounded.
  EXPECT_EQ(compare(sheet.routine(), 0, {}, agreed).options[0].spread, number("0.8571"));
  EXPECT_EQ(compare(sheet.routine(), 1, {}, agreed).options[0].spread, number("0.8571"));
}

TEST(Compare, LeavesTheOtherElementsAsTheWishSays) {
  const std::string text =
      replaced(shaky(), "expect 7\n", "expect 7\noption \"short\"\nparts hold\nexpect 9\n");
  const ReadSheet sheet(text, pond());
  EXPECT_EQ(compare(sheet.routine(), 0, {{0, 1}, {}}, {}).options[0].total, points("73.65"));
  EXPECT_EQ(compare(sheet.routine(), 0, {{1, 0}, {}}, {}).options[0].total, points("84.45"));
  EXPECT_EQ(compare(sheet.routine(), 1, {}, {}).options[1].total, points("73.65"));
}

}  // namespace
}  // namespace landdrill
