#include "engine/chances/risk.h"

#include <algorithm>
#include <numeric>

#include "engine/routine/routine.h"
#include "engine/routine/wish.h"
#include "engine/score/execution.h"
#include "engine/score/score.h"
#include "tables/decimal.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

Decimal mean(Exact sum, std::size_t of) {
  return round(sum / Exact(Decimal::whole(static_cast<std::int64_t>(of))), Decimal::places,
               Rounding::half_up);
}

Decimal drawn_toward(Decimal said, Decimal weight, const RunsShown& runs) {
  if (runs.all == 0) return said;
  const auto whole = [](std::size_t count) {
    return Exact(Decimal::whole(static_cast<std::int64_t>(count)));
  };
  const Exact all = Exact(weight) + whole(runs.all);
  return round((Exact(weight) * Exact(said) + whole(runs.base) * Exact(hundred_percent)) / all,
               Decimal::places, Rounding::half_up);
}

// The runs that say something, as `wish` counts them: all of them when they are averaged, else the latest.
std::vector<const Run*> runs_that_say(const Routine& routine, const RunWish& wish, bool Run::*said,
                                      const Run* (*latest)(const Routine&, const RunWish&)) {
  std::vector<const Run*> runs;
  if (wish.which == RunWish::Which::mean) {
    for (const Run& run : routine.runs) {
      if (run.*said) runs.push_back(&run);
    }
  } else if (const Run* run = latest(routine, wish)) {
    runs.push_back(run);
  }
  return runs;
}

// How often something was seen in one run, a penalty no more often than it counts.
int seen(const Run& run, const SyncClass& sync) {
  int times = 0;
  for (const SyncUse& use : run.sync) times += use.sync == &sync ? use.times : 0;
  return times;
}
int seen(const Run& run, const Penalty& penalty) {
  int times = 0;
  for (const PenaltyUse& use : run.penalties) {
    if (use.penalty == &penalty) times += penalty.most ? std::min(use.times, *penalty.most) : use.times;
  }
  return times;
}

// The mean number of each row that any of the runs saw.
template <class Number, class Row>
std::vector<Number> averages(const Rows<Row>& rows, const std::vector<const Run*>& runs) {
  std::vector<Number> result;
  for (const Row& row : rows) {
    int times = 0;
    for (const Run* run : runs) times += seen(*run, row);
    if (times > 0) result.push_back({&row, mean(Exact(Decimal::whole(times)), runs.size())});
  }
  return result;
}

std::optional<Exact> elements_by_themselves(const Routine& routine, const Risked& risked,
                                            std::optional<std::size_t> without) {
  Exact sum;
  for (std::size_t i = 0; i < routine.elements.size(); ++i) {
    const PanelRule* rule = routine.elements[i].panel;
    if (rule == nullptr || rule->use == Use::weighted || i == without) continue;
    const std::optional<RiskedPoints> points = risked_points(routine, risked, i);
    if (!points) return std::nullopt;
    sum = sum + points->expected;
  }
  return sum;
}

std::optional<Exact> aspects(const Showing& showing) {
  Exact sum;
  for (const ShownAspect& aspect : showing.aspects) {
    if (!aspect.marks) return std::nullopt;
    sum = sum + Exact(plain_points(*aspect.rule, *aspect.marks).value());
  }
  return sum;
}

Exact taken_off(const Risked& risked) {
  Exact sum;
  for (const ExpectedErrors& one : risked.errors) {
    sum = sum + Exact(one.sync->points->value()) * Exact(one.number);
  }
  for (const ExpectedPenalty& one : risked.penalties) {
    sum = sum + Exact(one.penalty->points->value()) * Exact(one.number);
  }
  return sum;
}

}  // namespace

Exact as_share(Decimal percent) {
  return Exact(percent) / Exact(hundred_percent);
}

