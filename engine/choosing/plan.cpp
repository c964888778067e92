#include "engine/choosing/plan.h"

#include <algorithm>
#include <cmath>

#include "engine/chances/forecast.h"
#include "engine/chances/obstacle.h"
#include "engine/chances/odds.h"
#include "engine/chances/risk.h"
#include "engine/chances/what_if.h"
#include "engine/choosing/plan_aims.h"
#include "engine/choosing/plan_rooms.h"
#include "engine/choosing/search/choose_best.h"
#include "engine/routine/timing.h"
#include "engine/routine/wish.h"
#include "engine/score/objections.h"
#include "engine/score/score.h"
#include "grammar/diagnostics.h"
#include "tables/binary.h"
#include "tables/decimal.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

Decimal to_the_sixth(Exact value) {
  return round(value, Decimal::places, Rounding::half_up);
}

// A quantile beside what is aimed at.
PlanWish soon_told(PlanWish how) {
  how.aim = PlanWish::For::quantile;
  return how;
}

class Planning {
 public:
  Planning(const Routine& routine, const Wish& wish, const PlanWish& how)
      : routine_(routine),
        wish_(wish),
        how_(how),
        programmes_(routine, wish, how),
        patience_(how.go_on),
        inputs_{routine_, wish_, how_, programmes_, patience_},
        how_for_odds_(soon_told(how)),
        odds_inputs_{routine_, wish_, how_for_odds_, programmes_, patience_} {}

  Plan run() {
    plan_.obstacles = programmes_.obstacles;
    plan_.notes = programmes_.notes;
    look_at_wish();
    look_at_aspects();
    plan_.conflict = programmes_.conflict;
    if (plan_.obstacles.empty() && plan_.conflict.empty()) aim_ = aim_of(inputs_, plan_.obstacles);
    if (!plan_.obstacles.empty()) return only_obstacles();
    plan_.as_written_allowed = programmes_.allowed(written());
    if (!plan_.conflict.empty()) return std::move(plan_);
    if (how_.aim != PlanWish::For::expected && too_many_for_odds(inputs_))
      plan_.notes.push_back("there are too many ways to swim the elements for odds (more than " +
                            std::to_string(most_ways_by_odds) + "): these are the highest expected totals");
    for (const Room& room : programmes_.rooms) plan_.limits.push_back(room.told);
    look_at_odds();
    plan_.as_written = told(written());
    search();
    return std::move(plan_);
  }

 private:
  Plan only_obstacles() {
    Plan plan;
    plan.obstacles = std::move(plan_.obstacles);
    plan.notes = std::move(plan_.notes);
    return plan;
  }

  void look_at_wish() {
    if (how_.aim == PlanWish::For::quantile && !(how_.share > 0 && how_.share < 1)) {
      plan_.obstacles.push_back({Obstacle::Of::share_no_chance});
    }
  }

  // What the whole routine is marked for is the same for every programme, but a total needs it.
  void look_at_aspects() {
    std::vector<std::string> missing;
    for (const ShownAspect& aspect : expected(routine_, wish_for(inputs_, 0)).aspects) {
      if (!aspect.marks) missing.push_back(aspect.rule->aspect);
    }
    if (missing.empty()) return;
    plan_.obstacles.push_back({Obstacle::Of::aspects_unmarked, {.names = missing}});
  }

  // A bad day's total is told beside the expected one, wherever there can be a forecast.
  void look_at_odds() {
    if (how_.aim != PlanWish::For::expected) return;
    Obstacles none;
    odds_ = odds_aim(odds_inputs_, none);
  }

  // Where nothing is left out, the routine is the programme.
  std::optional<PlanChoice> told(const std::vector<std::size_t>& options) const {
    const bool whole = std::find(options.begin(), options.end(), leave_out) == options.end();
    const Wish wish{options, wish_.runs};
    if (whole) return told(options, routine_, wish);
    const Programme programme = programme_of(routine_, wish_, options);
    return told(options, programme.routine, programme.wish);
  }
  std::optional<PlanChoice> told(const std::vector<std::size_t>& options, const Routine& routine,
                                 const Wish& wish) const {
    const std::optional<Exact> total = expected_total(routine, risked(routine, wish));
    if (!total) return std::nullopt;
    PlanChoice choice{options, Points(to_the_sixth(*total)), {}, {}, {}, {}};
    choice.seconds = timing(routine, wish).seconds;
    (odds_ ? odds_ : aim_)->tell(choice);
    return choice;
  }

