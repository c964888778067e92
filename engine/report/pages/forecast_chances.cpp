#include "engine/chances/forecast.h"
#include "engine/chances/odds.h"
#include "engine/report/chance.h"
#include "engine/report/page.h"
#include "engine/report/pages/forecast.h"

namespace landdrill::report {
namespace {

constexpr Chance worth_telling = 0.005;  // of doubt through the grid

std::string chance_words(const ChanceBounds& chance) {
  std::string words = per_cent(chance.chance) + ", " + times_in_words(chance.chance);
  if (chance.most - chance.least > worth_telling)
    words += " (the grid allows " + per_cent(chance.least) + " to " + per_cent(chance.most) + ")";
  return words;
}

std::vector<std::string> chance_sentences(const ToldForecast& told) {
  std::vector<std::string> sentences;
  for (const ForecastTarget& target : told.targets)
    sentences.push_back("to reach " + target.points.text() + ": " + chance_words(target.chance) + ".");
  if (!told.rival) return sentences;
  const ForecastRival& rival = *told.rival;
  sentences.push_back("to beat " + rival.title + " (" + rival.file +
                      "): " + chance_words(rival.chance.above) +
                      "; to be equal: " + per_cent(rival.chance.ties) + ".");
  if (!rival.other_rules.empty())
    sentences.push_back("but that sheet is scored by other rules (" + rival.other_rules +
                        "), so the two do not meet.");
  return sentences;
}

PageTable chances_table(std::string key, std::string what) {
  using enum Align;
  const auto column = [](std::string name, std::string csv) {
    return PageColumn{std::move(name), "", amount, Wraps::no, Seen::always, "", 2, 0, std::move(csv)};
  };
  PageTable table(std::move(key), {column("target", "line"), column("chance", ""),
                                   column("least", "chance_least"), column("most", "chance_most")});
  table.in_csv = true;
  table.given = {{"what", std::move(what)}};
  return table;
}

std::vector<Entry> bounds_cells(std::string line, const ChanceBounds& chance) {
  return {std::move(line), as_number(chance.chance), as_number(chance.least), as_number(chance.most)};
}

Datum rival_datum(const std::optional<ForecastRival>& rival) {
  if (!rival) return {};
  const ChanceBounds& above = rival->chance.above;
  return Record{{"routine", rival->title},
                {"file", rival->file},
                {"beats", Record{{"chance", as_number(above.chance)},
                                 {"least", as_number(above.least)},
                                 {"most", as_number(above.most)}}},
                {"equals", as_number(rival->chance.ties)},
                {"other_rules", rival->other_rules}};
}

}  // namespace

void put_chances(PageParts& page, const ToldForecast& told) {
  const std::vector<std::string> sentences = chance_sentences(told);
  if (!sentences.empty()) page.heading("The chance");
  page.list("", sentences);
  PageTable targets = chances_table("targets", "reach");
  for (const ForecastTarget& target : told.targets)
    targets.add(bounds_cells(target.points.text(), target.chance));
  page.add(std::move(targets), Seen::by_programs);
  page.fact("against", {"", rival_datum(told.rival)});
  if (!told.rival) return;
  PageTable beat = chances_table("", "beat"), equal = chances_table("", "equal");
  beat.add(bounds_cells(told.rival->title, told.rival->chance.above));
  equal.add({told.rival->title, as_number(told.rival->chance.ties), "", ""});
  page.add(std::move(beat), Seen::by_programs);
  page.add(std::move(equal), Seen::by_programs);
}

}  // namespace landdrill::report
