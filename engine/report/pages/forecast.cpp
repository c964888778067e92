#include "engine/report/pages/forecast.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/chances/odds.h"
#include "engine/chances/total_odds.h"
#include "engine/report/figures.h"
#include "engine/routine/wish.h"

namespace landdrill::report {
namespace {

// What was typed.
struct ForecastAsked {
  ForecastWish how;
  std::optional<Decimal> within;
  std::vector<Decimal> targets;
};

Typed<ForecastAsked> forecast_asked(const Asked& asked, const Routine& routine) {
  ForecastAsked result;
  const Typed<SpreadWish> spread = spreads_of(asked, routine);
  if (!spread) return tl::unexpected(spread.error());
  result.how.spreads = *spread;
  const auto within =
      number_of(asked, "--within",
                {*Decimal::parse("0.0001"), Decimal::whole(1000),
                 "points, from 0.0001 to 1000: how far a total may lie from where it truly is"});
  if (!within) return tl::unexpected(within.error());
  result.within = *within;
  for (const std::string& typed : asked.values("--target")) {
    const Typed<Decimal> target = typed_number("--target", typed, "points, such as 190");
    if (!target) return tl::unexpected(target.error());
    result.targets.push_back(*target);
  }
  return result;
}

// A line of the forecast moves by half a grid at most, so the bound is met by a grid of that fraction of it.
Decimal grid_within(Decimal within, std::size_t lines) {
  const Exact grid = Exact(within) * Exact(Decimal::whole(2)) /
                     Exact(Decimal::whole(static_cast<std::int64_t>(std::max<std::size_t>(1, lines))));
  return std::max(round(grid, 4, Rounding::down), *Decimal::parse("0.0001"));
}

Forecast foretell(const Routine& routine, const Wish& wish, const ForecastAsked& asked,
                  const Progress& days_done) {
  Forecast told = landdrill::forecast(routine, wish, asked.how, days_done);
  if (!told.obstacles.empty() || !asked.within || told.total->bound <= *asked.within) return told;
  ForecastWish finer = asked.how;
  finer.grid.grid = grid_within(*asked.within, told.lines.size());
  return landdrill::forecast(routine, wish, finer, days_done);
}

std::string other_rules(const Routine& first, const Routine& other) {
  const bool same = first.event->code == other.event->code &&
                    first.set->info.title == other.set->info.title &&
                    first.set->info.edition == other.set->info.edition;
  return same ? ""
              : fmt::format("{}, {} {}", other.event->title, other.set->info.title, other.set->info.edition);
}

// What goes into the routine's own odds, and those for the targets.
ToldForecast told_alone(const Routine& routine, const Wish& wish, const ForecastAsked& asked,
                        const Progress& days_done) {
  ToldForecast told;
  told.forecast = foretell(routine, wish, asked, days_done);
  if (!told.forecast.obstacles.empty()) return told;
  for (const Decimal target : asked.targets)
    told.targets.push_back({target, reaches(*told.forecast.total, target), {}});
  told.spreads = spreads(routine, wish, asked.how.spreads);
  Risked risk = risked(routine, wish);
  told.chances = std::move(risk.chances);
  told.penalties = std::move(risk.penalties);
  return told;
}

// The rival, and the runs it is asked for with: --option speaks of the first.
struct Rival {
  const Routine* routine;
  Wish wish;
};

bool is_open(const BaseChance& chance) {
  return chance.percent > Decimal() && chance.percent < hundred_percent;
}

bool makes_a_difference(WhatIf what, const ToldForecast& told) {
  const auto scatters = [](const Spread& one) { return one.marks > Decimal(); };
  if (what == WhatIf::no_day) return scatters(told.spreads.day);
  if (what == WhatIf::wider)
    return std::any_of(told.spreads.elements.begin(), told.spreads.elements.end(), scatters) ||
           std::any_of(told.spreads.aspects.begin(), told.spreads.aspects.end(), scatters);
  return std::any_of(told.chances.begin(), told.chances.end(), is_open);
}

// The same chances with other numbers than the sheet's: soon told, for nobody needs them as exactly.
void tell_otherwise(const Routine& routine, const Wish& wish, const std::optional<Rival>& rival,
                    ForecastWish how, ToldForecast& told) {
  how.grid.work = 100'000'000;
  for (const WhatIf what : what_ifs) {
    if ((told.targets.empty() && !rival) || !makes_a_difference(what, told)) continue;
    how.change = change_to(what);
    const Forecast ours = landdrill::forecast(routine, wish, how);
    if (!ours.obstacles.empty()) continue;
    told.what_ifs.push_back(what);
    for (ForecastTarget& target : told.targets)
      target.otherwise.push_back(reaches(*ours.total, target.points).chance);
    if (!rival) continue;
    const Forecast theirs = landdrill::forecast(*rival->routine, rival->wish, how);
    told.rival->otherwise.push_back(against(*ours.total, *theirs.total).above.chance);
  }
}

}  // namespace

ChoosingAnswer forecast(const Asked& asked, const AskedSheet& sheet, const std::optional<RivalSheet>& other,
                        const Progress& days_done) {
  const Routine& routine = sheet.routine;
  const PriceWish price = whole_price_wish(asked, routine);
  if (!price.mistake.empty()) return mistaken(price.mistake);
  const Typed<ForecastAsked> wish = forecast_asked(asked, routine);
  if (!wish) return mistaken(wish.error());
  ToldForecast told = told_alone(routine, price.wish, *wish, days_done);
  if (!told.forecast.obstacles.empty()) return missing_in(routine, told.forecast.obstacles);
  std::optional<Rival> rival;
  if (other) {
    Asked as_written(asked.question());
    as_written.add("--runs", asked.values("--runs"));
    const PriceWish their_price = whole_price_wish(as_written, other->routine);
    if (!their_price.mistake.empty()) return mistaken(their_price.mistake);
    rival = Rival{&other->routine, their_price.wish};
    const Forecast theirs = foretell(*rival->routine, rival->wish, *wish, days_done);
    if (!theirs.obstacles.empty()) return missing_in(*rival->routine, theirs.obstacles);
    told.rival = {std::string(rival->routine->title), other->file,
                  against(*told.forecast.total, *theirs.total), other_rules(routine, *rival->routine)};
  }
  tell_otherwise(routine, price.wish, rival, wish->how, told);
  const Face face = face_of(routine, sheet.messages, price.wish, {.rows = rows_of(told.spreads)});
  return forecast_page(told, face);
}

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
       "The day shifts every mark of the performance by the same amount: a bell curve. Two sheets have days "
       "of "
       "their own."},
      Seen::in_full);
}

}  // namespace