  // By how much the aim of one choice is above that of another.
  std::optional<Decimal> lead(const PlanChoice& ahead, const PlanChoice& behind) const {
    if (how_.aim == PlanWish::For::quantile) {
      if (!ahead.quantile || !behind.quantile) return std::nullopt;
      return *ahead.quantile - *behind.quantile;
    }
    if (how_.aim == PlanWish::For::target) {
      if (!ahead.reaches || !behind.reaches) return std::nullopt;
      const Chance percent = 100 * (ahead.reaches->chance - behind.reaches->chance);
      return Decimal::from_units(std::llround(percent * Decimal::one));
    }
    return (ahead.total - behind.total).value();
  }
  bool is_ahead(const PlanChoice& one, const PlanChoice& other, Decimal by) const {
    const std::optional<Decimal> ahead = lead(one, other);
    return ahead && *ahead >= by && *ahead > Decimal();
  }

  void tell_leads() {
    const PlanChoice& best = plan_.choices.front();
    for (PlanChoice& choice : plan_.choices) {
      if (&choice != &best) choice.behind = lead(best, choice);
    }
    if (plan_.as_written) plan_.as_written->behind = lead(best, *plan_.as_written);
    if (plan_.highest_total) plan_.highest_total->behind = lead(best, *plan_.highest_total);
  }

  std::vector<std::size_t> written() const {
    std::vector<std::size_t> options = wish_.options;
    options.resize(routine_.elements.size());
    return options;
  }

  Decimal noticed_points(Points total) const {
    return round(Exact(total.value()) * Exact(routine_.set->estimate("noticed-total")), 2, Rounding::half_up);
  }
  std::size_t changes(const PlanChoice& choice) const {
    const std::vector<std::size_t> before = written();
    std::size_t number = 0;
    for (std::size_t i = 0; i < before.size(); ++i) number += choice.options[i] != before[i];
    return number;
  }

  // Of the choices that are as good by the aim as anyone would notice the one of the highest expected total, of equal
  // ones that of the fewest changes; and what is written where even that is no gain that anyone would notice.
  void put_first() {
    const PlanChoice top = plan_.choices.front();
    std::vector<PlanChoice> others = plan_.choices;
    if (plan_.highest_total) others.push_back(*plan_.highest_total);
    if (plan_.as_written && plan_.as_written_allowed) others.push_back(*plan_.as_written);
    PlanChoice first = top;
    for (const PlanChoice& one : others) {
      if (is_ahead(top, one, plan_.noticed)) continue;
      if (one.total > first.total || (one.total == first.total && changes(one) < changes(first))) first = one;
    }
    const Decimal noticed = noticed_points(first.total);
    if (plan_.as_written && plan_.as_written_allowed && !is_ahead(top, *plan_.as_written, plan_.noticed) &&
        (first.total - plan_.as_written->total).value() < noticed)
      first = *plan_.as_written;
    if (first.options == top.options) return;
    std::erase_if(plan_.choices, [&](const PlanChoice& one) { return one.options == first.options; });
    plan_.choices.insert(plan_.choices.begin(), first);
    if (plan_.choices.size() > how_.how_many) plan_.choices.pop_back();
    if (plan_.gap) *plan_.gap += std::max(lead(top, first).value_or(Decimal()), Decimal());
  }

  // Where it is not what is aimed at.
  void tell_highest_total() {
    if (how_.aim == PlanWish::For::expected) return;
    Obstacles none;
    const std::unique_ptr<PlanAim> totals =
        weighting_rules(routine_).empty() ? added_aim(inputs_, none) : weighted_aim(inputs_, none);
    if (!none.empty()) return;
    const AimedBest found = totals->best(programmes_.choosing, 1, {});
    if (!found.best.empty()) plan_.highest_total = told(found.best.front().options);
  }

  void tell_noticed() {
    plan_.noticed = how_.aim == PlanWish::For::target ? routine_.set->estimate("noticed-chance") * 100
                                                      : noticed_points(plan_.choices.front().total);
  }