BaseChance base_chance(const Routine& routine, std::size_t element, const Wish& wish) {
  const Element& shown = routine.elements[element];
  if (shown.panel == nullptr) return {};
  const Option& option = chosen(routine, element, wish);
  BaseChance chance;
  if (option.slip) {
    chance.from = BaseChance::From::sheet;
    chance.said = *option.slip;
  } else if (shown.kind->slip && shown.kind->base) {
    chance.from = BaseChance::From::set;
    chance.said = *shown.kind->slip;
  }
  chance.runs = runs_shown(routine, element, option, wish.runs);
  chance.weight = routine.set->estimate("slip-runs");
  chance.percent = drawn_toward(chance.said, chance.weight, chance.runs);
  return chance;
}

std::vector<ExpectedErrors> expected_errors(const Routine& routine, const RunWish& runs) {
  if (!routine.errors.empty()) return routine.errors;
  return averages<ExpectedErrors>(routine.set->sync,
                                  runs_that_say(routine, runs, &Run::has_sync, run_with_sync));
}

std::vector<ExpectedPenalty> expected_penalties(const Routine& routine, const RunWish& runs) {
  if (routine.risks.empty()) {
    return averages<ExpectedPenalty>(routine.set->penalties,
                                     runs_that_say(routine, runs, &Run::has_penalties, run_with_penalties));
  }
  std::vector<ExpectedPenalty> result;
  for (const PenaltyRisk& risk : routine.risks) {
    result.push_back({risk.penalty, round(as_share(risk.chance), Decimal::places, Rounding::half_up)});
  }
  return result;
}

Risked risked(const Routine& routine, const Wish& wish) {
  Risked result{expected(routine, wish),
                {},
                expected_errors(routine, wish.runs),
                expected_penalties(routine, wish.runs)};
  result.showing.sync.clear();
  result.showing.penalties.clear();
  for (std::size_t i = 0; i < routine.elements.size(); ++i) {
    ShownElement& shown = result.showing.elements[i];
    shown.credited = shown.declared;
    shown.base = false;
    result.chances.push_back(base_chance(routine, i, wish));
  }
  return result;
}

std::optional<RiskedPoints> risked_points(const Routine& routine, const Risked& risked, std::size_t element) {
  return risked_points(routine.elements[element], risked.showing.elements[element],
                       risked.chances[element].percent);
}

std::optional<RiskedPoints> risked_points(const Element& element, const ShownElement& shown,
                                          Decimal percent) {
  const PanelRule* rule = element.panel;
  if (rule == nullptr || rule->use == Use::weighted || !shown.marks) return std::nullopt;
  if (rule->use == Use::plain) {
    const Points points = plain_points(*rule, *shown.marks);
    return RiskedPoints{points, points, Exact(points.value())};
  }
  RiskedPoints points{element_points(*rule, *shown.marks, shown.declared), std::nullopt, {}};
  points.expected = Exact(points.declared.value());
  const std::optional<Difficulty>& base = element.kind->base;
  if (!base) return points;
  points.base = element_points(*rule, *shown.marks, *base);
  const Exact lost = points.expected - Exact(points.base->value());
  points.expected = points.expected - as_share(percent) * lost;
  return points;
}

std::optional<Exact> expected_total(const Routine& routine, const Risked& risked) {
  return total_without(routine, risked, std::nullopt);
}

std::optional<Exact> total_without(const Routine& routine, const Risked& risked,
                                   std::optional<std::size_t> element) {
  std::optional<Exact> total = elements_by_themselves(routine, risked, element);
  const std::optional<Exact> whole = aspects(risked.showing);
  if (!total || !whole) return std::nullopt;
  *total = *total + *whole - taken_off(risked);
  for (const PanelRule* rule : weighting_rules(routine)) {
    if (element && routine.elements[*element].panel == rule) continue;
    const std::optional<Exact> together = risked_together(routine, risked, *rule);
    if (!together) return std::nullopt;
    *total = *total + *together;
  }
  return total;
}

// Base marks under a rule that weights by difficulty: every way in which they can fall, each with its chance.

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
