// The seven judges of the springboard final, as the sheet in examples has them, against what R says about the
// same marks (agreement_reference.R: t.test, sd, cor, friedman.test and psych).
#include <fstream>
#include <sstream>

#include "engine/judging/meets.h"
#include "engine/judging/panel_view.h"
#include "engine/judging/statistics/agreement.h"
#include "tests/outside/agreement_reference.h"
#include "tests/outside/published.h"

namespace landdrill {
namespace {

using published::expect_number;
using published::Numbers;

std::string sheet_of_the_final() {
  std::ifstream file(LANDDRILL_EXAMPLES "/springboard-2000.sheet");
  std::ostringstream text;
  text << file.rdbuf();
  return text.str();
}
const PanelView& view_of_the_final() {
  static const kit::ReadSheet sheet(sheet_of_the_final(), kit::shipped("springboard-2000"));
  static const PanelView view = panel_view(mark_sheets(sheet.routine(), sheet.routine().panels).at(0));
  return view;
}
const published::Reference& final_by_r() {
  return published::references().at("springboard");
}

void expect_like_r(const Statistic& found, const std::string& what) {
  SCOPED_TRACE(what);
  const Numbers& expected = final_by_r().results.at(what);
  expect_number(found.value, expected[0], "value");
  if (expected.size() < 3) return;
  expect_number(found.low, expected[1], "low");
  expect_number(found.high, expected[2], "high");
}

TEST(SpringboardPanel, HasTheMarksThatRWasGiven) {
  EXPECT_EQ(view_of_the_final().table.marks, final_by_r().marks.marks);
  EXPECT_EQ(view_of_the_final().seated.marks, final_by_r().marks.marks);
  EXPECT_EQ(view_of_the_final().lines.size(), 11u);
}

TEST(SpringboardPanel, SaysOfEachJudgeWhatRSays) {
  for (const JudgeView& judge : view_of_the_final().judges) {
    const std::string name = "judge" + std::to_string(judge.judge + 1);
    expect_like_r(judge.bias, name + "-bias");
    expect_like_r(judge.order, name + "-order");
    expect_number(judge.spread, final_by_r().results.at(name + "-spread")[0], name + " spread");
    expect_number(judge.mean, final_by_r().results.at(name + "-mean")[0], name + " mean");
    EXPECT_EQ(judge.marks, 11u);
    EXPECT_EQ(judge.missing, 0u);
  }
}

TEST(SpringboardPanel, SaysOfThePanelWhatRSays) {
  const PanelView& view = view_of_the_final();
  for (std::size_t i = 0; i < 6; ++i) {
    expect_like_r(view.intraclass.forms[i], "icc" + std::to_string(i + 1));
  }
  expect_like_r(view.nominal, "nominal");
  expect_like_r(view.ordinal, "ordinal");
  expect_like_r(view.interval, "interval");
  expect_like_r(view.concordance.w, "w");
  expect_like_r(view.pairs[0].spearman, "spearman");
  expect_like_r(view.pairs[0].kendall, "kendall");
  // Its interval is not given for so few dives.
  expect_like_r(weighted_kappa(pairs_of(view.table, 0, 1)), "kappa");
  EXPECT_FALSE(view.pairs[0].kappa.low);
  expect_like_r(view.pairs[0].limits.lower, "lower");
  expect_like_r(view.pairs[0].limits.upper, "upper");
}

// By hand: dives 1 and 6 have a highest mark alone by judge 2, dives 2, 3, 7, 9, 10 and 11 by judge 4, dives
// 5 and 8 by judge 5; a lowest mark stands alone in dive 6 only, by judge 1.
TEST(SpringboardPanel, CountsThoseMarksAsDroppedThatStandAlone) {
  std::string high, low;
  for (const JudgeView& judge : view_of_the_final().judges) {
    high += std::to_string(judge.dropped_high) + " ";
    low += std::to_string(judge.dropped_low) + " ";
  }
  EXPECT_EQ(high, "0 2 0 6 2 0 0 ");
  EXPECT_EQ(low, "1 0 0 0 0 0 0 ");
}

}  // namespace
}  // namespace landdrill
