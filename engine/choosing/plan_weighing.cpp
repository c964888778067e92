#include "engine/choosing/plan_weighing.h"

#include <algorithm>

#include "engine/chances/risk.h"
#include "engine/choosing/plan_rooms.h"
#include "tables/decimal.h"
#include "tables/value_set.h"

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

// The points of a rule are E[sum(c m) / sum(c)] x weight: m are the marks, c what is credited, which chance
// has a hand in where base marks are. Such a quotient is above L only if E[sum of c (m - L)] is above 0 (W.
// Dinkelbach, On nonlinear fractional programming, Management Science 13, 1967, 492-498), but for what base
// marks do to the divisor. With D = sum of c, S = sum of c (m - L), and M the highest mark, S / D is never
// above M - L, so
//   E[D] E[S / D] = E[S] - cov(S, D) / E[D] + E[(S / D) (D - E[D])^2] / E[D]
//                <= sum of E[c] (m - L) + (M - m) var(c) / E[D],
// which adds up element by element.

namespace {

constexpr std::int64_t nanos = 1'000'000'000;

Exact whole(std::int64_t number) {
  return Exact(Decimal::whole(number));
}
Exact millionths(std::int64_t number) {
  return Exact(Decimal::from_units(number));
}
// To the sixth place, towards higher and towards lower numbers.
Decimal up(Exact value) {
  return round(value, Decimal::places, value < Exact() ? Rounding::down : Rounding::up);
}
Decimal down(Exact value) {
  return round(value, Decimal::places, value < Exact() ? Rounding::up : Rounding::down);
}
std::int64_t nanos_above(Exact points) {
  return up(points * whole(nanos / Decimal::one)).units();
}
std::int64_t nanos_below(Exact points) {
  return down(points * whole(nanos / Decimal::one)).units();
}

// What rounding can add to points at most; the twelfth place of an expected value is far below a millionth.
Exact rounded_up_by(const PanelRule& rule) {
  Exact last(Decimal::whole(1));
  for (int place = 0; place < rule.places; ++place) last = last / whole(10);
  const bool to_nearest = rule.rounding == Rounding::half_up || rule.rounding == Rounding::half_even;
  return (to_nearest ? last / whole(2) : last) + millionths(1);
}

// Of one rule: points <= fixed + slack + factor x (what its elements add to the line).
struct Slope {
  Exact mark;                              // L
  Exact factor;                            // the weight over what is credited in all
  Exact least = Exact(Decimal::whole(1));  // of what is credited in all
  Exact highest_mark, fixed, slack;
};

class Line {
 public:
  Line(const Weighing& weighing, const WeighingBands& bands, const WeighingAim& aim)
      : weighing_(weighing), bands_(bands), aim_(aim) {}

  WeighingLine run() {
    Exact fixed = weighing_.fixed(), slack;
    for (std::size_t rule = 0; rule < weighing_.rules().size(); ++rule) {
      slopes_.push_back(slope(rule));
      fixed = fixed + slopes_.back().fixed;
      slack = slack + slopes_.back().slack;
    }
    WeighingLine line;
    line.level = aim_.level.value_or(fixed);
    // A quotient with nothing beside it is above its level by the sign of the line alone.
    line.need = weighing_.is_mixed() ? nanos_below(line.level - fixed - slack) : 0;
    for (const auto& list : weighing_.ways()) {
      auto& worths = line.worths.emplace_back();
      for (const WeighingWay& way : list) worths.push_back(worth(way));
    }
    return line;
  }

 private:
  std::int64_t worth(const WeighingWay& way) const {
    return nanos_above(way.own) + (way.rule < slopes_.size() ? weighted(way, slopes_[way.rule]) : 0);
  }
  static std::int64_t weighted(const WeighingWay& way, const Slope& slope) {
    const Exact above = way.credited * (way.together.mark - slope.mark);
    const Exact risk = (slope.highest_mark - way.together.mark) * way.variance / slope.least;
    return nanos_above((above + Exact(up(risk))) * slope.factor);
  }

  Slope slope(std::size_t rule) const {
    const WeighingBand& band = bands_[rule];
    const PanelRule& of = *weighing_.rules()[rule];
    const Exact weight(of.weight->value());
    Slope result;
    if (band.absent) return result;
    const auto [low, high] = marks_of(rule);
    result.least = millionths(std::max<std::int64_t>(band.least, 1));
    result.highest_mark = high;
    result.fixed = rounded_up_by(of);
    if (weight <= Exact()) {
      result.mark = low;
    } else if (weighing_.is_mixed()) {
      steep_within(band, rule, result);
    } else {
      result.mark =
          aim_.level ? Exact(down((*aim_.level - weighing_.fixed() - result.fixed) / weight)) : high;
      result.factor = Exact(up(weight / result.least));
    }
    result.fixed = result.fixed + weight * result.mark;
    return result;
  }

  // What is credited in all is between two numbers: by the higher one what is above the mark counts least,
  // and how much too little that is has a bound.
  void steep_within(const WeighingBand& band, std::size_t rule, Slope& slope) const {
    const Exact weight(weighing_.rules()[rule]->weight->value());
    // Every element was rounded down by less than a millionth.
    const auto elements = static_cast<std::int64_t>(weighing_.ways().size());
    const Exact most = millionths(std::max<std::int64_t>(band.most, 1) + elements);
    slope.mark = ratio_of(rule).value_or(slope.highest_mark);
    slope.factor = Exact(down(weight / most));
    Slope steepest = slope;
    steepest.factor = Exact(up(weight / slope.least)) - slope.factor;
    std::int64_t highest = 0;
    for (const auto& list : weighing_.ways()) {
      std::optional<std::int64_t> best;
      for (const WeighingWay& way : list) {
        const std::int64_t here = way.rule == rule ? weighted(way, steepest) : 0;
        best = std::max(best.value_or(here), here);
      }
      highest += best.value_or(0);
    }
    slope.slack = millionths(std::max<std::int64_t>(highest, 0)) / whole(nanos / Decimal::one);
  }

  // The quotient of the programme that is aimed at, but for its base marks.
  std::optional<Exact> ratio_of(std::size_t rule) const {
    if (aim_.choices == nullptr) return std::nullopt;
    Exact merit, credited;
    for (std::size_t i = 0; i < aim_.choices->size(); ++i) {
      const WeighingWay& way = weighing_.ways()[i][(*aim_.choices)[i]];
      if (way.rule != rule) continue;
      merit = merit + way.credited * way.together.mark;
      credited = credited + way.credited;
    }
    if (credited.is_zero()) return std::nullopt;
    return Exact(down(merit / credited));
  }

  std::pair<Exact, Exact> marks_of(std::size_t rule) const {
    std::optional<Exact> low, high;
    for (const auto& list : weighing_.ways()) {
      for (const WeighingWay& way : list) {
        if (way.rule != rule) continue;
        low = std::min(low.value_or(way.together.mark), way.together.mark);
        high = std::max(high.value_or(way.together.mark), way.together.mark);
      }
    }
    return {low.value_or(Exact()), high.value_or(Exact())};
  }

  const Weighing& weighing_;
  const WeighingBands& bands_;
  const WeighingAim& aim_;
  std::vector<Slope> slopes_;
};

}  // namespace

Exact WeighingLine::at_most(std::int64_t sum) const {
  return level + millionths(std::max<std::int64_t>(sum - need, 0)) / whole(nanos / Decimal::one);
}

WeighingLine line_above(const Weighing& weighing, const WeighingBands& bands, const WeighingAim& aim) {
  return Line(weighing, bands, aim).run();
}

}  // namespace landdrill
