// Where elements are weighted by difficulty together, no element has points of its own: programme by programme is
// worked out, all of them, or the most promising; by odds as by expected total (plan_weighing.h).
#include <algorithm>
#include <cmath>

#include "engine/chances/forecast.h"
#include "engine/chances/obstacle.h"
#include "engine/chances/odds.h"
#include "engine/chances/risk.h"
#include "engine/choosing/plan_aims.h"
#include "engine/choosing/plan_rooms.h"
#include "engine/choosing/plan_weighing.h"
#include "engine/choosing/plan_wish.h"
#include "engine/choosing/search/choose_best.h"
#include "engine/choosing/worth.h"
#include "engine/routine/wish.h"
#include "engine/score/panel.h"
#include "tables/decimal.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

class WeightedExpected : public PlanAim {
 public:
  explicit WeightedExpected(const AimInputs& inputs) : weighing_(inputs), search_(weighing_, inputs) {}

  AimedBest best(const Choosing& choosing, std::size_t how_many, const std::vector<std::size_t>&) override {
    return search_.best(choosing, how_many);
  }

 private:
  const Weighing weighing_;
  WeightedSearch search_;
};

// By odds, programme after programme, those with the highest expected totals first: all within the limits where
// they are few, else the most promising, and then whatever differs from the best in one element.
class WeightedForecasts : public PlanAim {
 public:
  explicit WeightedForecasts(const AimInputs& inputs)
      : inputs_(inputs), weighing_(inputs), search_(weighing_, inputs) {}

  AimedBest best(const Choosing& choosing, std::size_t how_many, const std::vector<std::size_t>&) override {
    const AimedBest by_total = search_.best(choosing, most_weighted_forecasts + 1);
    if (by_total.best.empty()) return by_total;
    choosing_ = &choosing;
    how_many_ = how_many;
    forecasts_ = 0;
    best_ = {};
    best_.proved = by_total.proved && by_total.best.size() <= most_weighted_forecasts;
    const std::size_t few = best_.proved ? by_total.best.size() : most_weighted_forecasts / 4;
    for (std::size_t i = 0; i < std::min(few, by_total.best.size()); ++i)
      weigh(choices_of(by_total.best[i].options));
    while (!best_.proved && !best_.best.empty() && try_around(choices_of(best_.best.front().options))) {
    }
    best_.proved &= !stopped_;
    if (!best_.proved) best_.at_most = highest();
    best_.tried = stopped_ ? 0 : forecasts_;
    return std::move(best_);
  }

  void tell(PlanChoice& choice) const override {
    const Programme programme = programme_of(inputs_.routine, inputs_.wish, choice.options);
    const Forecast told = forecast(programme.routine, programme.wish, inputs_.how.forecast);
    if (!told.total) return;
    if (inputs_.how.aim == PlanWish::For::quantile) {
      choice.quantile = told.total->odds.quantile(inputs_.how.share);
    } else {
      choice.reaches = reaches(*told.total, inputs_.how.target);
    }
  }

 private:
  // Whether something better is found.
  bool try_around(const std::vector<std::size_t>& middle) {
    bool better = false;
    for (std::size_t i = 0; i < middle.size(); ++i) {
      for (std::size_t c = 0; c < inputs_.programmes.options[i].size(); ++c) {
        std::vector<std::size_t> choices = middle;
        choices[i] = c;
        if (c == middle[i] || known_.contains(choices) || !meets(*choosing_, choices)) continue;
        if (forecasts_ == most_weighted_forecasts) return false;
        weigh(choices);
        better |= choices_of(best_.best.front().options) == choices;
      }
    }
    return better && !stopped_;
  }

  std::vector<std::size_t> choices_of(const std::vector<std::size_t>& options) const {
    std::vector<std::size_t> choices;
    for (std::size_t i = 0; i < options.size(); ++i) {
      const std::vector<std::size_t>& list = inputs_.programmes.options[i];
      choices.push_back(
          static_cast<std::size_t>(std::find(list.begin(), list.end(), options[i]) - list.begin()));
    }
    return choices;
  }

  // Equal ones: earlier choices first.
  void weigh(const std::vector<std::size_t>& choices) {
    stopped_ = stopped_ || !inputs_.patience.more(1);
    // Whoever has to stop tells the first all the same.
    if (stopped_ && !best_.best.empty()) return;
    const auto [known, is_new] = known_.try_emplace(choices);
    if (is_new) {
      ++forecasts_;
      known->second = value_of(inputs_.programmes.options_of(choices));
    }
    const std::optional<Exact>& value = known->second;
    if (!value) return;
    std::vector<AimedProgramme>& best = best_.best;
    const auto place = std::find_if(best.begin(), best.end(), [&](const AimedProgramme& one) {
      return *value != one.value ? *value > one.value : choices < choices_of(one.options);
    });
    best.insert(place, {inputs_.programmes.options_of(choices), *value});
    if (best.size() > how_many_) best.pop_back();
  }

