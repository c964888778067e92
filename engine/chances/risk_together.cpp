// Base marks under a rule that weights by difficulty: every way in which they can fall, each with its chance.
#include "engine/chances/risk_together.h"

#include <algorithm>
#include <numeric>

#include "engine/score/score.h"
#include "tables/decimal.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

// A chance as a fraction of small whole numbers: 12 % is 3 of 25.
struct Share {
  std::int64_t part, of;
};
Share share_of(Decimal percent) {
  const std::int64_t common = std::gcd(percent.units(), hundred_percent.units());
  return {percent.units() / common, hundred_percent.units() / common};
}

}  // namespace

void Together::add(const TogetherElement& element) {
  known_.clear();
  if (element.risky() && ++risky_ > most_risky) return;
  const auto credit = [&](Way& way, Difficulty credited) {
    way.merit = way.merit + element.mark * Exact(credited.value());
    way.difficulty += credited;
  };
  if (!element.risky()) {
    for (Way& way : ways_) credit(way, element.percent == hundred_percent ? element.base : element.declared);
    return;
  }
  const Share share = share_of(element.percent);
  whole_ *= share.of;
  const std::size_t before = ways_.size();
  ways_.reserve(2 * before);
  for (std::size_t i = 0; i < before; ++i) {
    Way base = ways_[i];
    credit(base, element.base);
    base.weight *= share.part;
    credit(ways_[i], element.declared);
    ways_[i].weight *= share.of - share.part;
    ways_.push_back(std::move(base));
  }
}

std::optional<Exact> Together::expected() {
  if (risky_ > most_risky) return std::nullopt;
  const Sum& sum = sum_with(Exact(), Difficulty());
  if (!sum) return std::nullopt;
  return twelve_places(*sum, whole_);
}

std::optional<Exact> Together::expected(const TogetherElement& more) {
  if (risky_ + (more.risky() ? 1 : 0) > most_risky) return std::nullopt;
  const Share share = share_of(more.percent);
  Wide all = 0;
  for (const auto& [credited, part] :
       {std::pair(more.declared, share.of - share.part), std::pair(more.base, share.part)}) {
    if (part == 0) continue;
    const Sum& sum = sum_with(more.mark, credited);
    if (!sum) return std::nullopt;
    all += *sum * part;
  }
  return twelve_places(all, whole_ * share.of);
}

const Together::Sum& Together::sum_with(Exact mark, Difficulty credited) {
  const auto [known, is_new] = known_.try_emplace({mark, credited});
  if (!is_new) return known->second;
  const Exact more = mark * Exact(credited.value());
  Wide sum = 0;
  for (const Way& way : ways_) {
    const Difficulty difficulty = way.difficulty + credited;
    if (difficulty == Difficulty()) return known->second;
    sum += way.weight * weighted_points(*rule_, way.merit + more, difficulty).value().units();
  }
  known->second = std::move(sum);
  return known->second;
}

// Two Decimals that add up: the value above and below the sixth place.
Exact Together::twelve_places(const Wide& numerator, const Wide& denominator) {
  const bool negative = numerator < 0;
  const Wide rounded = (2 * abs(numerator) * Decimal::one + denominator) / (2 * denominator);
  const auto above = static_cast<std::int64_t>(Wide(rounded / Decimal::one));
  const auto below = static_cast<std::int64_t>(Wide(rounded % Decimal::one));
  const Exact size =
      Exact(Decimal::from_units(above)) +
      Exact(Decimal::from_units(below)) / Exact(Decimal::from_units(Decimal::one * Decimal::one));
  return negative ? Exact() - size : size;
}

std::vector<const PanelRule*> weighting_rules(const Routine& routine) {
  std::vector<const PanelRule*> rules;
  for (const Element& element : routine.elements) {
    if (element.panel == nullptr || element.panel->use != Use::weighted) continue;
    if (std::find(rules.begin(), rules.end(), element.panel) == rules.end()) rules.push_back(element.panel);
  }
  return rules;
}

std::optional<TogetherElement> together_element(const Routine& routine, const Risked& risked,
                                                std::size_t element) {
  const ShownElement& shown = risked.showing.elements[element];
  if (!shown.marks) return std::nullopt;
  const Element& of = routine.elements[element];
  return TogetherElement{combined(*of.panel, *shown.marks), shown.declared,
                         of.kind->base.value_or(shown.declared), risked.chances[element].percent};
}

std::optional<Exact> risked_together(const Routine& routine, const Risked& risked, const PanelRule& rule) {
  Together together(rule);
  for (std::size_t i = 0; i < routine.elements.size(); ++i) {
    if (routine.elements[i].panel != &rule) continue;
    const std::optional<TogetherElement> element = together_element(routine, risked, i);
    if (!element) return std::nullopt;
    together.add(*element);
  }
  return together.expected();
}

std::optional<Together> weighted_beside(const Routine& routine, const Risked& risked, std::size_t element) {
  const PanelRule* rule = routine.elements[element].panel;
  Together together(*rule);
  for (std::size_t i = 0; i < routine.elements.size(); ++i) {
    if (i == element || routine.elements[i].panel != rule) continue;
    const std::optional<TogetherElement> other = together_element(routine, risked, i);
    if (!other) return std::nullopt;
    together.add(*other);
  }
  return together;
}

}  // namespace landdrill
