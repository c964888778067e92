#include "engine/report/forecast.h"

#include <algorithm>

#include "engine/report/chance.h"
#include "engine/report/grid.h"
#include "engine/report/sections.h"
#include "engine/report/width.h"

namespace landdrill::report {
namespace {

std::string tenth(const Odds& odds, Chance share) {
  return to_places(odds.quantile(share), 1);
}

// The cells that every line and the total have: mean, and what is not exceeded so often.
std::vector<std::string> odds_cells(const Odds& odds) {
  return {to_places(odds.mean(), 2), tenth(odds, 0.05), tenth(odds, 0.25),
          tenth(odds, 0.5),          tenth(odds, 0.75), tenth(odds, 0.95)};
}

std::vector<std::string> row(std::string label, std::string mark, std::string base, const Odds& odds) {
  std::vector<std::string> cells{std::move(label), std::move(mark), std::move(base)};
  for (std::string& one : odds_cells(odds)) cells.push_back(std::move(one));
  return cells;
}

std::string base_text(const ForecastLine& line) {
  return line.base.from == BaseChance::From::nothing ? "" : given_per_cent(line.base.percent);
}

std::string lines_table(const Forecast& forecast, const TextWish& wish) {
  using enum Align;
  const std::string group = "from bad to good";
  Grid grid({{"line", words, true},
             {"mark", amount},
             {"base mark", amount},
             {"mean", amount},
             {"5 %", amount, false, group},
             {"25 %", amount, false, group},
             {"50 %", amount, false, group},
             {"75 %", amount, false, group},
             {"95 %", amount, false, group}});
  for (const ForecastLine& line : forecast.lines) {
    const std::string mark = line.expected_mark ? to_places(*line.expected_mark, 2) : "";
    grid.add(row(line.label, mark, base_text(line), line.points));
  }
  grid.add_rule();
  grid.add(row("Total", "", "", forecast.total->odds), Look::total);
  return grid.text(wish.width, wish.colour);
}

std::string total_sentences(const Odds& odds, const TextWish& wish) {
  return paragraph("",
                   "One time in twenty the total is below " + tenth(odds, 0.05) +
                       ", one time in twenty above " + tenth(odds, 0.95) +
                       "; half the time it lies between " + tenth(odds, 0.25) + " and " + tenth(odds, 0.75) +
                       ".",
                   wish.width) +
         paragraph("",
                   "On average it is " + to_places(odds.mean(), 2) + ", and usually about " +
                       to_places(odds.deviation(), 2) +
                       " off that (standard deviation). Only the means add up to the total: not everything "
                       "goes badly on the same day.",
                   wish.width);
}

constexpr Chance worth_telling = 0.005;  // of doubt through the grid

std::string chance_words(const ChanceBounds& chance) {
  std::string words = per_cent(chance.chance) + ", " + times_in_words(chance.chance);
  if (chance.most - chance.least > worth_telling)
    words += " (the grid allows " + per_cent(chance.least) + " to " + per_cent(chance.most) + ")";
  return words;
}

std::string chances_section(const ToldForecast& told, const TextWish& wish) {
  std::vector<std::string> sentences;
  for (const ForecastTarget& target : told.targets)
    sentences.push_back("to reach " + target.points.text() + ": " + chance_words(target.chance) + ".");
  if (told.rival) {
    const Against& chance = told.rival->chance;
    sentences.push_back("to beat " + told.rival->title + " (" + told.rival->file +
                        "): " + chance_words(chance.above) + "; to be equal: " + per_cent(chance.ties) + ".");
    if (!told.rival->other_rules.empty())
      sentences.push_back("but that sheet is scored by other rules (" + told.rival->other_rules +
                          "), so the two do not meet.");
  }
  return sentences.empty() ? "" : heading("The chance", wish) + bullets(sentences, wish);
}

}  // namespace

std::string forecast_report(const ToldForecast& told, const Face& face, Format format,
                            const TextWish& asked) {
  if (format == Format::csv) return forecast_csv(told);
  if (format == Format::json) return forecast_json(told, face);
  TextWish wish = asked;
  wish.width = std::max(60, wish.width);
  return title_section(face, wish) + "\n" + lines_table(told.forecast, wish) + "\n" +
         total_sentences(told.forecast.total->odds, wish) + chances_section(told, wish) +
         sources_section(told, face, wish) + model_section(told.forecast, wish) +
         objection_section(face.objections, wish) + caution_section(face, wish) + values_section(face, wish);
}

}  // namespace landdrill::report
