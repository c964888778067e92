// Base marks under a rule that weights by difficulty: every way in which they can fall, each with its chance.
#include <algorithm>
#include <boost/multiprecision/cpp_int.hpp>

#include "engine/risk.h"

namespace landdrill {
namespace {

using boost::multiprecision::cpp_int;

const Decimal hundred = Decimal::whole(100);

// Two Decimals that add up: the value above and below the sixth place.
Exact twelve_places(const cpp_int& numerator, const cpp_int& denominator) {
  const bool negative = numerator < 0;
  const cpp_int rounded =
      (2 * abs(numerator) * Decimal::one * Decimal::one + denominator) / (2 * denominator);
  const auto above = static_cast<std::int64_t>(cpp_int(rounded / Decimal::one));
  const auto below = static_cast<std::int64_t>(cpp_int(rounded % Decimal::one));
  const Exact size =
      Exact(Decimal::from_units(above)) +
      Exact(Decimal::from_units(below)) / Exact(Decimal::from_units(Decimal::one * Decimal::one));
  return negative ? Exact() - size : size;
}

// One element whose base mark is neither certain nor out of the question.
struct Uncertain {
  Exact declared_merit, base_merit;
  Difficulty declared, base;
  std::int64_t percent = 0;  // in millionths
};

class Together {
 public:
  explicit Together(const PanelRule& rule) : rule_(rule) {}

  void add(const ShownElement& shown, const std::optional<Difficulty>& base, Decimal percent) {
    const Exact mark = combined(rule_, *shown.marks);
    if (percent == Decimal() || percent == hundred) {
      const Difficulty credited = percent == hundred ? *base : shown.declared;
      merit_ = merit_ + mark * Exact(credited.value());
      difficulty_ += credited;
    } else {
      uncertain_.push_back({mark * Exact(shown.declared.value()), mark * Exact(base->value()), shown.declared,
                            *base, percent.units()});
    }
  }

  std::optional<Exact> expected() const {
    if (uncertain_.size() > most_risky) return std::nullopt;
    const std::optional<cpp_int> sum = over_all_ways(0, merit_, difficulty_);
    if (!sum) return std::nullopt;
    cpp_int ways = Decimal::one;
    for (std::size_t i = 0; i < uncertain_.size(); ++i) ways *= hundred.units();
    return twelve_places(*sum, ways);
  }

 private:
  // Whole numbers: points in millionths, times a hundred million for each element that is still uncertain.
  std::optional<cpp_int> over_all_ways(std::size_t from, Exact merit, Difficulty difficulty) const {
    if (from == uncertain_.size()) {
      if (difficulty == Difficulty()) return std::nullopt;
      return cpp_int(weighted_points(rule_, merit, difficulty).value().units());
    }
    const Uncertain& next = uncertain_[from];
    std::optional<cpp_int> declared =
        over_all_ways(from + 1, merit + next.declared_merit, difficulty + next.declared);
    const std::optional<cpp_int> base =
        over_all_ways(from + 1, merit + next.base_merit, difficulty + next.base);
    if (!declared || !base) return std::nullopt;
    return cpp_int(*declared * (hundred.units() - next.percent) + *base * next.percent);
  }

  const PanelRule& rule_;
  Exact merit_;
  Difficulty difficulty_;
  std::vector<Uncertain> uncertain_;
};

}  // namespace

std::vector<const PanelRule*> weighting_rules(const Routine& routine) {
  std::vector<const PanelRule*> rules;
  for (const Element& element : routine.elements) {
    if (element.panel == nullptr || element.panel->use != Use::weighted) continue;
    if (std::find(rules.begin(), rules.end(), element.panel) == rules.end()) rules.push_back(element.panel);
  }
  return rules;
}

std::optional<Exact> risked_together(const Routine& routine, const Risked& risked, const PanelRule& rule) {
  Together together(rule);
  for (std::size_t i = 0; i < routine.elements.size(); ++i) {
    const Element& element = routine.elements[i];
    if (element.panel != &rule) continue;
    if (!risked.showing.elements[i].marks) return std::nullopt;
    together.add(risked.showing.elements[i], element.kind->base, risked.chances[i].percent);
  }
  return together.expected();
}

}  // namespace landdrill
