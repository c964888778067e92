// How much a plan hangs on numbers that nobody knows well: other inputs, one after another and all of them drawn.
#include <algorithm>
#include <boost/math/special_functions/beta.hpp>
#include <cmath>

#include "engine/chances/obstacle.h"
#include "engine/chances/risk.h"
#include "engine/chances/what_if.h"
#include "engine/choosing/plan_aims.h"
#include "engine/choosing/plan_rooms.h"
#include "engine/choosing/plan_wish.h"
#include "engine/routine/routine.h"
#include "engine/routine/wish.h"
#include "engine/score/execution.h"
#include "engine/score/panel.h"
#include "tables/binary.h"
#include "tables/decimal.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

constexpr std::size_t draws_of_totals = 200, draws_of_odds = 40;
constexpr double alike = 1e-9;  // points or chances

// A fixed sequence: the same draws on every machine, whoever asks for them and in whichever order. The mixing is that of
// SplitMix64 (G. L. Steele, D. Lea, C. H. Flood, Fast splittable pseudorandom number generators, OOPSLA 2014).
class Draw {
 public:
  explicit Draw(std::uint64_t number) : number_(number) {}

  // From 0 to 1, for one use of one option (or of none).
  double share(std::size_t element, std::size_t option, std::uint64_t use) const {
    std::uint64_t bits = mixed(mixed(mixed(mixed(number_) + element) + option) + use);
    return (static_cast<double>(bits >> 11) + 0.5) / 9007199254740992.0;
  }
  // Of a bell curve, as near as the sum of twelve shares is.
  double normal(std::size_t element, std::size_t option, std::uint64_t use) const {
    double sum = -6;
    for (std::uint64_t i = 0; i < 12; ++i) sum += share(element, option, 16 * use + i);
    return sum;
  }

 private:
  static std::uint64_t mixed(std::uint64_t bits) {
    bits += 0x9e3779b97f4a7c15;
    bits = (bits ^ (bits >> 30)) * 0xbf58476d1ce4e5b9;
    bits = (bits ^ (bits >> 27)) * 0x94d049bb133111eb;
    return bits ^ (bits >> 31);
  }
  std::uint64_t number_;
};

Decimal as_decimal(double value) {
  return Decimal::from_units(std::llround(value * static_cast<double>(Decimal::one)));
}

// All that goes in, as it could be as well.
class Drawn {
 public:
  Drawn(const Routine& routine, const Draw& draw) : routine_(routine), draw_(draw) {}

  void operator()(const Wish& wish, Inputs& inputs) const {
    for (std::size_t i = 0; i < routine_.elements.size(); ++i) {
      if (routine_.elements[i].panel == nullptr) continue;
      const std::size_t option = i < wish.options.size() ? wish.options[i] : 0;
      inputs.at_risk.chances[i].percent = percent(inputs.at_risk.chances[i], i, option);
      if (std::optional<KeptMarks>& marks = inputs.at_risk.showing.elements[i].marks)
        marks = mark(*marks, i, option, wish);
    }
    for (Spread& one : inputs.spread.elements) one.marks = scattered(one.marks, 3);
    for (Spread& one : inputs.spread.aspects) one.marks = scattered(one.marks, 3);
    inputs.spread.day.marks = scattered(inputs.spread.day.marks, 4);
  }

 private:
  // The beta distribution that its mean is of, see base_chance.
  Decimal percent(const BaseChance& chance, std::size_t element, std::size_t option) const {
    const double said = binary(chance.said) / 100, weight = binary(chance.weight);
    const double lost = weight * said + static_cast<double>(chance.runs.base);
    const double shown = weight * (1 - said) + static_cast<double>(chance.runs.all - chance.runs.base);
    if (!(lost > 0) || !(shown > 0)) return chance.percent;
    return as_decimal(100 * boost::math::ibeta_inv(lost, shown, draw_.share(element, option, 1)));
  }

