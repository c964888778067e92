#include <gtest/gtest.h>

#include "choosing_sample.h"
#include "engine/report/render.h"

namespace landdrill::report {
namespace {

using namespace report_test;

std::string told(const ToldForecast& forecast, bool full = false) {
  return render_text(forecast_page(forecast, face()), {.full = full});
}

TEST(ForecastReport, SaysInWordsHowLowAndHowHighItMayGo) {
  const auto made = scene();
  const std::string text = told(told_forecast(*made));
  EXPECT_TRUE(holds(text,
                    "One time in twenty the total is below 20.4, one time in twenty above 46.3; half\n"
                    "the time it lies between 46.1 and 46.3.\n"))
      << text;
}

TEST(ForecastReport, ShowsALineWithItsMarkAndItsChanceOfTheBaseMark) {
  const auto made = scene();
  const std::string text = told(told_forecast(*made));
  EXPECT_TRUE(holds(text, "2 Undertow   7.25       12 %  25.95   3.6  29.0  29.0  29.0  29.0\n")) << text;
}

TEST(ForecastReport, SaysTheChanceOfEachTargetAndOfTheOtherSheet) {
  const auto made = scene();
  const std::string text = told(told_forecast(*made));
  EXPECT_TRUE(holds(text, "  - to reach 46.1: 44.0 %, about 4 times in 10 (the grid allows 43.0 % to 45.0\n"))
      << text;
  EXPECT_TRUE(holds(text, "  - to reach 20: 100 %, always.\n")) << text;
  EXPECT_TRUE(holds(text,
                    "  - to beat Heron Lake (heron.sheet): 62.5 %, about 6 times in 10; to be equal:\n"
                    "    under 0.1 %.\n"))
      << text;
}

TEST(ForecastReport, SaysWhenTheOtherSheetIsScoredByOtherRules) {
  const auto made = scene();
  ToldForecast forecast = told_forecast(*made);
  EXPECT_FALSE(holds(told(forecast), "other rules"));
  forecast.rival->other_rules = "Free routine, Old league 1996";
  EXPECT_TRUE(
      holds(told(forecast), "  - but that sheet is scored by other rules (Free routine, Old league 1996)"))
      << told(forecast);
  EXPECT_TRUE(holds(render_json(forecast_page(forecast, face())),
                    "\"other_rules\": \"Free routine, Old league 1996\""));
}

TEST(ForecastReport, SaysWhatWasTold) {
  const auto made = scene();
  ToldForecast forecast = told_forecast(*made);
  forecast.spreads.elements = {forecast.forecast.lines[0].spread, forecast.forecast.lines[1].spread};
  for (Spread& spread : forecast.spreads.elements) spread.from = SpreadFrom::told;
  EXPECT_TRUE(holds(told(forecast), "How far judges' marks scatter: 0.4 marks, as told.")) << told(forecast);
}

TEST(ForecastReport, SaysWhereEverythingIsFrom) {
  const auto made = scene();
  ToldForecast forecast = told_forecast(*made);
  forecast.spreads.elements = {forecast.forecast.lines[0].spread, forecast.forecast.lines[1].spread};
  forecast.chances = {{}, forecast.forecast.lines[1].base};
  const std::string text = told(forecast);
  for (const char* piece : {"How far judges' marks scatter: 0.4 marks, from spread 0.4 in the sheet.",
                            "none, as nothing speaks of it (1)", "sheet (2)",
                            "on average: small 2.5, from the sheet.", "every day is", "0.025"})
    EXPECT_TRUE(holds(text, piece)) << piece << " in\n" << text;
}

TEST(ForecastReport, SaysWhenNothingWasRounded) {
  const auto made = scene();
  ToldForecast forecast = told_forecast(*made);
  forecast.forecast.total->bound = Decimal();
  EXPECT_TRUE(holds(told(forecast), "no total was rounded.")) << told(forecast);
}

TEST(ForecastReport, TellsTheModelOnlyInFull) {
  const auto made = scene();
  EXPECT_FALSE(holds(told(told_forecast(*made)), "bell curve"));
  EXPECT_TRUE(holds(told(told_forecast(*made), true), "bell curve"));
}

TEST(ForecastReport, StaysWithinThePage) {
  const auto made = scene();
  for (const int width : {60, 80, 120}) {
    TextWish wish;
    wish.width = width;
    wish.full = true;
    const std::string text = render_text(forecast_page(told_forecast(*made), face()), wish);
    EXPECT_EQ(layout_fault(text, width), "") << text;
  }
}

TEST(ForecastReport, GivesChancesInFullToOtherPrograms) {
  const auto made = scene();
  const std::string csv = render_csv(forecast_page(told_forecast(*made), face()));
  EXPECT_TRUE(holds(csv, "reach,46.1,,,,,,,,,,,,0.44,0.43,0.45\n")) << csv;
  EXPECT_TRUE(holds(csv, "beat,Heron Lake,,,,,,,,,,,,0.625,0.625,0.625\n")) << csv;
  const std::string json = render_json(forecast_page(told_forecast(*made), face()));
  for (const char* piece :
       {"\"q05\": \"20.4\"", "\"target\": \"46.1\"", "\"equals\": \"0.0001\"", "\"bound\": \"0.025\""})
    EXPECT_TRUE(holds(json, piece)) << piece << " in\n" << json;
}

}  // namespace
}  // namespace landdrill::report
