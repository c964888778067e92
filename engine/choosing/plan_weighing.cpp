#include "engine/choosing/plan_weighing.h"

#include <algorithm>

#include "engine/chances/risk.h"
#include "engine/choosing/plan_aims.h"
#include "engine/choosing/plan_rooms.h"
#include "engine/choosing/search/choose_best.h"
#include "engine/score/panel.h"
#include "tables/decimal.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

WeighingWay credited_way(std::size_t rule, const TogetherElement& element) {
  WeighingWay way;
  way.rule = rule;
  way.together = element;
  const Exact declared(element.declared.value());
  way.credited = declared - as_share(element.percent) * (declared - Exact(element.base.value()));
  return way;
}

Exact sixth(Exact value) {
  return Exact(round(value, Decimal::places, Rounding::half_up));
}

}  // namespace

Weighing::Weighing(const AimInputs& inputs) : rules_(weighting_rules(inputs.routine)) {
  const std::vector<std::size_t> nothing(inputs.routine.elements.size(), leave_out);
  const Programme bare = programme_of(inputs.routine, inputs.wish, nothing);
  fixed_ = expected_total(bare.routine, risked(bare.routine, bare.wish)).value_or(Exact());
  for (const auto& list : inputs.programmes.options) {
    ways_.emplace_back(list.size());
    for (WeighingWay& way : ways_.back()) way.rule = rules_.size();
  }
  add_ways(inputs);
}

void Weighing::add_ways(const AimInputs& inputs) {
  std::size_t most = 0;
  for (const auto& list : ways_) most = std::max(most, list.size());
  for (std::size_t place = 0; place < most; ++place) {
    const Risked all = inputs_for(inputs, wish_for(inputs, place)).at_risk;
    for (std::size_t i = 0; i < ways_.size(); ++i) {
      if (place >= ways_[i].size() || inputs.programmes.options[i][place] == leave_out) continue;
      WeighingWay& way = ways_[i][place];
      const auto at = std::find(rules_.begin(), rules_.end(), inputs.routine.elements[i].panel);
      if (at != rules_.end()) {
        way = credited_way(static_cast<std::size_t>(at - rules_.begin()),
                           *together_element(inputs.routine, all, i));
      } else if (const auto points = risked_points(inputs.routine, all, i)) {
        way.own = points->expected;
      }
    }
  }
}

std::optional<Exact> Weighing::value(const std::vector<std::size_t>& choices) const {
  Exact total = fixed_;
  std::vector<std::optional<Together>> together(rules_.size());
  for (std::size_t i = 0; i < choices.size(); ++i) {
    const WeighingWay& way = ways_[i][choices[i]];
    total = total + way.own;
    if (way.rule == rules_.size()) continue;
    if (!together[way.rule]) together[way.rule].emplace(*rules_[way.rule]);
    together[way.rule]->add(way.together);
  }
  for (std::optional<Together>& one : together) {
    if (!one) continue;
    const std::optional<Exact> points = one->expected();
    if (!points) return std::nullopt;
    total = total + *points;
  }
  return total;
}

Exact Weighing::highest() const {
  Exact sum = fixed_;
  for (std::size_t rule = 0; rule < rules_.size(); ++rule) sum = sum + highest_of(rule);
  for (const auto& list : ways_) {
    const auto most = std::max_element(
        list.begin(), list.end(), [](const WeighingWay& a, const WeighingWay& b) { return a.own < b.own; });
    if (most != list.end()) sum = sum + most->own;
  }
  return sum;
}

// No quotient is beyond the marks that it is of; without any element it is nothing.
Exact Weighing::highest_of(std::size_t rule) const {
  Exact highest;
  for (const auto& list : ways_) {
    for (const WeighingWay& way : list) {
      if (way.rule != rule) continue;
      const Points alone = weighted_points(*rules_[rule], way.together.mark, Difficulty(Decimal::whole(1)));
      highest = std::max(highest, Exact(alone.value()));
    }
  }
  return highest;
}

