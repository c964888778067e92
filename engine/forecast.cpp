#include "engine/forecast.h"

#include <algorithm>

#include "engine/forecast_obstacles.h"
#include "engine/weighted_odds.h"

namespace landdrill {
namespace {

Decimal day_step(const Routine& routine, Decimal spread) {
  std::int64_t step = 0;
  for (const PanelRule& rule : routine.set->panels) {
    if (rule.event != routine.event->code) continue;
    step = step == 0 ? rule.step.units() : std::min(step, rule.step.units());
  }
  if (step == 0) step = Decimal::one;
  if (spread.units() == 0) return Decimal::from_units(step);
  while (step > spread.units() && step % 2 == 0) step /= 2;
  while (2 * step <= spread.units()) step *= 2;
  return Decimal::from_units(step);
}

Decimal mean_of(const KeptMarks& kept) {
  return round(Exact(kept.sum.value()) / Exact(Decimal::whole(kept.count)), Decimal::places,
               Rounding::half_up);
}

// One line of the forecast: its odds on each day, or only one when they are the same every day.
struct Piece {
  ForecastLine line;
  std::vector<Odds> by_day;
  Decimal bound;
  Chance lost = 0;

  const Odds& on(std::size_t day) const { return by_day[by_day.size() == 1 ? 0 : day]; }
};

class Forecasting {
 public:
  Forecasting(const Routine& routine, const Wish& wish, const ForecastWish& how)
      : routine_(routine),
        wish_(wish),
        how_(how),
        risked_(risked(routine, wish)),
        spreads_(spreads(routine, wish, how.spreads)) {}

  Forecast run(const Progress& days_done) {
    told_.obstacles = obstacles_before(routine_, risked_, spreads_);
    if (!told_.obstacles.empty()) return std::move(told_);
    told_.day = spreads_.day;
    told_.days = day_odds(spreads_.day.marks, day_step(routine_, spreads_.day.marks));
    add_elements();
    for (const PanelRule* rule : weighting_rules(routine_)) add_weighted(*rule);
    if (!told_.obstacles.empty()) return only_obstacles();
    add_aspects();
    add_taken_off();
    tell_errors();
    tell_lines();
    add_up(days_done);
    return std::move(told_);
  }

 private:
  Forecast only_obstacles() {
    Forecast forecast;
    forecast.obstacles = std::move(told_.obstacles);
    return forecast;
  }

  Credited credited(std::size_t element) const {
    const Element& of = routine_.elements[element];
    const Chance percent = static_cast<Chance>(risked_.chances[element].percent.units()) / Decimal::one;
    const Difficulty base = of.kind->base ? *of.kind->base : Difficulty();
    return {risked_.showing.elements[element].declared, base, percent / 100};
  }

  Decimal expected_mark_of(std::size_t element) const {
    return mean_of(*risked_.showing.elements[element].marks);
  }

  ForecastLine element_line(std::size_t element) const {
    ForecastLine line;
    line.index = element;
    line.label = label_of(routine_.elements[element]);
    line.expected_mark = expected_mark_of(element);
    line.spread = spreads_.elements[element];
    line.base = risked_.chances[element];
    return line;
  }

  // `odds_of` turns the kept marks of a day into points.
  template <class OddsOf>
  void add_marked(ForecastLine line, const PanelRule& rule, OddsOf odds_of) {
    Piece piece{std::move(line), {}, {}, 0};
    for (const Odds::Case& day : told_.days.cases()) {
      const LikelyMarks& marks =
          memory_.kept(rule, *piece.line.expected_mark + day.value, piece.line.spread.marks);
      piece.by_day.push_back(odds_of(marks.odds));
      piece.lost = std::max(piece.lost, marks.lost);
    }
    pieces_.push_back(std::move(piece));
  }

  void add_elements() {
    for (std::size_t i = 0; i < routine_.elements.size(); ++i) {
      const PanelRule* rule = routine_.elements[i].panel;
      if (rule == nullptr || rule->use == Use::weighted) continue;
      add_marked(element_line(i), *rule,
                 [&](const Odds& kept) { return element_odds(*rule, kept, credited(i)); });
    }
  }

  std::vector<WeightedElement> weighted_on(const PanelRule& rule, Decimal shift, Chance& lost) {
    std::vector<WeightedElement> elements;
    for (std::size_t i = 0; i < routine_.elements.size(); ++i) {
      if (routine_.elements[i].panel != &rule) continue;
      const LikelyMarks& marks = memory_.kept(rule, expected_mark_of(i) + shift, spreads_.elements[i].marks);
      elements.push_back({&marks.odds, credited(i)});
      lost += marks.lost;
    }
    return elements;
  }