  KeptMarks mark(const KeptMarks& expected, std::size_t element, std::size_t option, const Wish& wish) const {
    const PanelRule& rule = *routine_.elements[element].panel;
    const auto runs =
        expected_mark(routine_, element, routine_.elements[element].options[option], wish.runs).runs.size();
    const double width = binary((rule.most - rule.least).value());
    const double off = binary(routine_.set->estimate("expect-off")) * width /
                       std::sqrt(static_cast<double>(std::max<std::size_t>(runs, 1)));
    const Decimal drawn = mean_mark(expected) + as_decimal(off * draw_.normal(element, option, 2));
    return all_giving(rule, std::clamp(Mark(drawn), rule.least, rule.most));
  }

  // A variance over n degrees of freedom scatters as chi-squared / n, here after E. B. Wilson and M. M. Hilferty, The
  // distribution of chi-square, PNAS 17, 1931, 684-688.
  Decimal scattered(Decimal spread, std::uint64_t use) const {
    const double marks = binary(routine_.set->estimate("spread-marks"));
    if (!(marks > 0)) return spread;
    const double part = 2 / (9 * marks), root = 1 - part + draw_.normal(0, 0, use) * std::sqrt(part);
    return as_decimal(binary(spread) * std::pow(std::max(root, 0.1), -1.5));
  }

  const Routine& routine_;
  const Draw draw_;
};

class Doubting {
 public:
  Doubting(const AimInputs& inputs, const std::vector<PlanChoice>& choices)
      : inputs_(inputs), choices_(choices), grid_(grid_of(choices.front().total)) {}

  PlanDoubt run() {
    for (const WhatIf what : what_ifs) {
      if (!matters(what)) continue;
      if (const auto best = best_with(change_to(what))) doubt_.otherwise.push_back({what, *best});
    }
    if (inputs_.how.aim == PlanWish::For::expected) look_for_turns();
    draw();
    return std::move(doubt_);
  }

 private:
  // What makes no difference to what goes in makes none to what comes out.
  bool matters(WhatIf what) const {
    const bool only_totals = inputs_.how.aim == PlanWish::For::expected;
    if (what == WhatIf::base_likelier || what == WhatIf::base_rarer) return may_fall();
    if (only_totals) return false;
    if (what == WhatIf::wider) return true;
    return inputs_for(inputs_, wish_for(inputs_, 0)).spread.day.marks > Decimal();
  }

  bool may_fall() const {
    return std::any_of(choices_.begin(), choices_.end(), [&](const PlanChoice& choice) {
      Wish wish = wish_for(inputs_, 0);
      for (std::size_t i = 0; i < choice.options.size(); ++i)
        if (choice.options[i] != leave_out) wish.options[i] = choice.options[i];
      const std::vector<BaseChance> chances = inputs_for(inputs_, wish).at_risk.chances;
      return std::any_of(chances.begin(), chances.end(), [](const BaseChance& one) {
        return one.percent > Decimal() && one.percent < hundred_percent;
      });
    });
  }

  // Which of the choices is the best with that change; nothing when it has to stop.
  std::optional<std::size_t> best_with(const Change& change) const {
    if (!inputs_.patience.more(choices_.size())) return std::nullopt;
    PlanWish how = inputs_.how;
    how.forecast.change = change;
    how.forecast.grid.grid = grid_;
    const AimInputs inputs{inputs_.routine, inputs_.wish, how, inputs_.programmes, inputs_.patience};
    Obstacles obstacles;
    const std::unique_ptr<PlanAim> aim = aim_of(inputs, obstacles);
    if (!obstacles.empty()) return std::nullopt;
    std::size_t best = 0;
    std::optional<double> most;
    for (std::size_t i = 0; i < choices_.size(); ++i) {
      const std::optional<double> worth = aim->worth(choices_[i].options);
      if (!worth || (most && *worth <= *most + alike)) continue;
      most = worth;
      best = i;
    }
    if (!most) return std::nullopt;
    return best;
  }

