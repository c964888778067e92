#include "engine/report/chance.h"
#include "engine/report/face_json.h"
#include "engine/report/forecast.h"
#include "engine/report/wide_csv.h"

namespace landdrill::report {
namespace {

struct Share {
  std::string_view name;
  Chance share;
};
constexpr Share shares[] = {{"q05", 0.05}, {"q25", 0.25}, {"q50", 0.5}, {"q75", 0.75}, {"q95", 0.95}};

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

std::string base_per_cent(const ForecastLine& line) {
  return line.base.from == BaseChance::From::nothing ? "" : line.base.percent.text();
}

// ---- CSV ----

void add_odds(WideCsv::Cells& cells, const Odds& odds) {
  cells.emplace_back("mean", as_number(odds.mean()));
  cells.emplace_back("deviation", as_number(odds.deviation()));
  for (const Share& one : shares) cells.emplace_back(one.name, odds.quantile(one.share).text());
}

void add_chance(WideCsv& csv, std::string what, std::string line, const ChanceBounds& chance) {
  csv.add({{"what", std::move(what)},
           {"line", std::move(line)},
           {"chance", as_number(chance.chance)},
           {"chance_least", as_number(chance.least)},
           {"chance_most", as_number(chance.most)}});
}

WideCsv::Cells line_cells(const ForecastLine& line) {
  WideCsv::Cells cells{{"what", std::string(line_word(line.what))}, {"line", line.label}};
  if (line.expected_mark) cells.emplace_back("mark", line.expected_mark->text());
  if (line.spread.from != SpreadFrom::nothing) {
    cells.emplace_back("spread", line.spread.marks.text());
    cells.emplace_back("spread_from", std::string(word_of(line.spread.from)));
  }
  cells.emplace_back("base_chance", base_per_cent(line));
  add_odds(cells, line.points);
  return cells;
}

// ---- JSON ----

json::object odds_object(const Odds& odds) {
  json::object result{{"mean", as_number(odds.mean())}, {"deviation", as_number(odds.deviation())}};
  for (const Share& one : shares) result[one.name] = odds.quantile(one.share).text();
  return result;
}

json::value spread_or_null(const Spread& spread) {
  if (spread.from == SpreadFrom::nothing) return nullptr;
  return json::object{{"marks", spread.marks.text()},
                      {"from", text_or_null(word_of(spread.from))},
                      {"says", text_or_null(spread.says)}};
}

json::object line_object(const ForecastLine& line) {
  return {{"what", text_or_null(line_word(line.what))},
          {"line", text_or_null(line.label)},
          {"mark", line.expected_mark ? text_or_null(line.expected_mark->text()) : json::value(nullptr)},
          {"spread", spread_or_null(line.spread)},
          {"base_chance", text_or_null(base_per_cent(line))},
          {"points", odds_object(line.points)}};
}

json::object chance_object(const ChanceBounds& chance) {
  return {{"chance", as_number(chance.chance)},
          {"least", as_number(chance.least)},
          {"most", as_number(chance.most)}};
}

json::value rival_or_null(const std::optional<ForecastRival>& rival) {
  if (!rival) return nullptr;
  return json::object{{"routine", text_or_null(rival->title)},
                      {"file", text_or_null(rival->file)},
                      {"beats", chance_object(rival->chance.above)},
                      {"equals", as_number(rival->chance.ties)},
                      {"other_rules", text_or_null(rival->other_rules)}};
}

json::object errors_object(const Forecast& forecast) {
  json::object numbers;
  for (const ExpectedErrors& error : forecast.errors) numbers[error.sync->code] = error.number.text();
  return {{"expected", numbers}, {"from", text_or_null(forecast.errors_from)}};
}

}  // namespace

std::string forecast_csv(const ToldForecast& told) {
  WideCsv csv({"what", "line", "mark", "spread", "spread_from", "base_chance", "mean", "deviation", "q05",
               "q25", "q50", "q75", "q95", "chance", "chance_least", "chance_most"});
  for (const ForecastLine& line : told.forecast.lines) csv.add(line_cells(line));
  WideCsv::Cells total{{"what", "total"}};
  add_odds(total, told.forecast.total->odds);
  csv.add(total);
  for (const ForecastTarget& target : told.targets)
    add_chance(csv, "reach", target.points.text(), target.chance);
  if (told.rival) {
    add_chance(csv, "beat", told.rival->title, told.rival->chance.above);
    csv.add({{"what", "equal"}, {"line", told.rival->title}, {"chance", as_number(told.rival->chance.ties)}});
  }
  return csv.text();
}

std::string forecast_json(const ToldForecast& told, const Face& face) {
  json::object all = face_object(face);
  json::array lines, targets;
  for (const ForecastLine& line : told.forecast.lines) lines.push_back(line_object(line));
  for (const ForecastTarget& target : told.targets) {
    json::object one = chance_object(target.chance);
    one["target"] = target.points.text();
    targets.push_back(one);
  }
  const TotalOdds& total = *told.forecast.total;
  all["lines"] = lines;
  all["total"] = odds_object(total.odds);
  all["targets"] = targets;
  all["against"] = rival_or_null(told.rival);
  all["day"] = spread_or_null(told.forecast.day);
  all["sync_errors"] = errors_object(told.forecast);
  all["grid"] = json::object{
      {"grid", total.grid.text()}, {"bound", total.bound.text()}, {"lost", as_number(total.lost)}};
  return json_text(all, JsonLayout::indented);
}

}  // namespace landdrill::report