// A quotient grows by what is credited times how far its mark is above the quotient (W. Dinkelbach, On nonlinear
// fractional programming, Management Science 13, 1967, 492-498).
std::vector<std::vector<std::int64_t>> Weighing::worths_near(const std::vector<std::size_t>& choices) const {
  std::vector<Exact> merits(rules_.size()), credits(rules_.size());
  for (std::size_t i = 0; i < choices.size(); ++i) {
    const WeighingWay& way = ways_[i][choices[i]];
    if (way.rule == rules_.size()) continue;
    merits[way.rule] = merits[way.rule] + way.credited * way.together.mark;
    credits[way.rule] = credits[way.rule] + way.credited;
  }
  std::vector<std::vector<std::int64_t>> worths;
  for (const auto& list : ways_) {
    auto& here = worths.emplace_back();
    for (const WeighingWay& way : list) {
      Exact worth = way.own;
      if (way.rule < rules_.size() && !credits[way.rule].is_zero()) {
        const Exact above = sixth(way.together.mark - merits[way.rule] / credits[way.rule]);
        worth = worth +
                sixth(way.credited * above / credits[way.rule]) * Exact(rules_[way.rule]->weight->value());
      }
      here.push_back(round(worth, Decimal::places, Rounding::half_up).units());
    }
  }
  return worths;
}

AimedBest WeightedSearch::best(const Choosing& choosing, std::size_t how_many) {
  how_many_ = how_many;
  tried_ = 0;
  best_.clear();
  const std::size_t most = programmes_to_try(choosing, inputs_);
  std::vector<std::size_t> near(choosing.lists.size());
  AimedBest result;
  for (bool better = true; better;) {
    Choosing here = choosing;
    const auto worths = weighing_.worths_near(near);
    for (std::size_t i = 0; i < worths.size(); ++i) {
      for (std::size_t c = 0; c < worths[i].size(); ++c) here.lists[i][c].worth = worths[i][c];
    }
    const BestChoices found = chosen(here, std::max(most, how_many));
    result.infeasible = found.infeasible;
    result.conflict = found.conflict;
    result.proved = found.proved && found.best.size() < most;
    better = work_out(found.best) && !result.proved && !inputs_.patience.over();
    if (better) near = best_.front().choices;
  }
  result.proved = result.proved && !inputs_.patience.over();
  for (const Worked& one : best_)
    result.best.push_back({inputs_.programmes.options_of(one.choices), one.value});
  if (!result.proved) {
    result.at_most = weighing_.highest();
    result.tried = inputs_.patience.over() ? 0 : tried_;
  }
  return result;
}

BestChoices WeightedSearch::chosen(const Choosing& choosing, std::size_t how_many) const {
  std::uint64_t before = 0;
  return choose_best(choosing, {how_many, [&](std::uint64_t nodes) {
                                  const std::uint64_t more = nodes - std::min(nodes, before);
                                  before = nodes;
                                  return inputs_.patience.more(more);
                                }});
}

// Whether one of them is better than any before.
bool WeightedSearch::work_out(const std::vector<Chosen>& found) {
  bool better = false;
  for (const Chosen& one : found) {
    // Whoever has to stop tells the first all the same.
    if (!inputs_.patience.more(1) && !best_.empty()) break;
    const auto [known, is_new] = known_.try_emplace(one.choices);
    if (is_new) known->second = weighing_.value(one.choices);
    ++tried_;
    if (known->second) better |= keep(one.choices, *known->second);
  }
  return better;
}

bool WeightedSearch::keep(const std::vector<std::size_t>& choices, Exact value) {
  const auto is_before = [](const Worked& a, const Worked& b) {
    return a.value != b.value ? a.value > b.value : a.choices < b.choices;
  };
  Worked worked{choices, value};
  const auto place = std::upper_bound(best_.begin(), best_.end(), worked, is_before);
  if (place != best_.begin() && (place - 1)->choices == choices) return false;
  const bool is_best = place == best_.begin();
  best_.insert(place, std::move(worked));
  if (best_.size() > how_many_) best_.pop_back();
  return is_best;
}

}  // namespace landdrill
