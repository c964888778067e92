#include "engine/judging/panel_view.h"

#include <gtest/gtest.h>

#include <cmath>

#include "engine/judging/meets.h"
#include "engine/judging/panel_words.h"
#include "engine/judging/steps.h"
#include "tests/unit/kit/kit.h"

namespace landdrill {
namespace {

using kit::marks;

// Five judges, one high and one low mark dropped, in quarters; a missing mark is the mean of the others.
PanelRule rule_of_five(Missing missing = Missing::mean) {
  PanelRule rule;
  rule.title = "Execution";
  rule.per_element = true;
  rule.judges = 5;
  rule.drop_high = rule.drop_low = 1;
  rule.step = kit::number("0.25");
  rule.most = kit::mark("10");
  rule.missing = missing;
  rule.missing_step = kit::number("0.25");
  return rule;
}

// A sheet of one kind, a line for each row of marks.
MarkSheet sheet_of(const PanelRule& rule, const std::vector<std::string>& rows,
                   const std::string& kind = "Lift") {
  MarkSheet sheet{"Execution", {}};
  for (const std::string& row : rows) {
    sheet.lines.push_back({std::to_string(sheet.lines.size() + 1), kind, &rule, marks(row)});
  }
  return sheet;
}

std::string all(const std::vector<std::string>& lines) {
  std::string text;
  for (const std::string& line : lines) text += line + "\n";
  return text;
}
bool says(const std::vector<std::string>& lines, const std::string& piece) {
  return all(lines).find(piece) != std::string::npos;
}

// Judge 3 is low by half a step, a little unevenly.
const std::vector<std::string> low_third = {"7 7 6.75 7 7",        "8 8 8 8 8",    "6 6 5.75 6 6",
                                            "7.5 7.5 7.5 7.5 7.5", "9 9 8.75 9 9", "5 5 4.75 5 5",
                                            "8.5 8.5 8.5 8.5 8.5"};

TEST(PanelView, ComparesAJudgeWithTheMeanOfTheOthers) {
  const PanelRule rule = rule_of_five();
  const PanelView view = panel_view(sheet_of(rule, {"7 8 9 8 8", "6 7 7 7 7"}));
  EXPECT_DOUBLE_EQ(view.judges[0].bias.value.value(), -1.125);  // of -1.25 and -1
  EXPECT_DOUBLE_EQ(view.judges[2].bias.value.value(), 0.75 * 0.5 + (7 - 6.75) * 0.5 + 0.25);
  EXPECT_DOUBLE_EQ(view.judges[0].spread.value(), std::sqrt(2 * 0.125 * 0.125));
  EXPECT_DOUBLE_EQ(view.judges[0].mean.value(), 6.5);
  EXPECT_EQ(view.judges[3].judge, 3u);
  EXPECT_EQ(view.lines, (std::vector<std::string>{"1", "2"}));
}

TEST(PanelView, ComparesWithThoseWhoAreThere) {
  const PanelRule rule = rule_of_five();
  const PanelView view = panel_view(sheet_of(rule, {"7 8 - - -"}));
  EXPECT_DOUBLE_EQ(view.judges[0].bias.value.value(), -1);
  EXPECT_EQ(view.judges[0].bias.rows, 1u);
  EXPECT_EQ(view.judges[2].bias.why_not, "no other judge marked what she marked");
  EXPECT_EQ(view.judges[2].marks, 0u);
  EXPECT_EQ(view.judges[2].missing, 1u);
  EXPECT_FALSE(view.judges[2].mean);
}

TEST(PanelView, NeverTakesAFilledMarkForAgreement) {
  const PanelRule mean = rule_of_five(), fewer = rule_of_five(Missing::fewer);
  const std::vector<std::string> rows = {"7 7.25 - 7.25 7.5", "6 6 6 6 6.5", "8 8 8.5 8 7.5"};
  const PanelView filled = panel_view(sheet_of(mean, rows)), left_out = panel_view(sheet_of(fewer, rows));
  EXPECT_FALSE(filled.table.at(0, 2));
  EXPECT_EQ(filled.filled_in, 1u);
  EXPECT_EQ(left_out.filled_in, 0u);
  EXPECT_TRUE(says(filled.warnings, "1 missing mark counts for nothing here, whatever the set fills in"));
  for (const PanelView* view : {&filled, &left_out}) {
    EXPECT_EQ(view->intraclass.forms[0].rows, 2u);
    EXPECT_TRUE(says(view->agreement_warnings, "rest on 2 of 3 elements, those that all 5 judges marked"));
  }
  EXPECT_EQ(filled.judges[2].marks, 2u);
  EXPECT_DOUBLE_EQ(*filled.judges[2].bias.value, *left_out.judges[2].bias.value);
  EXPECT_DOUBLE_EQ(*filled.interval.value, *left_out.interval.value);
  EXPECT_DOUBLE_EQ(*filled.concordance.w.value, *left_out.concordance.w.value);
}

// Three of five seats taken: the same as a panel of three.
TEST(PanelView, LeavesOutJudgesWhoMarkedNothing) {
  const PanelRule rule = rule_of_five();
  PanelRule of_three = rule_of_five();
  of_three.judges = 3;
  of_three.drop_high = of_three.drop_low = 0;
  const PanelView away = panel_view(sheet_of(rule, {"7.25 6.75 - 7.50 -", "7.25 7.50 - 7.25 -",
                                                    "6.75 6.75 - 7 -", "7 7.5 - 6.5 -", "7.75 7.5 - 7 -"}));
  const PanelView three = panel_view(
      sheet_of(of_three, {"7.25 6.75 7.50", "7.25 7.50 7.25", "6.75 6.75 7", "7 7.5 6.5", "7.75 7.5 7"}));
  EXPECT_EQ(away.intraclass.forms[1].value, three.intraclass.forms[1].value);
  EXPECT_EQ(away.concordance.w.value, three.concordance.w.value);
  EXPECT_EQ(away.seated.judges, 3u);
  EXPECT_EQ(all(away.sentences), all(three.sentences));
  EXPECT_TRUE(says(away.warnings, "Judge 5 marked nothing."));
}

TEST(PanelView, CountsAsDroppedOnlyWhatStandsAlone) {
  const PanelRule rule = rule_of_five();
  const PanelView view =
      panel_view(sheet_of(rule, {"7 7 7 7 7", "6 7 7 7 8", "6 6 7 7 8", "- 7 7.25 7.5 7.5"}));
  std::string dropped;
  for (const JudgeView& judge : view.judges) {
    dropped += std::to_string(judge.dropped_high) + "/" + std::to_string(judge.dropped_low) + " ";
  }
  EXPECT_EQ(dropped, "0/1 0/1 0/0 0/0 2/0 ");
}

TEST(PanelView, NeverCountsAFilledMarkAsDropped) {
  PanelRule rule = rule_of_five();
  rule.missing_step = kit::number("0.5");
  const PanelView view = panel_view(sheet_of(rule, {"7.25 7.25 7.25 7.25 -"}));
  EXPECT_EQ(view.judges[4].dropped_high, 0u);  // 7.5 is filled in: above all others, and dropped
  EXPECT_EQ(view.judges[0].dropped_by_chance, 0);
}

TEST(PanelView, PutsEveryPairSideBySide) {
  const PanelRule rule = rule_of_five();
  const PanelView view = panel_view(sheet_of(rule, low_third));
  ASSERT_EQ(view.pairs.size(), 10u);
  EXPECT_EQ(view.pairs[5].judge, 1u);
  EXPECT_EQ(view.pairs[5].other, 3u);
  EXPECT_DOUBLE_EQ(view.pairs[1].limits.bias.value.value(), 4 * 0.25 / 7);  // judges 1 and 3
  EXPECT_DOUBLE_EQ(view.pairs[0].spearman.value.value(), 1);
  EXPECT_EQ(view.pairs[0].kappa.value, 1);
}

// Judge 3 is low by two steps, a little unevenly.
const std::vector<std::string> lower_third = {"7 7 6.5 7 7",       "8 8 7.25 8 8", "6 6 5.5 6 6",
                                              "7.5 7.5 7 7.5 7.5", "9 9 8.5 9 9",  "5 5 4.75 5 5",
                                              "8.5 8.5 8 8.5 8.5"};

TEST(PanelView, SaysWhoIsLow) {
  const PanelRule rule = rule_of_five();
  const PanelView view = panel_view(sheet_of(rule, lower_third));
  EXPECT_EQ(view.sentences.at(0), "Judge 3 marks 2 steps lower than the others (0.24 to 0.76 marks).");
  EXPECT_TRUE(view.judges[2].high_or_low);
  EXPECT_TRUE(says(view.sentences, "The judges rank the elements all in the same order."));
}

TEST(PanelView, SaysNothingOfHalfAStepThatChanceMayMake) {
  const PanelRule rule = rule_of_five();
  const PanelView view = panel_view(sheet_of(rule, low_third));
  EXPECT_LT(*view.judges[2].bias.high, 0);  // looked at by herself she is low
  EXPECT_TRUE(says(view.sentences, "No judge marks clearly higher or lower"));
}

TEST(PanelView, SaysFirstWhoIsAlwaysHigh) {
  const PanelRule rule = rule_of_five();
  const std::vector<std::string> rows = {"7 7 6 7 8", "8 8 7 8 8.75", "6 6 4.75 6 7", "5 5 4 5 6"};
  const PanelView four =
      panel_view(sheet_of(rule, {"7 7 7.25 7 8", "8 8 8.25 8 9", "6 6 6.25 6 7", "5 5 5.25 5 6"}));
  EXPECT_EQ(four.sentences.at(0),
            "Judge 5 marks 4 steps higher than the others, just as much on all 4 elements.");
  EXPECT_EQ(four.sentences.at(1),
            "Judge 3 marks a step higher than the others, just as much on all 4 elements.");
  EXPECT_TRUE(says(four.warnings, "nothing else is said about the judges before 5"));
  EXPECT_FALSE(says(panel_view(sheet_of(rule, rows)).sentences, "Judge 5"));  // not always
}

TEST(PanelView, SaysWhoIsAlwaysHighBeforeWhoIsFurtherOff) {
  const PanelRule rule = rule_of_five();
  const PanelView view =
      panel_view(sheet_of(rule, {"7 7 5 7 8", "8 8 5.75 8 9", "6 6 4.25 6 7", "5 5 3 5 6", "7 7 5 7 8"}));
  ASSERT_EQ(view.leanings.size(), 2u);
  EXPECT_TRUE(
      says({view.sentences[0]}, "Judge 5 marks 4 steps higher than the others, just as much on all 5"));
  EXPECT_TRUE(says({view.sentences[1]}, "Judge 3 marks 9 steps lower than the others ("));
}

TEST(PanelView, TakesNobodyForLowWhereOneIsHigh) {
  PanelRule rule = rule_of_five();
  rule.judges = 3;
  rule.drop_high = rule.drop_low = 0;
  const PanelView view = panel_view(sheet_of(rule, {"7 6 6", "7.25 6.25 6.25", "8 7 7", "9 8 8", "6 5 5"}));
  EXPECT_EQ(view.leanings.size(), 1u);
  EXPECT_EQ(view.leanings[0].judge, 0u);
  EXPECT_EQ(view.judges[1].bias.value, -0.5);  // against both others
  EXPECT_EQ(view.judges[1].level.value, 0);    // against judge 3
}

TEST(PanelView, ComparesTwoJudgesWithEachOther) {
  PanelRule rule = rule_of_five();
  rule.judges = 2;
  rule.drop_high = rule.drop_low = 0;
  const PanelView apart = panel_view(sheet_of(rule, {"7 6", "7.25 6.25", "8 7", "9 8", "6 5"}));
  EXPECT_EQ(apart.sentences.at(0),
            "Judge 1 marks 4 steps higher than judge 2, just as much on all 5 elements.");
  EXPECT_EQ(apart.leanings.size(), 1u);
  EXPECT_TRUE(apart.judges[1].high_or_low);
  EXPECT_TRUE(says(panel_view(sheet_of(rule, {"7 6", "7 7.25", "8 8", "9 8.75", "5 5"})).sentences,
                   "Neither judge marks clearly higher than the other"));
}

TEST(PanelView, SaysOfTwoJudgesWhatTheirCorrelationSays) {
  PanelRule rule = rule_of_five();
  rule.judges = 2;
  rule.drop_high = rule.drop_low = 0;
  const PanelView view = panel_view(
      sheet_of(rule, {"6 7.5", "6.25 6.5", "6.5 6", "6.75 7", "7 6.25", "7.25 7.25", "7.5 8", "7.75 6.75"}));
  EXPECT_NEAR(*view.rank_correlation.value, *view.pairs[0].spearman.value, 1e-12);
  EXPECT_GT(*view.concordance.w.value, 0.55);
  EXPECT_TRUE(says(view.sentences, "rank the elements no more alike than chance could make them"));
}

TEST(PanelView, NamesWhoScattersAndWhoIsDropped) {
  const PanelRule rule = rule_of_five();
  std::vector<std::string> rows;
  for (int i = 0; i < 12; ++i)
    rows.push_back(i % 2 == 0 ? (i % 3 == 0 ? "7 7 7 7.25 9" : "7 7.25 7 7 9") : "7.25 7 7 7 5");
  const PanelView view = panel_view(sheet_of(rule, rows));
  EXPECT_TRUE(says(view.sentences, "Judge 5 scatters more around the others than chance explains: by "));
  EXPECT_TRUE(
      says(view.sentences,
           "Judge 5 is dropped more often than chance explains: 12 of 12 marks, 6 too high and 6 too low, "
           "where chance alone drops about 4."));
  EXPECT_FALSE(says(view.sentences, "marks higher"));
}

TEST(PanelView, NamesNobodyAsScatteringOrDroppedWhereChanceDoes) {
  const PanelRule rule = rule_of_five();
  const PanelView view = panel_view(sheet_of(rule, {"7 7.5 6.75 7 8", "6 6.25 6.5 5.75 6", "7 7.5 7.25 7 6.5",
                                                    "8 8.5 7.75 8 8.25", "5 5.5 4.75 5 6"}));
  EXPECT_GT(view.judges[4].dropped(), 2u);
  EXPECT_FALSE(says(view.sentences, "scatters"));
  EXPECT_FALSE(says(view.sentences, "dropped"));
}

TEST(PanelView, SaysWhatToLookAtAgainTogether) {
  const PanelRule rule = rule_of_five();
  const PanelView view = panel_view(
      sheet_of(rule, {"7 7 7 7.25 7", "8 7 8 8.5 8", "6 6 6.25 6 6", "5 5 5 5.25 5", "7 7 7.25 7.5 7"}));
  EXPECT_EQ(view.sentences.back(),
            "Look at these again together, where the marks lie furthest apart: 2 (7.00 to 8.50); 5 (7.00 to "
            "7.50).");
  EXPECT_FALSE(
      says(panel_view(sheet_of(rule, std::vector<std::string>(5, "7 7 7.5 7 7"))).sentences, "Look"));
}

TEST(PanelView, GradesTheGuideByAllThatItMayBe) {
  const PanelRule rule = rule_of_five();
  const PanelView view = panel_view(sheet_of(rule, lower_third));
  ASSERT_EQ(view.about_agreement.size(), 1u);
  EXPECT_TRUE(
      says(view.about_agreement, "One judge's marks alone are a good to excellent guide to the elements"))
      << all(view.about_agreement);
  EXPECT_FALSE(says(view.sentences, "ICC"));
}

TEST(PanelView, GivesNoIntervalOfKappaThatDoesNotHold) {
  const PanelRule rule = rule_of_five();
  std::vector<std::string> rows;
  for (int i = 0; i < 12; ++i) rows.insert(rows.end(), lower_third.begin(), lower_third.begin() + 5);
  EXPECT_FALSE(panel_view(sheet_of(rule, lower_third)).pairs[1].kappa.low);
  EXPECT_TRUE(panel_view(sheet_of(rule, rows)).pairs[1].kappa.low);
}

TEST(PanelView, SaysThatNobodyIsHighOrLow) {
  const PanelRule rule = rule_of_five();
  const PanelView view = panel_view(
      sheet_of(rule, {"7 7.25 7 7 7", "8 8 8.25 8 8", "6.25 6 6 6 6", "5 5 5 5 5.25", "9 9 9 9.25 9"}));
  EXPECT_EQ(view.sentences.at(0),
            "No judge marks clearly higher or lower than the others: what lies between them may be chance.");
}

TEST(PanelView, DoesNotTakeChanceForALeaning) {
  const PanelRule rule = rule_of_five();
  const PanelView view =
      panel_view(sheet_of(rule, {"8 7 7 7 7", "7 8 8 8 8", "7 6 6 6 6", "4 5 5 5 5", "9 7 7 7 7"}));
  EXPECT_DOUBLE_EQ(view.judges[0].bias.value.value(), 0.4);
  EXPECT_TRUE(says(view.sentences, "No judge marks clearly higher or lower than the others"));
}

TEST(PanelView, SaysNothingOfAJudgeWithFourMarks) {
  const PanelRule rule = rule_of_five(Missing::fewer);
  const PanelView view = panel_view(
      sheet_of(rule, {"8 8 8 8 7", "7 7 7 7 6", "6 6 6 6 5.25", "5 5 5 5 4", "7 7 7 7 -", "9 9 9 9 -"}));
  EXPECT_LT(view.judges[4].bias.high.value(), 0);
  EXPECT_FALSE(says(view.sentences, "Judge 5 marks"));
}

TEST(PanelView, DoesNotRepeatForAKindWhatHoldsForAll) {
  const PanelRule rule = rule_of_five();
  MarkSheet sheet = sheet_of(rule, {"7 7 7 7 6", "8 8 8 8 7", "6 6 6 6 5.25", "5 5 5 5 4", "9 9 9 9 8"});
  const MarkSheet rest =
      sheet_of(rule, {"7 7 7 7 6", "8 8 8 8 7", "6 6 6 6 5.25", "5 5 5 5 4", "9 9 9 9 8"}, "Hybrid");
  sheet.lines.insert(sheet.lines.end(), rest.lines.begin(), rest.lines.end());
  const PanelView view = panel_view(sheet);
  EXPECT_EQ(view.sentences.at(0), "Judge 5 marks 4 steps lower than the others (0.79 to 1.11 marks).");
  EXPECT_FALSE(says(view.sentences, "on lifts") || says(view.sentences, "on hybrids"));
}

TEST(PanelView, TellsLiftsFromTheRest) {
  const PanelRule rule = rule_of_five();
  MarkSheet sheet =
      sheet_of(rule, {"7 7 7 7 6", "8 8 8 8 7.25", "6 6 6 6 5", "7.5 7.5 7.5 7.5 6.75", "9 9 9 9 8"});
  const MarkSheet rest =
      sheet_of(rule, {"7 7 7 7 7", "8 8 8 8 8.25", "6 6 6 6 6", "5 5 5 5 5", "6 6 6 6 5.75"}, "Hybrid");
  sheet.lines.insert(sheet.lines.end(), rest.lines.begin(), rest.lines.end());
  const PanelView view = panel_view(sheet);
  ASSERT_EQ(view.judges[4].kinds.size(), 2u);
  EXPECT_DOUBLE_EQ(view.judges[4].kinds[0].bias.value.value(), -0.9);
  EXPECT_DOUBLE_EQ(view.judges[4].kinds[1].bias.value.value(), 0);
  EXPECT_TRUE(says(view.sentences, "Judge 5 marks 3 and a half steps lower than the others on lifts ("));
  EXPECT_EQ(view.leanings.size(), 1u);
  EXPECT_FALSE(says(view.sentences, "on hybrids"));
}

TEST(PanelView, DoesNotTellKindsApartWhereThereIsOne) {
  const PanelRule rule = rule_of_five();
  EXPECT_TRUE(panel_view(sheet_of(rule, low_third)).judges[0].kinds.empty());
}

TEST(PanelView, SaysNothingOfFourElements) {
  const PanelRule rule = rule_of_five();
  const PanelView view = panel_view(sheet_of(rule, {"7 7 6 7 7", "8 8 7.25 8 8", "6 6 5 6 6", "9 9 8 9 9"}));
  EXPECT_TRUE(view.sentences.empty());
  EXPECT_EQ(
      view.warnings.at(0),
      "Only 4 elements were marked: nothing is said about the judges before 5, since a single mark would "
      "decide it.");
  EXPECT_TRUE(view.judges[2].bias.value);  // the numbers are there
}

TEST(PanelView, WarnsWhereThereAreTooFewMarks) {
  const PanelRule rule = rule_of_five(Missing::fewer);
  std::vector<std::string> rows = low_third;
  for (std::size_t i = 0; i < 5; ++i) rows[i].back() = '-';
  rows[0] = "7 7.5 6.75 7 -";
  rows[4] = "9 9 8.75 9 -";
  rows[1] = "8 8 8 8 -";
  rows[2] = "6 6 5.75 6 -";
  rows[3] = "7.5 7.5 7.5 7.5 -";
  const PanelView view = panel_view(sheet_of(rule, rows));
  EXPECT_TRUE(says(view.warnings, "Judge 5 gave 2 marks: too few to say how she marks, 5 are needed."));
  EXPECT_TRUE(says(view.agreement_warnings, "W rests on 2 elements; 8 are wanted"));
  EXPECT_TRUE(says(view.agreement_warnings, "rest on 2 of 7 elements, those that all 5 judges marked"));
  EXPECT_TRUE(says(view.agreement_warnings, "The limits of agreement rest on 2 elements; 30 are wanted"));
  EXPECT_TRUE(view.about_agreement.empty());
}

TEST(PanelView, SaysWhyAStatisticIsMissing) {
  const PanelRule rule = rule_of_five();
  const PanelView view = panel_view(sheet_of(rule, std::vector<std::string>(6, "7 7 7 7 7")));
  EXPECT_EQ(all(view.agreement_warnings),
            "There is no intraclass correlation: all marks are equal.\n"
            "There is no Kendall's W: every judge gave one and the same mark to all rows.\n"
            "There is no Krippendorff's alpha: all marks are equal.\n");
  EXPECT_EQ(
      all(view.sentences),
      "No judge marks clearly higher or lower than the others: what lies between them may be chance.\n");
}

TEST(PanelView, StandsASingleJudge) {
  PanelRule rule = rule_of_five(Missing::refuse);
  rule.judges = 1;
  rule.drop_high = rule.drop_low = 0;
  const PanelView view = panel_view(sheet_of(rule, {"7", "8", "6", "7", "7"}));
  EXPECT_TRUE(view.pairs.empty());
  EXPECT_TRUE(view.sentences.empty());
  EXPECT_TRUE(says(view.agreement_warnings, "There is no intraclass correlation: there is only one judge."));
}

TEST(PanelView, SpeaksOfStepsToTheNearestHalf) {
  const Decimal quarter = kit::number("0.25");
  EXPECT_EQ(steps_in_words(0.06, quarter), "");
  EXPECT_EQ(steps_in_words(-0.07, quarter), "half a step");
  EXPECT_EQ(steps_in_words(0.25, quarter), "a step");
  EXPECT_EQ(steps_in_words(0.38, quarter), "a step and a half");
  EXPECT_EQ(steps_in_words(0.5, quarter), "2 steps");
  EXPECT_EQ(steps_in_words(0.6, quarter), "2 and a half steps");
}

TEST(PanelView, NamesAKindInThePlural) {
  EXPECT_EQ(on_kind("Lift"), "on lifts");
  EXPECT_EQ(on_kind("Required element"), "on required elements");
  EXPECT_EQ(on_kind("Acrobatic, group A (airborne)"), "on \"Acrobatic, group A (airborne)\"");
  EXPECT_EQ(on_kind("Sum of numerical values"), "on \"Sum of numerical values\"");
}

const std::string two_panels =
    "panel 2026-05-09 \"Tarn Open\"\nelement 1: 7 7 7 7.25 7\nelement 2: 6 6 6 6 6\nchoreography: 7 7 7 7 7\n"
    "performance: 8 8 8 8 -\n"
    "panel 2026-06-01\nelement 1: 7 7 7 7 7\n";

TEST(MarkSheets, PutTogetherWhatIsOnOneScale) {
  const kit::ReadSheet reeds(kit::reeds + two_panels, kit::pond());
  const std::vector<MarkSheet> sheets = mark_sheets(reeds.routine(), reeds.routine().panels);
  ASSERT_EQ(sheets.size(), 2u);
  EXPECT_EQ(sheets[0].title, "Execution");
  ASSERT_EQ(sheets[0].lines.size(), 3u);
  EXPECT_EQ(sheets[0].lines[0].title, "1 Ripple, 2026-05-09 Tarn Open");
  EXPECT_EQ(sheets[0].lines[1].title, "2 Hybrid, 2026-05-09 Tarn Open");
  EXPECT_EQ(sheets[0].lines[2].title, "1 Ripple, 2026-06-01");
  EXPECT_EQ(sheets[0].lines[0].kind, "Hybrid");
  EXPECT_EQ(sheets[1].title, "The whole routine");
  EXPECT_EQ(sheets[1].lines[1].title, "Performance, 2026-05-09 Tarn Open");
  EXPECT_EQ(sheets[1].lines[1].marks, marks("8 8 8 8 -"));
}

TEST(MarkSheets, KeepElementsAndTheWholeRoutineApart) {
  const kit::ReadSheet reeds(
      kit::reeds + "panel 2026-05-01\nchoreography: 7 7 7 7 7\npanel 2026-05-09\nelement 1: 7 7 7 7 7\n",
      kit::pond());
  const std::vector<MarkSheet> sheets = mark_sheets(reeds.routine(), reeds.routine().panels);
  ASSERT_EQ(sheets.size(), 2u);
  EXPECT_EQ(sheets[0].title, "Choreography");
}

TEST(MarkSheets, LeaveTheDateOutOfASinglePanel) {
  const kit::ReadSheet reeds(kit::reeds + two_panels, kit::pond());
  const std::vector<MarkSheet> sheets =
      mark_sheets(reeds.routine(), std::span(reeds.routine().panels).last(1));
  ASSERT_EQ(sheets.size(), 1u);
  const PanelView view = panel_view(sheets[0]);
  EXPECT_EQ(view.lines, (std::vector<std::string>{"1 Ripple"}));
  EXPECT_TRUE(view.of_elements);
  EXPECT_EQ(view.step.text(), "0.25");
}

}  // namespace
}  // namespace landdrill
