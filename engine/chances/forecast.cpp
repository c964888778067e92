#include "engine/chances/forecast.h"

#include <algorithm>

#include "engine/chances/obstacle.h"
#include "engine/chances/odds.h"
#include "engine/chances/weighted_odds.h"
#include "engine/routine/wish.h"
#include "engine/score/dropped_marks.h"
#include "engine/score/score.h"
#include "tables/decimal.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

// What was taken for sync errors says where it is from.
std::string errors_from(const Routine& routine, const RunWish& runs) {
  if (!routine.errors.empty()) return "the sheet";
  const std::size_t number = runs_with_sync(routine, runs);
  if (number == 0) return "nothing: none expected";
  return std::to_string(number) + (number == 1 ? " run" : " runs");
}

TotalOdds added_up(const std::vector<DailyLine>& lines, const Days& days, const GridWish& grid,
                   const Progress& days_done) {
  std::vector<World> worlds;
  for (const Odds::Case& day : days.shifts.cases()) {
    worlds.push_back({day.chance, {}});
    for (const DailyLine& line : lines) worlds.back().pieces.push_back(&line.on(worlds.size() - 1));
  }
  TotalOdds total = total_odds(worlds, grid, [&](std::size_t done) {
    if (days_done) days_done(done, worlds.size());
  });
  for (const DailyLine& line : lines) {
    total.lost += line.lost;
    total.bound += line.bound;
    if (line.bound > Decimal()) total.lattice = Decimal();
  }
  total.off = days.off;
  return total;
}

}  // namespace

Forecast forecast(const Routine& routine, const Wish& wish, const ForecastWish& how,
                  const Progress& days_done) {
  Forecast told;
  ForecastLines lines(routine, wish, how);
  std::vector<DailyLine> all;
  if (lines.obstacles().empty()) all = lines.all();
  told.obstacles = lines.obstacles();
  if (!told.obstacles.empty()) return told;
  told.day = lines.day();
  told.days = lines.days();
  told.errors = lines.at_risk().errors;
  told.errors_from = errors_from(routine, wish.runs);
  for (const DailyLine& line : all) {
    told.lines.push_back(line.line);
    told.lines.back().points = line.over(told.days.shifts);
  }
  told.total = added_up(all, told.days, how.grid, days_done);
  return told;
}

ChanceBounds reaches(const TotalOdds& total, Decimal target) {
  // Totals that lie further apart than the grid moves them: each is known again.
  if (total.lattice > total.bound * 2) {
    const std::int64_t past = target.units() % total.lattice.units();
    const Decimal first =
        past > 0 ? target - Decimal::from_units(past) + total.lattice : target - Decimal::from_units(past);
    const Chance chance = total.odds.at_least(first - total.bound);
    return {chance, std::max(0.0, chance - total.off), std::min(1.0, chance + total.lost + total.off)};
  }
  return {total.odds.at_least(target), std::max(0.0, total.odds.at_least(target + total.bound) - total.off),
          std::min(1.0, total.odds.at_least(target - total.bound) + total.lost + total.off)};
}

Against against(const TotalOdds& ours, const TotalOdds& theirs) {
  const Decimal bound = ours.bound + theirs.bound;
  const Chance off = ours.off + theirs.off;
  const Chance least = beats_by_more_than(ours.odds, theirs.odds, bound) - off;
  const Chance most = beats_by_more_than(ours.odds, theirs.odds, -bound) + ours.lost + theirs.lost + off;
  return {{beats(ours.odds, theirs.odds), std::max(0.0, least), std::min(1.0, most)},
          equals(ours.odds, theirs.odds)};
}

namespace {

DailyLine taken_off_line(ForecastLine::What what, std::string label, TakenOff off) {
  DailyLine result;
  result.line.what = what;
  result.line.label = std::move(label);
  result.by_day.push_back(std::move(off.odds));
  result.bound = off.bound;
  result.lost = off.lost;
  return result;
}

}  // namespace

std::vector<DayLine> day_lines(const Routine& routine, const Inputs& inputs,
                               std::optional<std::size_t> only) {
  const auto& [risked, spreads] = inputs;
  const auto is_asked_for = [&](std::size_t i) {
    if (!only || i == *only) return true;
    const PanelRule* rule = routine.elements[i].panel;
    return rule == routine.elements[*only].panel && rule->use == Use::weighted;
  };
  std::vector<DayLine> lines;
  for (std::size_t i = 0; i < routine.elements.size(); ++i) {
    const std::optional<KeptMarks>& marks = risked.showing.elements[i].marks;
    if (marks && is_asked_for(i))
      lines.push_back({routine.elements[i].panel, mean_mark(*marks), spreads.elements[i].marks});
  }
  for (std::size_t i = 0; !only && i < risked.showing.aspects.size(); ++i) {
    const ShownAspect& aspect = risked.showing.aspects[i];
    lines.push_back({aspect.rule, mean_mark(*aspect.marks), spreads.aspects[i].marks});
  }
  return lines;
}

Odds DailyLine::over(const Odds& days) const {
  if (by_day.size() == 1) return by_day.front();
  std::vector<WeighedOdds> weighed;
  for (std::size_t day = 0; day < days.cases().size(); ++day)
    weighed.push_back({days.cases()[day].chance, &on(day)});
  return mixed(weighed);
}

