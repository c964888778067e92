#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/chances/forecast.h"
#include "engine/chances/odds.h"
#include "engine/chances/risk.h"
#include "engine/chances/spreads.h"
#include "engine/chances/total_odds.h"
#include "engine/report/figures.h"
#include "engine/report/page.h"
#include "engine/report/pages/face.h"
#include "engine/report/pages/forecast.h"
#include "engine/routine/routine.h"
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
constexpr int swims = 50;  // of which one dot of a picture can be made each

std::string_view line_word(ForecastLine::What what) {
  constexpr std::string_view words[] = {"element", "elements together", "impression", "sync", "penalties"};
  return words[static_cast<std::size_t>(what)];
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
  std::vector<PageColumn> columns{for_programs("what"),
                                  {"line", "line", words, Wraps::yes},
                                  {"mark", "mark", amount},
                                  for_programs("spread"),
                                  for_programs("", "spread"),
                                  for_programs("", "spread_from"),
                                  {"base_chance", "base mark", amount},
                                  for_programs("points"),
                                  amount_column("", "mean", "", "mean"),
                                  for_programs("", "deviation")};
  for (const Share& one : shares)
    columns.push_back(amount_column("", std::string(one.heading), "from bad to good", std::string(one.name)));
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
  const bool based = line.base.is_known();
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
  PageTable table("swims", program_columns({"swim", "total", "reaches"}));
  for (int swim = 1; swim <= swims; ++swim) {
    const Decimal total = told.forecast.total->odds.quantile((swim - 0.5) / swims);
    Data reached;
    for (const ForecastTarget& target : told.targets)
      if (total >= target.points) reached.emplace_back(target.points.text());
    table.add({swim, total.text(), {"", std::move(reached)}});
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
  page.fact("total", odds_datum(odds));
  page.add(swims_table(told), Seen::by_programs);
  put_total_sentences(page, odds);
}

namespace {

// What is said of several lines, each saying once, with the names of its lines.
struct Sayings {
  std::vector<std::pair<std::string, std::string>> lines;

  void note(const std::string& saying, const std::string& line) {
    const auto at =
        std::find_if(lines.begin(), lines.end(), [&](const auto& one) { return one.first == saying; });
    if (at == lines.end()) {
      lines.emplace_back(saying, line);
    } else {
      at->second += ", " + line;
    }
  }

  // "Chance of the base mark: from the run-throughs (1); from `slip` in the sheet (2, 3)."
  void tell(std::string_view what, std::vector<std::string>& sentences) const {
    std::string all;
    for (const auto& [saying, names] : lines)
      all += (all.empty() ? "" : "; ") + saying + (lines.size() == 1 ? "" : " (" + names + ")");
    if (!all.empty()) sentences.push_back(std::string(what) + ": " + all + ".");
  }
};

std::string spread_words(const Spread& spread) {
  return spread.marks.text() + " marks, " +
         (spread.from == SpreadFrom::told ? "as told" : "from " + spread.says);
}

std::string day_sentence(const Spread& day) {
  if (day.from == SpreadFrom::nothing)
    return "Good and bad days: nothing says how far they lie apart, so every day is taken as the same; the "
           "true odds are wider.";
  return "Good and bad days: all marks shift together by " + spread_words(day) + ".";
}

std::string errors_sentence(const Forecast& forecast) {
  std::string numbers;
  for (const ExpectedErrors& error : forecast.errors)
    numbers += (numbers.empty() ? "" : ", ") + error.sync->code + " " + error.number.text();
  if (numbers.empty()) return "Sync errors: none are expected.";
  return "Sync errors expected, on average: " + numbers +
         (forecast.errors_from.empty() ? "." : ", from " + forecast.errors_from + ".");
}

std::string penalties_sentence(const std::vector<ExpectedPenalty>& penalties) {
  std::string numbers;
  for (const ExpectedPenalty& one : penalties)
    numbers += (numbers.empty() ? "" : ", ") + one.penalty->code + " " + one.number.text();
  return numbers.empty() ? "Penalties: none are expected."
                         : "Penalties expected, on average: " + numbers + ".";
}

std::string grid_sentence(const Forecast& forecast) {
  const TotalOdds& total = *forecast.total;
  std::string words = "Adding up: no total was rounded";
  if (total.bound > Decimal())
    words = "Adding up: on a grid of " + total.grid.text() + " points; no total lies further than " +
            total.bound.text() + " points from where it truly is";
  if (total.off > 0)
    words += fmt::format("; over {} kinds of day, for which no chance is off by more than {:.3f} %",
                         forecast.days.shifts.cases().size(), std::ceil(100'000 * total.off) / 1000);
  return words + ".";
}

void put_source_facts(PageParts& page, const Forecast& forecast) {
  Record numbers;
  for (const ExpectedErrors& error : forecast.errors)
    numbers.emplace_back(error.sync->code, error.number.text());
  const TotalOdds& total = *forecast.total;
  page.fact("day", spread_datum(forecast.day));
  page.fact("sync_errors", Record{{"expected", std::move(numbers)}, {"from", forecast.errors_from}});
  page.fact("grid", {"", Record{{"grid", total.grid.text()},
                                {"bound", total.bound.text()},
                                {"lost", as_number(total.lost)},
                                {"off", as_number(total.off)}}});
}

}  // namespace

void put_sources(PageParts& page, const ToldForecast& told, const Face& face) {
  Sayings spreads, chances;
  const auto note = [&](const Spread& spread, const std::string& line) {
    if (spread.from != SpreadFrom::nothing) spreads.note(spread_words(spread), line);
  };
  for (std::size_t i = 0; i < told.spreads.elements.size(); ++i)
    note(told.spreads.elements[i], std::to_string(face.elements.at(i).number));
  for (std::size_t i = 0; i < told.spreads.aspects.size(); ++i)
    note(told.spreads.aspects[i], face.aspects.at(i).title);
  std::string of_chances = "Chance of the base mark";
  for (std::size_t i = 0; i < told.chances.size(); ++i) {
    chances.note(source_of(told.chances[i], "none, as nothing speaks of it"),
                 std::to_string(face.elements.at(i).number));
    const std::string weight = weight_words(told.chances[i]);
    if (!weight.empty()) of_chances = "Chance of the base mark (" + weight + ")";
  }
  std::vector<std::string> sentences;
  spreads.tell("How far judges' marks scatter", sentences);
  sentences.push_back(day_sentence(told.forecast.day));
  chances.tell(of_chances, sentences);
  sentences.push_back(errors_sentence(told.forecast));
  sentences.push_back(penalties_sentence(told.penalties));
  sentences.push_back(grid_sentence(told.forecast));
  page.heading("Where this comes from");
  page.list("", sentences);
  put_source_facts(page, told.forecast);
}

}  // namespace landdrill::report
