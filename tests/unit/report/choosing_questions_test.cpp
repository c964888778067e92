#include <gtest/gtest.h>

#include "engine/report/pages/compare.h"
#include "engine/report/pages/forecast.h"
#include "engine/report/pages/plan.h"
#include "engine/report/pages/train.h"
#include "engine/report/render.h"
#include "tests/unit/kit/kit.h"

namespace landdrill::report {
namespace {

using kit::pond;
using kit::ReadSheet;
using kit::reeds;
using kit::replaced;

std::string with_option() {
  return replaced(reeds, "expect 7.5\n", "expect 7.5\nslip 20%\noption \"safer\"\nparts hold\nexpect 8\n");
}

Asked asked(std::string_view question,
            std::initializer_list<std::pair<std::string_view, std::string>> options) {
  Asked result(question);
  result.operands = {"reeds.sheet"};
  for (const auto& [option, value] : options) result.add(option, {value});
  return result;
}

std::string told(const ChoosingAnswer& answer) {
  if (answer) return render_text(*answer, {});
  if (!answer.error().mistake.empty()) return "mistake: " + answer.error().mistake;
  return "missing in " + answer.error().title + ": " + answer.error().missing.front();
}

std::string trained(const std::string& sheet, const Asked& question) {
  return told(train(question, ReadSheet(sheet, pond()).routine(), {}));
}

std::string compared(const std::string& sheet, const Asked& question) {
  return told(compare(question, ReadSheet(sheet, pond()).routine(), {}));
}

std::string csv_of_forecast(const std::string& sheet, const Asked& question, const std::string& other) {
  const ReadSheet ours(sheet, pond()), theirs(other, pond());
  const Diagnostics none;
  const ChoosingAnswer answer = forecast(question, {ours.routine(), none}, RivalSheet{theirs.routine(), "b"});
  return answer ? render_csv(*answer) : told(answer);
}

bool holds(const std::string& text, std::string_view piece) {
  return text.find(piece) != std::string::npos;
}

TEST(ChoosingQuestion, IsAnsweredFromItsWordsAndARoutineAlone) {
  const std::string text = trained(with_option(), asked("train", {{"--top", "1"}}));
  EXPECT_TRUE(holds(text, "Expected total, as the routine is: ")) << text;
  EXPECT_TRUE(holds(text, "Of 5 in all.")) << text;
}

TEST(ChoosingQuestion, SaysWhatWasAskedAndCannotBe) {
  EXPECT_EQ(trained(reeds, asked("train", {{"--top", "1.5"}})),
            "mistake: found --top 1.5; expected a whole number of lines");
  EXPECT_EQ(trained(reeds, asked("train", {{"--option", "3=safer"}})),
            "mistake: found --option 3=safer; the routine has no element 3");
  EXPECT_EQ(compared(with_option(), asked("compare", {{"--spread", "11"}})),
            "mistake: found --spread 11; expected a standard deviation from 0 to 10 marks, the width of the "
            "scale");
}

TEST(ChoosingQuestion, SaysWhatIsMissingInTheRoutine) {
  EXPECT_EQ(compared(reeds, asked("compare", {})),
            "missing in Reeds: no element has an option to compare with: add `option \"title\"` below the "
            "element, with its own lines: parts, expect, slip");
}

TEST(ChoosingQuestion, NamesTheElementToCompareByItsTitle) {
  Asked question = asked("compare", {{"--spread", "0.4"}});
  question.operands.push_back("ripple");
  EXPECT_TRUE(holds(compared(with_option(), question), "\n1 Ripple, Hybrid\n"))
      << compared(with_option(), question);
  question.operands.back() = "riple";
  EXPECT_TRUE(holds(compared(with_option(), question), "hint: the nearest is Ripple"))
      << compared(with_option(), question);
}

TEST(ForecastQuestion, TakesTheOtherSheetAsItIsWritten) {
  const Asked safer = asked("forecast", {{"--spread", "0.4"}, {"--option", "1=safer"}});
  const std::string csv = csv_of_forecast(with_option(), safer, reeds);
  EXPECT_TRUE(holds(csv, "\nbeat,Reeds,")) << "the other has no option \"safer\":\n" << csv;
}

TEST(ForecastQuestion, SaysWhatIsMissingInTheOtherSheet) {
  const std::string bare = replaced(replaced(reeds, "Reeds", "Bare"), "expect 7\n", "");
  EXPECT_TRUE(
      holds(csv_of_forecast(reeds, asked("forecast", {{"--spread", "0.4"}}), bare), "missing in Bare: "));
}

tl::expected<Planned, Refused> planned(const Asked& question) {
  const ReadSheet sheet(with_option(), pond());
  return plan(question, sheet.routine(), {}, {});
}

TEST(PlanQuestion, SaysWhetherAProgrammeWasFound) {
  const auto found = planned(asked("plan", {}));
  ASSERT_TRUE(found);
  EXPECT_TRUE(found->found);
  const auto none = planned(asked("plan", {{"--limit", "elements most 1"}}));
  ASSERT_TRUE(none);
  EXPECT_FALSE(none->found);
  EXPECT_TRUE(holds(render_text(none->page, {}), "No programme keeps all limits"))
      << render_text(none->page, {});
}

TEST(PlanQuestion, IsRefusedWhenAWishIsAMistake) {
  const auto refused = planned(asked("plan", {{"--keep", "9"}}));
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().mistake, "found --keep 9; the routine has no element 9");
}

TEST(PlanQuestion, LooksForTenSecondsUnlessToldOtherwise) {
  EXPECT_EQ(plan_seconds(asked("plan", {}))->text(), "10");
  EXPECT_EQ(plan_seconds(asked("plan", {{"--seconds", "0.5"}}))->text(), "0.5");
  EXPECT_EQ(plan_seconds(asked("plan", {{"--seconds", "0"}})).error(),
            "found --seconds 0; expected seconds, from 0.01 to a day");
}

}  // namespace
}  // namespace landdrill::report
