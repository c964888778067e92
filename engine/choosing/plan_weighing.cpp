#include "engine/choosing/plan_weighing.h"

#include <algorithm>

#include "engine/chances/risk.h"
#include "engine/choosing/plan_rooms.h"
#include "tables/decimal.h"

namespace landdrill {
namespace {

WeighingWay credited_way(std::size_t rule, const TogetherElement& element) {
  WeighingWay way;
  way.rule = rule;
  way.together = element;
  const Exact declared(element.declared.value());
  const Exact share = as_share(element.percent), certain(Decimal::whole(1)),
              lost = declared - Exact(element.base.value());
  way.credited = declared - share * lost;
  way.variance = Exact(round(share * (certain - share) * lost * lost, Decimal::places, Rounding::up));
  return way;
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
  is_mixed_ |= rules_.size() > 1 || rules_.front()->weight->value() <= Decimal();
}

void Weighing::add_ways(const AimInputs& inputs) {
  std::size_t most = 0;
  for (const auto& list : ways_) most = std::max(most, list.size());
  for (std::size_t place = 0; place < most; ++place) {
    const Risked all = risked(inputs.routine, wish_for(inputs, place));
    for (std::size_t i = 0; i < ways_.size(); ++i) {
      if (place >= ways_[i].size() || inputs.programmes.options[i][place] == leave_out) continue;
      WeighingWay& way = ways_[i][place];
      const auto at = std::find(rules_.begin(), rules_.end(), inputs.routine.elements[i].panel);
      if (at != rules_.end()) {
        way = credited_way(static_cast<std::size_t>(at - rules_.begin()),
                           *together_element(inputs.routine, all, i));
      } else if (const auto points = risked_points(inputs.routine, all, i)) {
        way.own = points->expected;
        is_mixed_ |= !way.own.is_zero();
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

std::int64_t Weighing::credited(std::size_t rule, std::size_t element, std::size_t choice) const {
  const WeighingWay& way = ways_[element][choice];
  return way.rule == rule ? round(way.credited, Decimal::places, Rounding::down).units() : 0;
}

}  // namespace landdrill
