#include <gtest/gtest.h>

#include "choosing_sample.h"
#include "engine/report/render.h"

namespace landdrill::report {
namespace {

using namespace report_test;

Page page_of(const ComparedElement& compared) {
  return compare_page(scene()->routine, face(), {compared});
}

std::string told(const ComparedElement& compared, bool full = false) {
  return render_text(page_of(compared), {.full = full});
}

TEST(ComparisonReport, SaysFirstWhichOptionGivesMoreAndByHowMuch) {
  const std::string text = told(undertow_compared());
  EXPECT_TRUE(holds(text, "2 Undertow, Hybrid\nAs written gives 5.5415 points more than \"safer\".\n"))
      << text;
}

TEST(ComparisonReport, TurnsTheVerdictRoundWhenTheEasierOneGivesMore) {
  ComparedElement compared = undertow_compared();
  compared.comparison.duels[0].gain = Points(d("-1.5"));
  EXPECT_TRUE(holds(told(compared), "\"safer\" gives 1.5 points more than as written.\n")) << told(compared);
}

TEST(ComparisonReport, LaysTheOptionsSideBySide) {
  const std::string text = told(undertow_compared());
  EXPECT_TRUE(holds(text, "as written  7.25        4.00  29        12 %   3.625  25.955      8.71\n"))
      << text;
}

TEST(ComparisonReport, ListsTheStepsThatMakeTheDifference) {
  const std::string text = told(undertow_compared());
  for (const char* piece :
       {"expected with \"safer\"", "mark 7.75 -> 7.25", "-1.9525", "expected with as written"})
    EXPECT_TRUE(holds(text, piece)) << piece << " in\n" << text;
}

TEST(ComparisonReport, SaysInOneSentenceHowFarTheHarderOneMaySlip) {
  const std::string text = told(undertow_compared());
  EXPECT_TRUE(holds(text,
                    "As written, the harder one, stays the better one down to a mark of 5.75 (7.25 is\n"
                    "expected), or up to a chance of 33.84 % for its base mark (12 % is expected),\n"
                    "with all else as it is.\n"))
      << text;
}

TEST(ComparisonReport, DoesNotNameAMarkWhereNoneHelps) {
  ComparedElement compared = undertow_compared();
  Duel& duel = compared.comparison.duels[0];
  duel.gain = Points(d("-1.5"));
  duel.lowest_mark = {};
  duel.highest_chance = d("4.5");
  EXPECT_TRUE(holds(told(compared), "with a chance of at most 4.5\n% for its base mark")) << told(compared);
  duel.highest_chance = {};
  EXPECT_TRUE(holds(told(compared), "not be the better one at any mark")) << told(compared);
}

TEST(ComparisonReport, SpeaksOfNoBaseMarkWhereTheKindHasNone) {
  ComparedElement compared = undertow_compared();
  for (OptionWorth& option : compared.comparison.options) option.base.reset();
  Duel& duel = compared.comparison.duels[0];
  duel.highest_chance = d("100");
  EXPECT_TRUE(
      holds(told(compared), "stays the better one down to a mark of 5.75 (7.25 is\nexpected), with all"))
      << told(compared);
  duel.gain = Points(d("-1.5"));
  duel.highest_chance = {};
  EXPECT_TRUE(holds(told(compared), "would be the better one from a mark of 5.75 on")) << told(compared);
  EXPECT_FALSE(holds(told(compared), "base mark,")) << told(compared);
  duel.lowest_mark = {};
  EXPECT_TRUE(holds(told(compared), "would not be the better one at any mark.\n")) << told(compared);
}

TEST(ComparisonReport, MarksTheCellOfWhatIsExpectedNow) {
  const std::string text = told(undertow_compared());
  EXPECT_TRUE(holds(text, "  mark    0 %  >12 %\n> 7.25  +8.59  +5.54\n  5.50  +1.59  -0.72\n")) << text;
}

TEST(ComparisonReport, TellsPartByPartOnlyInFull) {
  EXPECT_FALSE(holds(told(undertow_compared()), "spin-720  "));
  const std::string full = told(undertow_compared(), true);
  EXPECT_TRUE(holds(full, "Part by part: as written")) << full;
  EXPECT_TRUE(holds(full, "split-hold x2")) << full;
  EXPECT_TRUE(holds(full, "(100 - 12) % x 29")) << full;
  EXPECT_TRUE(holds(full, "stated in the sheet")) << "safer has no parts:\n" << full;
}

TEST(ComparisonReport, StaysWithinThePage) {
  for (const int width : {60, 80, 120}) {
    TextWish wish;
    wish.width = width;
    wish.full = true;
    const std::string text = render_text(page_of(undertow_compared()), wish);
    EXPECT_EQ(layout_fault(text, width), "") << text;
  }
}

TEST(ComparisonReport, GivesEveryNumberInCsv) {
  const std::string csv = render_csv(page_of(undertow_compared()));
  EXPECT_TRUE(holds(csv, "2 Undertow,option,as written,")) << csv;
  EXPECT_TRUE(holds(csv, "2 Undertow,even mark,as written,safer,,,,,,,5.7,")) << csv;
  EXPECT_TRUE(holds(csv, "2 Undertow,gain at,as written,safer,,,,,,,5.5,12,,,,-0.7235,")) << csv;
}

TEST(ComparisonReport, GivesEveryNumberInJson) {
  const std::string json = render_json(page_of(undertow_compared()));
  for (const char* piece : {"\"total_expected\": \"118.205\"", "\"lowest_mark\": \"5.75\"",
                            "\"even_mark\": \"5.7\"", "\"cause\": \"base mark\"", "\"gain\": \"-0.7235\""})
    EXPECT_TRUE(holds(json, piece)) << piece << " in\n" << json;
}

}  // namespace
}  // namespace landdrill::report