  void search() {
    const AimedBest found = aim_->best(programmes_.choosing, std::max<std::size_t>(how_.how_many, 1), {});
    plan_.proved = found.proved;
    plan_.not_told_apart = found.not_told_apart;
    plan_.tried = found.tried;
    for (const LimitSide& side : found.conflict) plan_.conflict.push_back(words_of(side));
    for (const AimedProgramme& one : found.best) {
      if (const std::optional<PlanChoice> choice = told(one.options)) plan_.choices.push_back(*choice);
    }
    if (found.best.empty()) {
      if (!found.infeasible) {
        plan_.notes.push_back(found.proved
                                  ? "no programme within the limits has an expected total under these rules"
                                  : "the search was stopped before it found a programme within the limits");
      }
      return;
    }
    const AimedProgramme& best = found.best.front();
    if (!found.proved && found.at_most) plan_.gap = to_the_sixth(*found.at_most - best.value);
    const bool best_is_proved = plan_.proved || plan_.gap == Decimal();
    if (!plan_.choices.empty()) {
      tell_highest_total();
      tell_noticed();
      put_first();
      tell_leads();
    }
    for (std::size_t index = 0; index < plan_.limits.size(); ++index) tell_limit(index, best, best_is_proved);
    if (how_.doubts) tell_doubt();
  }

  void tell_doubt() {
    std::vector<PlanChoice> choices = plan_.choices;
    if (plan_.as_written && plan_.as_written_allowed) choices.push_back(*plan_.as_written);
    plan_.doubt = doubt_of(inputs_, choices);
  }

  std::string words_of(const LimitSide& side) const {
    const Room& room = programmes_.rooms[side.limit];
    const bool both = side.side == LimitSide::Side::chain && room.told.least && room.told.most;
    const bool most =
        side.side == LimitSide::Side::chain ? room.told.most.has_value() : side.side == LimitSide::Side::most;
    return (both ? room.told.words : room.side(most)) + " (" + room.told.from + ")";
  }

  // What one more or one less is worth is worked out beside a proved best alone.
  void tell_limit(std::size_t index, const AimedProgramme& best, bool is_proved) {
    const Decimal unit = Decimal::whole(1);
    PlanLimit& limit = plan_.limits[index];
    limit.used = programmes_.used(programmes_.rooms[index], index, plan_.choices.front().options);
    if (!is_proved) return;
    if (limit.most) limit.one_more = gain(index, limit.least, *limit.most + unit, best);
    if (limit.least) limit.one_less = gain(index, *limit.least - unit, limit.most, best);
  }

  // What the best is better by when one limit is moved.
  std::optional<Points> gain(std::size_t room, std::optional<Decimal> least, std::optional<Decimal> most,
                             const AimedProgramme& best) const {
    if (!how_.limits_worth || patience_.over()) return std::nullopt;
    const AimedBest moved = aim_->best(programmes_.with(room, least, most), 1, best.options);
    if (!moved.proved || moved.best.empty()) return std::nullopt;
    return Points(to_the_sixth(moved.best.front().value - best.value));
  }

  const Routine& routine_;
  const Wish& wish_;
  const PlanWish& how_;
  const Programmes programmes_;
  Patience patience_;
  const AimInputs inputs_;
  const PlanWish how_for_odds_;
  const AimInputs odds_inputs_;
  std::unique_ptr<PlanAim> aim_, odds_;  // odds: beside the expected total
  Plan plan_;
};

}  // namespace

Plan plan(const Routine& routine, const Wish& wish, const PlanWish& how) {
  return Planning(routine, wish, how).run();
}

Diagnostics objections_with(const Routine& routine, const Wish& wish, const PlanChoice& choice,
                            const Diagnostics& of_sheet) {
  const Programme programme = programme_of(routine, wish, choice.options);
  return objections_with(programme.routine, programme.wish, of_sheet);
}

// Points that add up, element by element: the choosing itself, with the expected points as worths.

namespace {

// The least power of ten, at least millionths, of which all points are whole multiples.
std::int64_t parts_of_a_point(const std::vector<std::vector<Exact>>& points) {
  constexpr std::int64_t finest = 100'000'000;
  const auto is_whole = [](Exact value, std::int64_t times) {
    return (value * Exact(Decimal::whole(times))).decimal().has_value();
  };
  std::int64_t times = 1;
  for (const auto& list : points) {
    for (const Exact& one : list) {
      while (times < finest && !is_whole(one, times)) times *= 10;
    }
  }
  return times;
}

class Added : public PlanAim {
 public:
  Added(const AimInputs& inputs, std::vector<std::vector<Exact>> points)
      : inputs_(inputs), points_(std::move(points)), times_(parts_of_a_point(points_)) {}