ForecastLines::ForecastLines(const Routine& routine, const Wish& wish, const ForecastWish& how,
                             std::optional<std::size_t> only)
    : routine_(routine), grid_(how.grid), inputs_(inputs_of(routine, wish, how.spreads, how.change)) {
  obstacles_ = obstacles_before(routine_, inputs_.at_risk, inputs_.spread);
  if (obstacles_.empty()) days_ = days_of(inputs_.spread.day.marks, day_lines(routine_, inputs_, only));
}

std::vector<DailyLine> ForecastLines::all() {
  std::vector<DailyLine> lines;
  for (std::size_t i = 0; i < routine_.elements.size(); ++i) {
    const PanelRule* rule = routine_.elements[i].panel;
    if (rule != nullptr && rule->use != Use::weighted) lines.push_back(own_line(i, *rule));
  }
  std::size_t index = 0;
  for (const PanelRule* rule : weighting_rules(routine_)) {
    if (std::optional<DailyLine> line = weighted_line(*rule, index++)) lines.push_back(std::move(*line));
  }
  for (std::size_t i = 0; i < inputs_.at_risk.showing.aspects.size(); ++i) lines.push_back(aspect_line(i));
  if (!inputs_.at_risk.errors.empty()) {
    lines.push_back(
        taken_off_line(ForecastLine::What::sync, "Sync errors", sync_odds(inputs_.at_risk.errors)));
  }
  if (!inputs_.at_risk.penalties.empty()) {
    lines.push_back(
        taken_off_line(ForecastLine::What::penalties, "Penalties", penalty_odds(inputs_.at_risk.penalties)));
  }
  return lines;
}

std::optional<Chance> ForecastLines::deviation_of(std::size_t element) {
  const PanelRule* rule = routine_.elements[element].panel;
  if (rule == nullptr) return std::nullopt;
  if (rule->use != Use::weighted) return own_line(element, *rule).over(days_.shifts).deviation();
  WeightedScatter scatter(*rule);
  Chance lost = 0;
  for (const Odds::Case& day : days_.shifts.cases())
    scatter.add_day(day.chance, weighted_on(*rule, day.value, lost));
  return scatter.deviation();
}

Decimal ForecastLines::expected_mark_of(std::size_t element) const {
  return mean_mark(*inputs_.at_risk.showing.elements[element].marks);
}

// `odds_of` turns the kept marks of a day into points.
template <class OddsOf>
DailyLine ForecastLines::marked(ForecastLine line, const PanelRule& rule, OddsOf odds_of) {
  DailyLine result{std::move(line), {}, {}, 0};
  for (const Odds::Case& day : days_.shifts.cases()) {
    const LikelyMarks& marks =
        memory_.kept(rule, *result.line.expected_mark + day.value, result.line.spread.marks);
    result.by_day.push_back(odds_of(marks.odds));
    result.lost = std::max(result.lost, marks.lost);
  }
  return result;
}

DailyLine ForecastLines::own_line(std::size_t element, const PanelRule& rule) {
  ForecastLine line;
  line.index = element;
  line.label = label_of(routine_.elements[element]);
  line.expected_mark = expected_mark_of(element);
  line.spread = inputs_.spread.elements[element];
  line.base = inputs_.at_risk.chances[element];
  return marked(std::move(line), rule, [&](const Odds& kept) {
    return element_odds(rule, kept, credited(routine_, inputs_.at_risk, element));
  });
}

std::vector<WeightedElement> ForecastLines::weighted_on(const PanelRule& rule, Decimal shift, Chance& lost) {
  std::vector<WeightedElement> elements;
  for (std::size_t i = 0; i < routine_.elements.size(); ++i) {
    if (routine_.elements[i].panel != &rule) continue;
    const LikelyMarks& marks =
        memory_.kept(rule, expected_mark_of(i) + shift, inputs_.spread.elements[i].marks);
    elements.push_back({&marks.odds, credited(routine_, inputs_.at_risk, i)});
    lost += marks.lost;
  }
  return elements;
}

std::optional<DailyLine> ForecastLines::weighted_line(const PanelRule& rule, std::size_t index) {
  DailyLine result;
  result.line.what = ForecastLine::What::weighted;
  result.line.index = index;
  result.line.label = rule.title;
  WeightedOdds together(rule, grid_.states);
  for (const Odds::Case& day : days_.shifts.cases()) {
    Chance lost = 0;
    std::optional<WeightedOdds::Told> told = together.odds(weighted_on(rule, day.value, lost));
    if (!told) {
      obstacles_.push_back({Obstacle::Of::ways_too_many, {.names = {rule.title}}});
      return std::nullopt;
    }
    result.by_day.push_back(std::move(told->odds));
    result.bound = std::max(result.bound, told->bound);
    result.lost = std::max(result.lost, lost + told->lost);
  }
  return result;
}

DailyLine ForecastLines::aspect_line(std::size_t index) {
  const ShownAspect& aspect = inputs_.at_risk.showing.aspects[index];
  ForecastLine line;
  line.what = ForecastLine::What::aspect;
  line.index = index;
  line.label = aspect.rule->title;
  line.expected_mark = mean_mark(*aspect.marks);
  line.spread = inputs_.spread.aspects[index];
  return marked(std::move(line), *aspect.rule,
                [&](const Odds& kept) { return plain_odds(*aspect.rule, kept); });
}

}  // namespace landdrill
