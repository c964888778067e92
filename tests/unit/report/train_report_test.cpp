#include <gtest/gtest.h>

#include "choosing_sample.h"

namespace landdrill::report {
namespace {

using namespace report_test;

std::string told(const TrainWish& train) {
  return training_report(told_gains(), face(), train, {});
}

TEST(TrainingReport, RanksWhatToImproveByWhatItBrings) {
  const std::string text = told({});
  EXPECT_TRUE(holds(text, "1  2 Undertow         chance of the base mark  12 % to 6 %  +1.5225\n")) << text;
  EXPECT_TRUE(holds(text, "2  1 Lantern          execution mark           7.5 to 7.6   +0.2300\n")) << text;
}

TEST(TrainingReport, SaysWhatBringsNothing) {
  EXPECT_TRUE(holds(told({}), "Nothing to gain: Penalty: overtime, how many to expect.\n")) << told({});
}

TEST(TrainingReport, SaysByHowMuchTheTotalWouldBeLower) {
  NextPoints next = told_gains();
  next.gains.back().change = Points(*Decimal::parse("-0.2489"));
  const std::string text = training_report(next, face(), {}, {});
  EXPECT_TRUE(holds(text, "Penalty: overtime, how many to expect (-0.2489).\n")) << text;
  EXPECT_FALSE(holds(text, "Nothing to gain")) << text;
}

TEST(TrainingReport, ShowsOnlyTheFirstFewWhenAsked) {
  const std::string text = told({Format::text, 1});
  EXPECT_FALSE(holds(text, "1 Lantern")) << text;
  EXPECT_TRUE(holds(text, "Of 4 in all.")) << text;
}

TEST(TrainingReport, GivesEveryNumberToOtherPrograms) {
  EXPECT_EQ(told({Format::csv, 2}),
            "rank,what,line,before,after,points\n"
            "1,base chance,2 Undertow,12,6,1.5225\n"
            "2,execution,1 Lantern,7.5,7.6,0.2300\n");
  EXPECT_TRUE(holds(told({Format::json, 0}), "\"total_expected\": \"118.2050\"")) << told({Format::json, 0});
}

}  // namespace
}  // namespace landdrill::report
