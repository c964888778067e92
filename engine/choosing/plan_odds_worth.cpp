#include "engine/choosing/plan_odds_worth.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "engine/chances/forecast.h"
#include "engine/chances/obstacle.h"
#include "engine/chances/odds.h"
#include "engine/chances/risk.h"
#include "engine/chances/total_odds.h"
#include "engine/choosing/plan_aims.h"
#include "engine/choosing/plan_reach.h"
#include "engine/choosing/plan_rooms.h"
#include "engine/choosing/plan_wish.h"
#include "engine/score/panel.h"
#include "tables/binary.h"
#include "tables/decimal.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

using Choices = std::vector<std::size_t>;

Exact per_cent_of(Chance chance) {
  return Exact(Decimal::from_units(std::llround(chance * 100 * Decimal::one)));
}

Weighed weighed(const Choices& choices, const TotalOdds& total, const PlanWish& how) {
  Weighed result{choices};
  result.quantile = total.odds.quantile(how.share);
  if (how.aim != PlanWish::For::target) {
    const double off = binary(total.bound);
    result.value = binary(*result.quantile);
    result.least = result.value - off;
    result.most = result.value + off;
    result.exact = Exact(*result.quantile);
    return result;
  }
  result.reaches = reaches(total, how.target);
  result.value = result.reaches->chance;
  result.least = result.reaches->least - last_bits;
  result.most = result.reaches->most + last_bits;
  result.exact = per_cent_of(result.value);
  return result;
}

// Elements by themselves: what they give is added up on one grid.
class ByPieces : public OddsWorth {
 public:
  ByPieces(const AimInputs& inputs, Pieces pieces)
      : how_(inputs.how), pieces_(std::move(pieces)), reach_(pieces_, coarse_step()) {}

  Weighed coarsely(const Choices& choices) const override {
    Weighed result{choices};
    const Decimal off = reach_.bound(), target = how_.target;
    result.quantile = reach_.missed(choices, how_.share);
    if (how_.aim != PlanWish::For::target) {
      result.value = binary(*result.quantile);
      result.least = result.value - binary(off);
      result.most = result.value + binary(off);
      result.exact = Exact(*result.quantile);
      return result;
    }
    result.value = reach_.often(choices, target);
    result.least = reach_.often(choices, target + off) - last_bits;
    result.most = reach_.often(choices, target - off) + last_bits;
    result.reaches = {result.value, result.least, result.most};
    result.exact = per_cent_of(result.value);
    return result;
  }
  Weighed finely(const Choices& choices) const override {
    const auto [known, is_new] = known_.try_emplace(choices);
    if (is_new) known->second = weighed(choices, pieces_.total(choices, how_.forecast.grid), how_);
    return known->second;
  }
  // Far sooner done than weighing it.
  bool may_be_worth(const Choices& choices, double value) const override {
    const bool reaching = how_.aim == PlanWish::For::target;
    const Decimal total = reaching ? how_.target : decimal_below(value);
    return reach_.often(choices, total - reach_.bound()) >= (reaching ? value : 1 - how_.share) - last_bits;
  }
  double highest() const override {
    if (how_.aim == PlanWish::For::target) return reach_.often(reach_.ideal(), how_.target - reach_.bound());
    return binary(reach_.missed(reach_.ideal(), how_.share) + reach_.bound());
  }

 private:
  // So coarse that thousands of programmes are soon looked into.
  GridStep coarse_step() const {
    GridWish wish = how_.forecast.grid;
    wish.work = std::min<std::int64_t>(wish.work, 10'000'000);
    return pieces_.step_for(Choices(pieces_.choices.size()), wish);
  }
  static Decimal decimal_below(double points) {
    return Decimal::from_units(static_cast<std::int64_t>(std::floor(points * Decimal::one)));
  }

  const PlanWish& how_;
  const Pieces pieces_;
  const Reach reach_;
  mutable std::map<Choices, Weighed> known_;
};

// Elements weighted by difficulty together: a forecast a programme.
class ByForecasts : public OddsWorth {
 public:
  explicit ByForecasts(const AimInputs& inputs) : inputs_(inputs) {}

  Weighed coarsely(const Choices& choices) const override {
    GridWish few = inputs_.how.forecast.grid;
    few.work = std::min<std::int64_t>(few.work, 1'000'000);
    few.states = 5'000;
    return foretold(choices, few, coarse_);
  }
  Weighed finely(const Choices& choices) const override {
    return foretold(choices, inputs_.how.forecast.grid, fine_);
  }
  bool may_be_worth(const Choices& choices, double value) const override {
    return coarsely(choices).most >= value;
  }
  // A chance is 100 % at most, and a total what the highest marks everywhere would give.
  double highest() const override {
    if (inputs_.how.aim == PlanWish::For::target) return 1;
    Exact sum;
    for (const PanelRule* rule : inputs_.routine.aspects)
      sum = sum + Exact(plain_points(*rule, top(*rule)).value());
    for (const PanelRule* rule : weighting_rules(inputs_.routine)) {
      const Difficulty one(Decimal::whole(1));
      sum = sum + Exact(weighted_points(*rule, combined(*rule, top(*rule)), one).value());
    }
    for (std::size_t i = 0; i < inputs_.routine.elements.size(); ++i) sum = sum + highest_own(i);
    return binary(round(sum, Decimal::places, Rounding::half_up));
  }

 private:
  using Known = std::map<Choices, Weighed>;

  static KeptMarks top(const PanelRule& rule) { return all_giving(rule, rule.most); }
  Exact highest_own(std::size_t element) const {
    const Element& of = inputs_.routine.elements[element];
    Exact highest;
    if (of.panel == nullptr || of.panel->use == Use::weighted) return highest;
    for (const std::size_t option : inputs_.programmes.options[element]) {
      if (option == leave_out) continue;
      const Difficulty declared = *of.options[option].declared;
      const Difficulty credited = std::max(declared, of.kind->base.value_or(declared));
      const Points points = of.panel->use == Use::plain ? plain_points(*of.panel, top(*of.panel))
                                                        : element_points(*of.panel, top(*of.panel), credited);
      highest = std::max(highest, Exact(points.value()));
    }
    return highest;
  }

  Weighed foretold(const Choices& choices, const GridWish& grid, Known& known) const {
    const auto [at, is_new] = known.try_emplace(choices, Weighed{choices});
    if (!is_new) return at->second;
    const Programme programme =
        programme_of(inputs_.routine, inputs_.wish, inputs_.programmes.options_of(choices));
    ForecastWish wish = inputs_.how.forecast;
    wish.grid = grid;
    const Forecast told = forecast(programme.routine, programme.wish, wish);
    if (told.total) at->second = weighed(choices, *told.total, inputs_.how);
    return at->second;
  }

  const AimInputs inputs_;
  mutable Known coarse_, fine_;
};

}  // namespace

std::unique_ptr<OddsWorth> odds_worth(const AimInputs& inputs, Obstacles& obstacles) {
  if (weighting_rules(inputs.routine).empty()) {
    Pieces pieces = pieces_of(inputs, obstacles);
    if (!obstacles.empty()) return nullptr;
    return std::make_unique<ByPieces>(inputs, std::move(pieces));
  }
  ForecastWish coarse = inputs.how.forecast;
  coarse.grid.grid = Decimal::whole(10);
  coarse.grid.states = 1'000;
  obstacles = forecast(inputs.routine, wish_for(inputs, 0), coarse).obstacles;
  if (!obstacles.empty()) return nullptr;
  return std::make_unique<ByForecasts>(inputs);
}

}  // namespace landdrill