Datum spread_datum(const Spread& spread) {
  if (spread.from == SpreadFrom::nothing) return {};
  return Record{{"marks", spread.marks.text()}, {"from", word_of(spread.from)}, {"says", spread.says}};
}

std::string_view what_if_words(WhatIf what) {
  constexpr std::string_view words[] = {"every base mark a quarter likelier",
                                        "every base mark a quarter rarer", "judges a quarter further apart",
                                        "no good or bad days"};
  return words[static_cast<std::size_t>(what)];
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

std::string_view what_if_key(WhatIf what) {
  constexpr std::string_view keys[] = {"base_likelier", "base_rarer", "wider", "no_day"};
  return keys[static_cast<std::size_t>(what)];
}

// How much the chances hang on numbers that nobody knows well: for people a column for each chance, for programs a row.
PageTable otherwise_table(const ToldForecast& told) {
  using enum Align;
  std::vector<PageColumn> columns{{"", "", words, Wraps::yes}};
  for (const ForecastTarget& target : told.targets)
    columns.push_back({"", "to reach " + target.points.text(), amount});
  if (told.rival) columns.push_back({"", "to beat " + told.rival->title, amount});
  PageTable table("", std::move(columns));
  std::vector<Entry> as_it_is{"as it is"};
  for (const ForecastTarget& target : told.targets) as_it_is.emplace_back(per_cent(target.chance.chance));
  if (told.rival) as_it_is.emplace_back(per_cent(told.rival->chance.above.chance));
  table.add(std::move(as_it_is));
  for (std::size_t i = 0; i < told.what_ifs.size(); ++i) {
    std::vector<Entry> cells{std::string(what_if_words(told.what_ifs[i]))};
    for (const ForecastTarget& target : told.targets) cells.emplace_back(per_cent(target.otherwise[i]));
    if (told.rival) cells.emplace_back(per_cent(told.rival->otherwise[i]));
    table.add(std::move(cells));
  }
  return table;
}

PageTable otherwise_for_programs(const ToldForecast& told) {
  std::vector<PageColumn> columns = program_columns({"what", "chance"});
  for (const WhatIf what : told.what_ifs) columns.push_back(for_programs(std::string(what_if_key(what))));
  PageTable table("what_if", std::move(columns));
  const auto add = [&](std::string name, Chance chance, const std::vector<Chance>& otherwise) {
    std::vector<Entry> cells{std::move(name), as_number(chance)};
    for (const Chance one : otherwise) cells.emplace_back(as_number(one));
    table.add(std::move(cells));
  };
  for (const ForecastTarget& target : told.targets)
    add("to reach " + target.points.text(), target.chance.chance, target.otherwise);
  if (told.rival) add("to beat " + told.rival->title, told.rival->chance.above.chance, told.rival->otherwise);
  return table;
}

PageTable chances_table(std::string key, std::string what) {
  PageTable table(std::move(key),
                  {for_programs("target", "line"), for_programs("chance"),
                   for_programs("least", "chance_least"), for_programs("most", "chance_most")});
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
  if (!told.what_ifs.empty()) {
    page.heading("How much that hangs on what goes in");
    page.add(otherwise_table(told), Seen::by_people);
    page.add(otherwise_for_programs(told), Seen::by_programs);
  }
  PageTable targets = chances_table("targets", "reach");
  for (const ForecastTarget& target : told.targets)
    targets.add(bounds_cells(target.points.text(), target.chance));
  page.add(std::move(targets), Seen::by_programs);
  page.fact("against", rival_datum(told.rival));
  if (!told.rival) return;
  PageTable beat = chances_table("", "beat"), equal = chances_table("", "equal");
  beat.add(bounds_cells(told.rival->title, told.rival->chance.above));
  equal.add({told.rival->title, as_number(told.rival->chance.ties), "", ""});
  page.add(std::move(beat), Seen::by_programs);
  page.add(std::move(equal), Seen::by_programs);
}

}  // namespace landdrill::report
