// The odds of a score: every line, the total, the chance of a target and against another sheet.
//
//   render_text(*forecast(asked, {routine, messages}, std::nullopt), {})
//   //   One time in twenty the total is below 205.1, one time in twenty above 243.0; half the time it lies
//   //   between 219.8 and 235.0.
//
// People see points to a tenth, programs all digits.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/chances/forecast.h"
#include "engine/chances/odds.h"
#include "engine/chances/risk.h"
#include "engine/chances/spreads.h"
#include "engine/chances/what_if.h"
#include "engine/report/page.h"
#include "engine/report/pages/asked.h"
#include "engine/report/pages/choosing.h"
#include "engine/report/pages/face.h"
#include "grammar/diagnostics.h"
#include "tables/decimal.h"

namespace landdrill::report {

struct AskedSheet {
  const Routine& routine;
  const Diagnostics& messages;  // about it
};
// The one to beat, as it is written: --option speaks of the first.
struct RivalSheet {
  const Routine& routine;
  std::string file;
};
// `days_done` is told how many kinds of day are done of how many.
ChoosingAnswer forecast(const Asked& asked, const AskedSheet& sheet, const std::optional<RivalSheet>& rival,
                        const Progress& days_done = {});

struct ForecastTarget {
  Decimal points;
  ChanceBounds chance;
  std::vector<Chance> otherwise;  // one for each of ToldForecast::what_ifs
};
struct ForecastRival {
  std::string title, file;
  Against chance;
  std::string other_rules;  // the event and values it is scored by, when they are not those of the first
  std::vector<Chance> otherwise = {};
};
struct ToldForecast {
  Forecast forecast;  // without obstacles
  std::vector<ForecastTarget> targets;
  std::optional<ForecastRival> rival;
  std::vector<WhatIf> what_ifs;  // those that make a difference to what goes in
  // What went into it.
  Spreads spreads;
  std::vector<BaseChance> chances;  // one for each element
  std::vector<ExpectedPenalty> penalties;
};
// `face`: the account of the routine as it is.
Page forecast_page(const ToldForecast& told, const Face& face);

// The parts of it: forecast.cpp, forecast_lines.cpp.
void put_forecast_lines(PageParts& page, const ToldForecast& told);
void put_chances(PageParts& page, const ToldForecast& told);
void put_sources(PageParts& page, const ToldForecast& told, const Face& face);
Datum spread_datum(const Spread& spread);
// "each base mark a quarter likelier"
std::string_view what_if_words(WhatIf what);

}  // namespace landdrill::report