  void add_weighted(const PanelRule& rule) {
    Piece piece;
    piece.line.what = ForecastLine::What::weighted;
    piece.line.index = weighted_++;
    piece.line.label = rule.title;
    WeightedOdds together(rule);
    for (const Odds::Case& day : told_.days.cases()) {
      Chance lost = 0;
      std::optional<Odds> odds = together.odds(weighted_on(rule, day.value, lost), lost);
      if (!odds) {
        told_.obstacles.push_back(too_many_states(rule));
        return;
      }
      piece.by_day.push_back(std::move(*odds));
      piece.lost = std::max(piece.lost, lost);
    }
    pieces_.push_back(std::move(piece));
  }

  void add_aspects() {
    for (std::size_t i = 0; i < risked_.showing.aspects.size(); ++i) {
      const ShownAspect& aspect = risked_.showing.aspects[i];
      ForecastLine line;
      line.what = ForecastLine::What::aspect;
      line.index = i;
      line.label = aspect.rule->title;
      line.expected_mark = mean_of(*aspect.marks);
      line.spread = spreads_.aspects[i];
      add_marked(std::move(line), *aspect.rule,
                 [&](const Odds& kept) { return plain_odds(*aspect.rule, kept); });
    }
  }

  void add_taken_off(ForecastLine::What what, std::string label, TakenOff off) {
    Piece piece;
    piece.line.what = what;
    piece.line.label = std::move(label);
    piece.by_day.push_back(std::move(off.odds));
    piece.bound = off.bound;
    piece.lost = off.lost;
    pieces_.push_back(std::move(piece));
  }

  void add_taken_off() {
    if (!risked_.errors.empty()) {
      add_taken_off(ForecastLine::What::sync, "Sync errors", sync_odds(risked_.errors));
    }
    if (!risked_.penalties.empty()) {
      add_taken_off(ForecastLine::What::penalties, "Penalties", penalty_odds(risked_.penalties));
    }
  }

  void tell_errors() {
    told_.errors = risked_.errors;
    const std::size_t runs = runs_with_sync(routine_, wish_.runs);
    if (!routine_.errors.empty()) {
      told_.errors_from = "the sheet";
    } else if (runs > 0) {
      told_.errors_from = std::to_string(runs) + (runs == 1 ? " run" : " runs");
    } else {
      told_.errors_from = "nothing: none expected";
    }
  }

  void tell_lines() {
    for (Piece& piece : pieces_) {
      std::vector<WeighedOdds> days;
      for (std::size_t day = 0; day < told_.days.cases().size(); ++day) {
        days.push_back({told_.days.cases()[day].chance, &piece.on(day)});
      }
      piece.line.points = piece.by_day.size() == 1 ? piece.by_day.front() : mixed(days);
      told_.lines.push_back(piece.line);
    }
  }

  void add_up(const Progress& days_done) {
    std::vector<World> worlds;
    for (std::size_t day = 0; day < told_.days.cases().size(); ++day) {
      worlds.push_back({told_.days.cases()[day].chance, {}});
      for (const Piece& piece : pieces_) worlds.back().pieces.push_back(&piece.on(day));
    }
    told_.total = total_odds(worlds, how_.grid, [&](std::size_t done) {
      if (days_done) days_done(done, worlds.size());
    });
    for (const Piece& piece : pieces_) {
      told_.total->lost += piece.lost;
      told_.total->bound += piece.bound;
    }
  }

  const Routine& routine_;
  const Wish& wish_;
  const ForecastWish& how_;
  const Risked risked_;
  const Spreads spreads_;
  KeptMemory memory_;
  std::vector<Piece> pieces_;
  std::size_t weighted_ = 0;
  Forecast told_;
};

}  // namespace

Forecast forecast(const Routine& routine, const Wish& wish, const ForecastWish& how,
                  const Progress& days_done) {
  return Forecasting(routine, wish, how).run(days_done);
}

ChanceBounds reaches(const TotalOdds& total, Decimal target) {
  return {total.odds.at_least(target), total.odds.at_least(target + total.bound),
          std::min(1.0, total.odds.at_least(target - total.bound) + total.lost)};
}

Against against(const TotalOdds& ours, const TotalOdds& theirs) {
  const Decimal bound = ours.bound + theirs.bound;
  const Chance most = beats_by_more_than(ours.odds, theirs.odds, -bound) + ours.lost + theirs.lost;
  return {
      {beats(ours.odds, theirs.odds), beats_by_more_than(ours.odds, theirs.odds, bound), std::min(1.0, most)},
      equals(ours.odds, theirs.odds)};
}

}  // namespace landdrill
