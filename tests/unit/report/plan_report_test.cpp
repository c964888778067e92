#include <gtest/gtest.h>

#include "choosing_sample.h"
#include "engine/report/render.h"

namespace landdrill::report {
namespace {

using namespace report_test;

Page page_of(const ToldPlan& plan) {
  return plan_page(scene()->routine, plan, face());
}

std::string told(const ToldPlan& plan) {
  return render_text(page_of(plan), {});
}

TEST(PlanReport, MarksWhatIsToBeSwumOtherwiseThanNow) {
  const std::string text = told(told_plan());
  EXPECT_TRUE(holds(text, "> 2  Undertow, Hybrid  safer (not as written)")) << text;
  EXPECT_TRUE(holds(text, "Together the changes bring +6 points.")) << text;
}

TEST(PlanReport, SaysThatNothingIsToBeChanged) {
  ToldPlan plan = told_plan();
  plan.as_written = {0, 1};
  EXPECT_TRUE(holds(told(plan), "No change makes it better than it is.\n")) << told(plan);
  plan.plan.proved = false;
  plan.plan.gap = d("1.25");
  EXPECT_TRUE(holds(told(plan), "No change that was tried makes it better than it is.\n")) << told(plan);
}

TEST(PlanReport, SaysWhetherItIsProved) {
  ToldPlan plan = told_plan();
  EXPECT_TRUE(holds(told(plan), "Proved: no other choice within the limits does better.\n")) << told(plan);
  plan.plan.proved = false;
  plan.plan.gap = d("1.25");
  EXPECT_TRUE(
      holds(told(plan), "Not proved: time ran out. Another could be better, by 1.25 points at most."))
      << told(plan);
  plan.plan.gap = Decimal();
  EXPECT_TRUE(holds(told(plan), "Of the next best it")) << told(plan);
  plan.plan.gap.reset();
  EXPECT_TRUE(holds(told(plan), "How much better another could be is not known.")) << told(plan);
}

TEST(PlanReport, SaysThatThereIsNoOtherChoiceOnlyWhereThatIsProved) {
  ToldPlan plan = told_plan();
  plan.plan.choices.resize(1);
  EXPECT_TRUE(holds(told(plan), "There is no other choice within the limits.\n")) << told(plan);
  plan.plan.proved = false;
  plan.plan.gap = d("1.25");
  EXPECT_TRUE(holds(told(plan), "No other choice within the limits was found before it had to stop.\n"))
      << told(plan);
}

TEST(PlanReport, SaysHowManyWereTriedWhereTheyAreTooMany) {
  ToldPlan plan = told_plan();
  plan.plan.proved = false;
  plan.plan.gap = d("14.5");
  plan.plan.tried = 300;
  EXPECT_TRUE(holds(told(plan),
                    "Not proved: there are too many choices to try them all; 300 were tried. Another\ncould "
                    "be better, by 14.5 points at most."))
      << told(plan);
  plan.plan.gap = Decimal();
  EXPECT_TRUE(holds(told(plan), "them all; 300\nwere tried.")) << told(plan);
  EXPECT_FALSE(holds(told(plan), "time ran out")) << told(plan);
}

TEST(PlanReport, SaysWhatALimitCosts) {
  EXPECT_TRUE(holds(told(told_plan()), "at most 160 s  events.csv line 4   148   +0.8400         -\n"))
      << told(told_plan());
}

ToldPlan with_limit(std::string words, std::string most, std::string used) {
  ToldPlan plan = told_plan();
  PlanLimit limit;
  limit.words = std::move(words);
  limit.from = "the sheet";
  limit.most = d(most);
  limit.used = d(used);
  limit.one_more = Points();
  plan.plan.limits.push_back(limit);
  return plan;
}

TEST(PlanReport, CountsTheLimitsThatCostNothingInOneSentence) {
  ToldPlan plan = with_limit("at most 5 hybrids", "5", "5");
  EXPECT_TRUE(holds(told(plan), "The other limit costs nothing (--full tells it).\n")) << told(plan);
  EXPECT_FALSE(holds(told(plan), "at most 5 hybrids")) << told(plan);
  plan.plan.limits.push_back(plan.plan.limits.back());
  EXPECT_TRUE(holds(told(plan), "The other 2 limits cost nothing (--full lists them).\n")) << told(plan);
  TextWish full;
  full.full = true;
  EXPECT_TRUE(holds(render_text(page_of(plan), full), "\nat most 5 hybrids  you"));
}

TEST(PlanReport, SaysWhenStayingIsAsGood) {
  ToldPlan plan = told_plan();
  plan.plan.choices[0].options = plan.as_written;
  EXPECT_TRUE(holds(told(plan), "No change makes it better than it is.")) << told(plan);
  plan.plan.choices[1].behind = d("-0.05");
  plan.plan.noticed = d("0.11");
  EXPECT_TRUE(holds(told(plan), "Stay as you are: no change brings as much as 0.11 points")) << told(plan);
  EXPECT_TRUE(holds(told(plan), "better by as much as 0.11 points.")) << told(plan);
}

TEST(PlanReport, SaysHowMuchItHangsOnWhatGoesIn) {
  ToldPlan plan = told_plan();
  plan.plan.doubt.otherwise = {{WhatIf::base_likelier, 1}, {WhatIf::base_rarer, 0}};
  plan.plan.doubt.draws = 200;
  plan.plan.doubt.best = {150, 50};
  const std::string text = told(plan);
  EXPECT_TRUE(holds(text, "With every base mark a quarter rarer it would still be best.")) << text;
  EXPECT_TRUE(holds(text, "With every base mark a quarter likelier, number 2")) << text;
  EXPECT_TRUE(holds(text, "in 150 of 200 draws")) << text;
}

TEST(PlanReport, DoesNotSayOfALimitThatItCostsNothingWhenThatIsNotKnown) {
  ToldPlan plan = with_limit("at most 5 hybrids", "5", "4");
  plan.plan.limits.back().one_more.reset();
  plan.plan.proved = false;
  EXPECT_FALSE(holds(told(plan), "nothing:")) << told(plan);
  EXPECT_TRUE(
      holds(told(plan), "What one more or one less would bring was not worked out: only a proved plan can\n"))
      << told(plan);
}

TEST(PlanReport, KeepsNotesApartFromWhatCannotBeMet) {
  ToldPlan plan = told_plan();
  plan.plan.choices.clear();
  plan.plan.conflict = {"at most 1 hybrid (the sheet)"};
  plan.plan.notes = {"the sheet has no tempo"};
  EXPECT_TRUE(holds(told(plan), "  - at most 1 hybrid (yours)\nNote: the sheet has no tempo.\n"))
      << told(plan);
}

TEST(PlanReport, TellsTheNextBestByWhatIsDifferent) {
  EXPECT_TRUE(holds(told(told_plan()),
                    "   what differs  behind, points\n2  1 leave out               17\n"))
      << told(told_plan());
}

TEST(PlanReport, NamesTheLimitsThatContradictEachOther) {
  ToldPlan plan = told_plan();
  plan.plan.choices.clear();
  plan.plan.conflict = {"at least 2 elements of kind lift", "at most 1 element"};
  const std::string text = told(plan);
  EXPECT_TRUE(holds(text,
                    "No programme keeps all limits\nThese cannot be met together:\n"
                    "  - at least 2 elements of kind lift\n  - at most 1 element\n"))
      << text;
}

TEST(PlanReport, DoesNotCallASearchThatRanOutOfTimeAContradiction) {
  ToldPlan plan = told_plan();
  plan.plan.choices.clear();
  plan.plan.proved = false;
  EXPECT_TRUE(holds(told(plan), "No programme was found in time")) << told(plan);
  EXPECT_FALSE(holds(told(plan), "cannot be met together")) << told(plan);
}

TEST(PlanReport, NamesTheAim) {
  ToldPlan plan = told_plan();
  plan.aim = PlanWish::For::target;
  plan.target = "190";
  plan.plan.choices[0].reaches = ChanceBounds{0.4, 0.4, 0.4};
  EXPECT_TRUE(holds(told(plan), "For the best chance to reach 190 points")) << told(plan);
  EXPECT_TRUE(holds(told(plan), "40.0 %")) << told(plan);
}

TEST(PlanReport, StaysWithinThePage) {
  for (const int width : {60, 80, 120}) {
    TextWish wish;
    wish.width = width;
    wish.full = true;
    const std::string text = render_text(page_of(told_plan()), wish);
    EXPECT_EQ(layout_fault(text, width), "") << text;
  }
}

TEST(PlanReport, GivesEveryNumberToOtherPrograms) {
  const std::string csv = render_csv(page_of(told_plan()));
  EXPECT_TRUE(holds(csv, "programme,2,,,,100.955,,,140.5,17,")) << csv;
  EXPECT_TRUE(holds(csv, "element,2,1,Lantern,leave out,")) << csv;
  const std::string json = render_json(page_of(told_plan()));
  for (const char* piece :
       {"\"left_out\": true", "\"one_more\": \"0.84\"", "\"proved\": true", "\"seconds\": \"150.04\""})
    EXPECT_TRUE(holds(json, piece)) << piece << " in\n" << json;
}

TEST(PlanReport, TellsOtherProgramsWhatIsLeftOut) {
  ToldPlan plan = told_plan();
  plan.plan.notes = {"\"bold\" is left out"};
  EXPECT_TRUE(holds(render_csv(page_of(plan)), "\nnote,,,\"\"\"bold\"\" is left out\","))
      << render_csv(page_of(plan));
  EXPECT_TRUE(holds(render_json(page_of(plan)), "\\\"bold\\\" is left out")) << render_json(page_of(plan));
}

}  // namespace
}  // namespace landdrill::report
