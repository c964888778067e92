#include "engine/report/figures.h"

#include <gtest/gtest.h>

namespace landdrill::report {
namespace {

TEST(ReportFigures, AreThoseOfTheSentences) {
  EXPECT_EQ(figure(7.125), "7.13");
  EXPECT_EQ(signed_figure(-0.125), "-0.13");
  EXPECT_EQ(signed_figure(0.125), "+0.13");
  EXPECT_EQ(signed_figure(-0.001), "0.00");
  EXPECT_EQ(interval(-0.125, 7.125), "-0.13 to 7.13");
}

TEST(ReportFigures, OfNothingAreEmpty) {
  EXPECT_EQ(figure(std::nullopt), "");
  EXPECT_EQ(signed_figure(std::nullopt), "");
  EXPECT_EQ(interval(0.5, std::nullopt), "");
}

}  // namespace
}  // namespace landdrill::report