  void draw() {
    if (choices_.size() < 2) return;
    const bool only_totals = inputs_.how.aim == PlanWish::For::expected;
    // A forecast for each of them takes too long where elements are weighted together.
    if (!only_totals && !weighting_rules(inputs_.routine).empty()) return;
    doubt_.best.assign(choices_.size(), 0);
    const std::size_t draws = only_totals ? draws_of_totals : draws_of_odds;
    for (; doubt_.draws < draws; ++doubt_.draws) {
      const auto best = best_with(Drawn(inputs_.routine, Draw(doubt_.draws)));
      if (!best) return no_draws();  // as many everywhere, or none
      ++doubt_.best[*best];
    }
  }

  void no_draws() {
    doubt_.draws = 0;
    doubt_.best.clear();
  }

  void look_for_turns() {
    for (std::size_t i = 0; i < inputs_.routine.elements.size(); ++i) {
      const std::size_t option = choices_.front().options[i];
      const auto swum_so = [&](const PlanChoice& one) { return one.options[i] == option; };
      if (option == leave_out || std::all_of(choices_.begin(), choices_.end(), swum_so)) continue;
      if (inputs_.routine.elements[i].panel != nullptr) look_for_turn(i, option);
    }
  }

  void look_for_turn(std::size_t element, std::size_t option) {
    const Element& of = inputs_.routine.elements[element];
    Wish wish = wish_for(inputs_, 0);
    wish.options[element] = option;
    const Inputs here = inputs_for(inputs_, wish);
    PlanDoubt::Turn turn;
    turn.element = element;
    turn.expected = Mark(mean_mark(*here.at_risk.showing.elements[element].marks));
    turn.chance = here.at_risk.chances[element].percent;
    const Mark step(of.panel->step);
    const std::int64_t down = (turn.expected - of.panel->least).value().units() / step.value().units();
    const auto turned = first_of(down, [&](std::int64_t steps) {
      return [=](const Wish& with, Inputs& inputs) {
        if (with.options[element] != option) return;
        inputs.at_risk.showing.elements[element].marks = all_giving(*of.panel, turn.expected - step * steps);
      };
    });
    if (turned) turn.at_mark = turn.expected - step * *turned;
    const std::int64_t chance = turn.chance.units() / Decimal::one;
    if (of.kind->base && of.panel->use != Use::plain) {
      const auto likelier = first_of(100 - chance, [&](std::int64_t more) {
        return [=](const Wish& with, Inputs& inputs) {
          if (with.options[element] == option)
            inputs.at_risk.chances[element].percent = Decimal::whole(chance + more);
        };
      });
      if (likelier) turn.at_chance = Decimal::whole(chance + *likelier);
    }
    doubt_.turns.push_back(turn);
  }

  // The least number from 1 to `most` at which the first choice is no longer the best; nothing where there is none.
  template <class ChangeBy>
  std::optional<std::int64_t> first_of(std::int64_t most, const ChangeBy& change_by) const {
    const auto turned = [&](std::int64_t by) { return best_with(change_by(by)).value_or(0) != 0; };
    if (most < 1 || !turned(most)) return std::nullopt;
    std::int64_t stays = 0, turns = most;
    while (turns - stays > 1) {
      const std::int64_t middle = (stays + turns) / 2;
      (turned(middle) ? turns : stays) = middle;
    }
    return turns;
  }

  // Coarse, since only which is best is asked for: a few hundred points in all.
  static Decimal grid_of(Points total) {
    return std::max(round(Exact(total.value()) / Exact(Decimal::whole(2000)), 3, Rounding::half_up),
                    Decimal::from_units(1000));
  }

  const AimInputs& inputs_;
  const std::vector<PlanChoice>& choices_;
  const Decimal grid_;
  PlanDoubt doubt_;
};

}  // namespace

PlanDoubt doubt_of(const AimInputs& inputs, const std::vector<PlanChoice>& choices) {
  return Doubting(inputs, choices).run();
}

}  // namespace landdrill
