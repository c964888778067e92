#include "engine/chances/forecast.h"
#include "engine/chances/spreads.h"
#include "engine/report/amount_text.h"
#include "engine/report/chance.h"
#include "engine/report/face.h"
#include "engine/report/page.h"
#include "engine/report/pages/face.h"
#include "engine/report/pages/forecast.h"

namespace landdrill::report {
namespace {

bool is_marked(const ForecastLine& line) {
  return line.what == ForecastLine::What::element || line.what == ForecastLine::What::aspect;
}

void put_model(PageParts& page, const Forecast& forecast) {
  using enum Align;
  PageTable table("", {{"", "line", words, Wraps::yes},
                       {"", "mark", amount},
                       {"", "judges", amount},
                       {"", "mean", amount},
                       {"", "deviation", amount},
                       {"", "lowest", amount},
                       {"", "highest", amount}});
  for (const ForecastLine& line : forecast.lines) {
    const auto cases = line.points.cases();
    table.add({line.label, text_of(line.expected_mark), is_marked(line) ? line.spread.marks.text() : "",
               to_places(line.points.mean(), 4), to_places(line.points.deviation(), 4),
               cases.empty() ? "" : cases.front().value.text(),
               cases.empty() ? "" : cases.back().value.text()});
  }
  page.heading("How each line comes about", Seen::in_full);
  page.add(std::move(table), Seen::in_full);
  page.apart();
  page.list(
      "",
      {"Each judge's mark is the expected mark, shifted by the day, and a bell curve of the scatter around "
       "it, on the nearest step of the scale and never outside it. Judges are independent of each other.",
       "High and low are dropped and the kept marks added exactly, in every way in which the marks can "
       "fall; then points are worked out and rounded as the value set says.",
       "Each element gets its base mark with its own chance, whatever the marks.",
       "Sync errors come one by one, so many on average; each penalty comes with its chance.",
       "The day shifts every mark of the performance by the same amount."},
      Seen::in_full);
}

}  // namespace

Datum spread_datum(const Spread& spread) {
  if (spread.from == SpreadFrom::nothing) return {};
  return Record{{"marks", spread.marks.text()}, {"from", word_of(spread.from)}, {"says", spread.says}};
}

Page forecast_page(const ToldForecast& told, const Face& face) {
  Page page("forecast");
  page.csv = {"what", "line", "mark", "spread", "spread_from", "base_chance", "mean",         "deviation",
              "q05",  "q25",  "q50",  "q75",    "q95",         "chance",      "chance_least", "chance_most"};
  put_title(page, face);
  put_forecast_lines(page, told);
  put_chances(page, told);
  put_sources(page, told, face);
  put_model(page, told.forecast);
  put_notes(page, face);
  return page;
}

}  // namespace landdrill::report
