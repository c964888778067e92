#include <fmt/format.h>

#include "engine/chances/forecast.h"
#include "engine/chances/odds.h"
#include "engine/chances/risk.h"
#include "engine/chances/spreads.h"
#include "engine/report/chance.h"
#include "engine/report/page.h"
#include "engine/report/pages/forecast.h"
#include "tables/decimal.h"

namespace landdrill::report {
namespace {

struct Share {
  std::string_view name, heading;
  Chance share;
};
constexpr Share shares[] = {{"q05", "5 %", 0.05},
                            {"q25", "25 %", 0.25},
                            {"q50", "50 %", 0.5},
                            {"q75", "75 %", 0.75},
                            {"q95", "95 %", 0.95}};
constexpr int swims = 50;  // in the picture

std::string_view line_word(ForecastLine::What what) {
  switch (what) {
    case ForecastLine::What::element:
      return "element";
    case ForecastLine::What::weighted:
      return "elements together";
    case ForecastLine::What::aspect:
      return "impression";
    case ForecastLine::What::sync:
      return "sync";
    case ForecastLine::What::penalties:
      return "penalties";
  }
  return "";
}

std::string tenth(const Odds& odds, Chance share) {
  return to_places(odds.quantile(share), 1);
}

Datum odds_datum(const Odds& odds) {
  Record record{{"mean", as_number(odds.mean())}, {"deviation", as_number(odds.deviation())}};
  for (const Share& one : shares) record.emplace_back(one.name, odds.quantile(one.share).text());
  return record;
}

// Of the lines, and of the total.
std::vector<PageColumn> odds_columns() {
  using enum Align;
  const auto csv = [](std::string_view name, std::string_view heading, Seen seen, std::string group) {
    return PageColumn{"", std::string(heading), amount, Wraps::no, seen, std::move(group), 2,
                      0,  std::string(name)};
  };
  std::vector<PageColumn> columns{{"what", "", words, Wraps::no, Seen::by_programs},
                                  {"line", "line", words, Wraps::yes},
                                  {"mark", "mark", amount},
                                  {"spread", "", words, Wraps::no, Seen::by_programs},
                                  csv("spread", "", Seen::by_programs, ""),
                                  csv("spread_from", "", Seen::by_programs, ""),
                                  {"base_chance", "base mark", amount},
                                  {"points", "", words, Wraps::no, Seen::by_programs},
                                  csv("mean", "mean", Seen::always, ""),
                                  csv("deviation", "", Seen::by_programs, "")};
  for (const Share& one : shares)
    columns.push_back(csv(one.name, one.heading, Seen::always, "from bad to good"));
  return columns;
}

void add_odds(std::vector<Entry>& cells, const Odds& odds) {
  cells.emplace_back("", odds_datum(odds));
  cells.emplace_back(to_places(odds.mean(), 2), as_number(odds.mean()));
  cells.emplace_back(as_number(odds.deviation()));
  for (const Share& one : shares) cells.emplace_back(tenth(odds, one.share), odds.quantile(one.share).text());
}

std::vector<Entry> line_cells(const ForecastLine& line) {
  const bool spreads = line.spread.from != SpreadFrom::nothing;
  const bool based = line.base.from != BaseChance::From::nothing;
  std::vector<Entry> cells{line_word(line.what), line.label};
  cells.push_back(line.expected_mark ? Entry(to_places(*line.expected_mark, 2), line.expected_mark->text())
                                     : Entry());
  cells.emplace_back("", spread_datum(line.spread));
  cells.emplace_back(spreads ? line.spread.marks.text() : "");
  cells.emplace_back(spreads ? word_of(line.spread.from) : "");
  cells.push_back(based ? Entry(given_per_cent(line.base.percent), line.base.percent.text()) : Entry());
  add_odds(cells, line.points);
  return cells;
}

std::vector<Entry> total_cells_of(const Odds& odds, std::string what, std::string line) {
  std::vector<Entry> cells{what, line, "", "", "", "", ""};
  add_odds(cells, odds);
  return cells;
}

// One dot is one swim in fifty.
PageTable swims_table(const ToldForecast& told) {
  PageTable table("swims", {{"swim", ""}, {"total", ""}, {"reaches", ""}});
  table.picture = {Picture::As::dots, "Fifty swims", "points", "swim", {"total"}};
  for (int swim = 1; swim <= swims; ++swim) {
    const Decimal total = told.forecast.total->odds.quantile((swim - 0.5) / swims);
    Data reached;
    for (const ForecastTarget& target : told.targets)
      if (total >= target.points) reached.emplace_back(target.points.text());
    table.add({{"", swim}, total.text(), {"", std::move(reached)}});
  }
  return table;
}

void put_total_sentences(PageParts& page, const Odds& odds) {
  page.apart();
  page.say(fmt::format(
      "One time in twenty the total is below {}, one time in twenty above {}; half the time it lies between "
      "{} and {}.",
      tenth(odds, 0.05), tenth(odds, 0.95), tenth(odds, 0.25), tenth(odds, 0.75)));
  page.say(
      fmt::format("On average it is {}, and usually about {} off that (standard deviation). Only the means "
                  "add up to the total: not everything goes badly on the same day.",
                  to_places(odds.mean(), 2), to_places(odds.deviation(), 2)));
}

}  // namespace

void put_forecast_lines(PageParts& page, const ToldForecast& told) {
  const Odds& odds = told.forecast.total->odds;
  PageTable lines("lines", odds_columns()), total("", odds_columns());
  lines.in_csv = total.in_csv = true;
  for (const ForecastLine& line : told.forecast.lines) lines.add(line_cells(line));
  lines.add_rule();
  lines.add(total_cells_of(odds, "", "Total"), Look::total, Seen::by_people);
  total.add(total_cells_of(odds, "total", ""));
  page.apart();
  page.add(std::move(lines));
  page.add(std::move(total), Seen::by_programs);
  page.fact("total", {"", odds_datum(odds)});
  page.add(swims_table(told), Seen::by_programs);
  put_total_sentences(page, odds);
}

}  // namespace landdrill::report
