#include <gtest/gtest.h>

#include "choosing_sample.h"
#include "engine/report/render.h"

namespace landdrill::report {
namespace {

using namespace report_test;

std::string told(std::size_t top = 0) {
  return render_text(train_page(told_gains(), face(), top), {});
}

TEST(TrainingReport, RanksWhatToImproveByWhatItBrings) {
  const std::string text = told();
  EXPECT_TRUE(holds(text, "1  2 Undertow         chance of the base mark  12 % to 6 %  +1.5225\n")) << text;
  EXPECT_TRUE(holds(text, "2  1 Lantern          execution mark           7.5 to 7.6   +0.2300\n")) << text;
}

TEST(TrainingReport, SaysWhatBringsNothing) {
  EXPECT_TRUE(holds(told(), "Nothing to gain: Penalty: overtime, how many to expect.\n")) << told();
}

TEST(TrainingReport, SaysByHowMuchTheTotalWouldBeLower) {
  NextPoints next = told_gains();
  next.gains.back().change = Points(*Decimal::parse("-0.2489"));
  const std::string text = render_text(train_page(next, face()), {});
  EXPECT_TRUE(holds(text, "Penalty: overtime, how many to expect (-0.2489).\n")) << text;
  EXPECT_FALSE(holds(text, "Nothing to gain")) << text;
}

TEST(TrainingReport, ShowsOnlyTheFirstFewWhenAsked) {
  const std::string text = told(1);
  EXPECT_FALSE(holds(text, "1 Lantern")) << text;
  EXPECT_TRUE(holds(text, "Of 4 in all.")) << text;
}

TEST(TrainingReport, GivesEveryNumberToOtherPrograms) {
  EXPECT_EQ(render_csv(train_page(told_gains(), face(), 2)),
            "rank,what,line,before,after,points\n"
            "1,base chance,2 Undertow,12,6,1.5225\n"
            "2,execution,1 Lantern,7.5,7.6,0.2300\n");
  const std::string json = render_json(train_page(told_gains(), face()));
  EXPECT_TRUE(holds(json, "\"total_expected\": \"118.2050\"")) << json;
}

}  // namespace
}  // namespace landdrill::report