  AimedBest best(const Choosing& choosing, std::size_t how_many, const std::vector<std::size_t>&) override {
    const BestChoices found = choose_best(priced(choosing), wish(how_many));
    AimedBest result;
    result.proved = found.proved;
    result.infeasible = found.infeasible;
    result.conflict = found.conflict;
    for (const Chosen& chosen : found.best) {
      result.best.push_back({inputs_.programmes.options_of(chosen.choices), value_of(chosen.worth)});
    }
    if (found.at_most) result.at_most = value_of(*found.at_most);
    return result;
  }
  // But for what all programmes have.
  std::optional<double> worth(const std::vector<std::size_t>& options) const override {
    const std::vector<std::size_t> places = inputs_.programmes.places_of(options);
    Exact sum;
    for (std::size_t i = 0; i < places.size(); ++i) sum = sum + points_[i][places[i]];
    return binary(round(sum, Decimal::places, Rounding::half_up));
  }

 private:
  Choosing priced(Choosing choosing) const {
    const Exact times = Exact(Decimal::whole(times_));
    for (std::size_t i = 0; i < points_.size(); ++i) {
      for (std::size_t c = 0; c < points_[i].size(); ++c) {
        // More than fourteen places come of nothing a sheet can say.
        choosing.lists[i][c].worth =
            round(points_[i][c] * times, Decimal::places, Rounding::half_even).units();
      }
    }
    return choosing;
  }
  Exact value_of(std::int64_t worth) const {
    return Exact(Decimal::from_units(worth)) / Exact(Decimal::whole(times_));
  }
  ChooseWish wish(std::size_t how_many) const {
    // The choice tells its nodes from the start; patience wants those that are new.
    auto before = std::make_shared<std::uint64_t>(0);
    return {how_many, [this, before](std::uint64_t nodes) {
              const std::uint64_t more = nodes - std::min(nodes, *before);
              *before = nodes;
              return inputs_.patience.more(more);
            }};
  }

  const AimInputs inputs_;
  const std::vector<std::vector<Exact>> points_;
  const std::int64_t times_;
};

}  // namespace

std::size_t programmes_to_try(const Choosing& choosing, const AimInputs& inputs) {
  constexpr double soon_counted = 1e6;
  double ways = 1;
  for (const auto& list : choosing.lists) ways *= static_cast<double>(list.size());
  return ways > soon_counted ? most_promising : inputs.how.most_programmes + 1;
}

Wish wish_for(const AimInputs& inputs, std::size_t place) {
  Wish wish{{}, inputs.wish.runs};
  for (const auto& list : inputs.programmes.options) {
    std::size_t option = list.empty() ? 0 : list[std::min(place, list.size() - 1)];
    if (option == leave_out) option = list.front();
    wish.options.push_back(option == leave_out ? 0 : option);
  }
  return wish;
}

std::vector<std::vector<Exact>> expected_points(const AimInputs& inputs) {
  std::vector<std::vector<Exact>> points;
  std::size_t most = 0;
  for (const auto& list : inputs.programmes.options) {
    points.emplace_back(list.size());
    most = std::max(most, list.size());
  }
  for (std::size_t place = 0; place < most; ++place) {
    const Risked all = inputs_for(inputs, wish_for(inputs, place)).at_risk;
    for (std::size_t i = 0; i < points.size(); ++i) {
      if (place >= points[i].size() || inputs.programmes.options[i][place] == leave_out) continue;
      const std::optional<RiskedPoints> one = risked_points(inputs.routine, all, i);
      if (one) points[i][place] = one->expected;
    }
  }
  return points;
}

std::unique_ptr<PlanAim> added_aim(const AimInputs& inputs, Obstacles&) {
  return std::make_unique<Added>(inputs, expected_points(inputs));
}

std::unique_ptr<PlanAim> aim_of(const AimInputs& inputs, Obstacles& obstacles) {
  if (inputs.how.aim != PlanWish::For::expected) return odds_aim(inputs, obstacles);
  return weighting_rules(inputs.routine).empty() ? added_aim(inputs, obstacles)
                                                 : weighted_aim(inputs, obstacles);
}

double noticed(const AimInputs& inputs, double total) {
  const ValueSet& set = *inputs.routine.set;
  if (inputs.how.aim == PlanWish::For::target) return binary(set.estimate("noticed-chance"));
  return binary(set.estimate("noticed-total")) * total;
}

Inputs inputs_for(const AimInputs& inputs, const Wish& wish) {
  return inputs_of(inputs.routine, wish, inputs.how.forecast.spreads, inputs.how.forecast.change);
}

}  // namespace landdrill