  std::optional<Exact> value_of(const std::vector<std::size_t>& options) const {
    const Programme programme = programme_of(inputs_.routine, inputs_.wish, options);
    const Forecast told = forecast(programme.routine, programme.wish, inputs_.how.forecast);
    if (!told.total) return std::nullopt;
    if (inputs_.how.aim == PlanWish::For::quantile)
      return Exact(told.total->odds.quantile(inputs_.how.share));
    const Chance chance = reaches(*told.total, inputs_.how.target).chance;
    return Exact(Decimal::from_units(std::llround(chance * 100 * Decimal::one)));
  }

  // A chance is 100 % at most, and a total what the highest marks everywhere would give.
  Exact highest() const {
    if (inputs_.how.aim == PlanWish::For::target) return Exact(Decimal::whole(100));
    Exact sum;
    const auto top = [](const PanelRule& rule) { return all_giving(rule, rule.most); };
    for (const PanelRule* rule : inputs_.routine.aspects)
      sum = sum + Exact(plain_points(*rule, top(*rule)).value());
    for (const PanelRule* rule : weighing_.rules()) {
      const Difficulty one(Decimal::whole(1));
      sum = sum + Exact(weighted_points(*rule, combined(*rule, top(*rule)), one).value());
    }
    for (std::size_t i = 0; i < weighing_.ways().size(); ++i) sum = sum + highest_own(i);
    return sum;
  }
  Exact highest_own(std::size_t element) const {
    const Element& of = inputs_.routine.elements[element];
    Exact highest;
    if (of.panel == nullptr || of.panel->use == Use::weighted) return highest;
    const KeptMarks top = all_giving(*of.panel, of.panel->most);
    for (const std::size_t option : inputs_.programmes.options[element]) {
      if (option == leave_out) continue;
      const Difficulty declared = *of.options[option].declared;
      const Difficulty credited = std::max(declared, of.kind->base.value_or(declared));
      const Points points = of.panel->use == Use::plain ? plain_points(*of.panel, top)
                                                        : element_points(*of.panel, top, credited);
      highest = std::max(highest, Exact(points.value()));
    }
    return highest;
  }

  const AimInputs inputs_;
  const Weighing weighing_;
  WeightedSearch search_;
  std::map<std::vector<std::size_t>, std::optional<Exact>> known_;
  // Of the choosing that is looked at.
  const Choosing* choosing_ = nullptr;
  std::size_t how_many_ = 1, forecasts_ = 0;
  AimedBest best_;
  bool stopped_ = false;
};

// Whether what is credited under a rule can be above 0 whatever falls to its base mark, with few enough that
// may fall.
bool can_have_points(const Weighing& weighing, std::size_t rule) {
  int risky = 0;
  bool any = false, spared = true;
  for (const auto& list : weighing.ways()) {
    bool safe = false, other = false;
    for (const WeighingWay& way : list) {
      const TogetherElement& element = way.together;
      other |= way.rule != rule;
      safe |= way.rule != rule || !element.risky();
      any |= way.rule == rule && !way.credited.is_zero() && (!element.risky() || element.base > Difficulty());
    }
    risky += safe ? 0 : 1;
    spared &= other;
  }
  return spared || (any && risky <= most_risky);
}

}  // namespace

std::unique_ptr<PlanAim> weighted_aim(const AimInputs& inputs, Obstacles& obstacles) {
  const Weighing weighing(inputs);
  const Wish first = wish_for(inputs, 0);
  for (std::size_t rule = 0; rule < weighing.rules().size(); ++rule) {
    if (can_have_points(weighing, rule)) continue;
    obstacles.push_back(no_total(inputs.routine, risked(inputs.routine, first)));
    return nullptr;
  }
  if (inputs.how.aim == PlanWish::For::expected) return std::make_unique<WeightedExpected>(inputs);
  ForecastWish coarse = inputs.how.forecast;
  coarse.grid.grid = Decimal::whole(10);
  obstacles = forecast(inputs.routine, first, coarse).obstacles;
  if (!obstacles.empty()) return nullptr;
  return std::make_unique<WeightedForecasts>(inputs);
}

}  // namespace landdrill
