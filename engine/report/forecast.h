// The odds of a score as text, JSON or CSV: every line, the total, the chance of a target and against another
// sheet.
//
//   One time in twenty the total is below 205.1, one time in twenty above 243.0; half the time it lies
//   between 219.8 and 235.0.
//
// Computes nothing; text shows points to a tenth, JSON and CSV in full. `face`: the account of the routine as
// it is, for title, values and cautions.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/chances/forecast.h"
#include "engine/report/face.h"
#include "engine/report/values.h"

namespace landdrill::report {

struct ForecastTarget {
  Decimal points;
  ChanceBounds chance;
};
struct ForecastRival {
  std::string title, file;
  Against chance;
  std::string other_rules;  // the event and values it is scored by, when they are not those of the first
};
struct ToldForecast {
  Forecast forecast;  // without obstacles
  std::vector<ForecastTarget> targets;
  std::optional<ForecastRival> rival;
  // What went into it.
  Spreads spreads;
  std::vector<BaseChance> chances;  // one for each element
  std::vector<ExpectedPenalty> penalties;
};

std::string forecast_report(const ToldForecast& told, const Face& face, Format format, const TextWish& wish);

// The parts of it: forecast.cpp, forecast_sources.cpp, forecast_rows.cpp.
std::string sources_section(const ToldForecast& told, const Face& face, const TextWish& wish);
std::string model_section(const Forecast& forecast, const TextWish& wish);
std::string forecast_csv(const ToldForecast& told);
std::string forecast_json(const ToldForecast& told, const Face& face);

}  // namespace landdrill::report
