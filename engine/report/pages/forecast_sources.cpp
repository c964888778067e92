#include <algorithm>

#include "engine/chances/forecast.h"
#include "engine/chances/risk.h"
#include "engine/chances/spreads.h"
#include "engine/chances/total_odds.h"
#include "engine/report/chance.h"
#include "engine/report/face.h"
#include "engine/report/page.h"
#include "engine/report/pages/forecast.h"
#include "engine/routine/routine.h"
#include "tables/decimal.h"

namespace landdrill::report {
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

std::string grid_sentence(const TotalOdds& total) {
  if (total.bound == Decimal())
    return "Adding up: nothing was rounded, so these are the exact odds of the model.";
  return "Adding up: on a grid of " + total.grid.text() + " points; no total lies further than " +
         total.bound.text() + " points from where it truly is.";
}

void put_source_facts(PageParts& page, const Forecast& forecast) {
  Record numbers;
  for (const ExpectedErrors& error : forecast.errors)
    numbers.emplace_back(error.sync->code, error.number.text());
  const TotalOdds& total = *forecast.total;
  page.fact("day", {"", spread_datum(forecast.day)});
  page.fact("sync_errors", {"", Record{{"expected", std::move(numbers)}, {"from", forecast.errors_from}}});
  page.fact("grid", {"", Record{{"grid", total.grid.text()},
                                {"bound", total.bound.text()},
                                {"lost", as_number(total.lost)}}});
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
  for (std::size_t i = 0; i < told.chances.size(); ++i)
    chances.note(std::string(source_of(told.chances[i], "none, as nothing speaks of it")),
                 std::to_string(face.elements.at(i).number));
  std::vector<std::string> sentences;
  spreads.tell("How far judges' marks scatter", sentences);
  sentences.push_back(day_sentence(told.forecast.day));
  chances.tell("Chance of the base mark", sentences);
  sentences.push_back(errors_sentence(told.forecast));
  sentences.push_back(penalties_sentence(told.penalties));
  sentences.push_back(grid_sentence(*told.forecast.total));
  page.heading("Where this comes from");
  page.list("", sentences);
  put_source_facts(page, told.forecast);
}

}  // namespace landdrill::report
