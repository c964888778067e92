#include "tests/outside/draws.h"

#include <algorithm>
#include <boost/random/normal_distribution.hpp>
#include <boost/random/poisson_distribution.hpp>
#include <boost/random/uniform_01.hpp>
#include <cmath>

namespace landdrill {
namespace {

double number_of(Decimal value) {
  return static_cast<double>(value.units()) / 1e6;
}

std::size_t kept_steps(const PanelRule& rule, Mark sum, int count) {
  return static_cast<std::size_t>((sum - rule.least * count).value().units() / rule.step.units());
}

int kept_count(const PanelRule& rule) {
  return rule.judges - rule.drop_high - rule.drop_low;
}

// The points of every kept sum.
template <class Points>
std::vector<std::int64_t> table(const PanelRule& rule, Points points) {
  std::vector<std::int64_t> result;
  const int count = kept_count(rule);
  for (Mark sum = rule.least * count; sum <= rule.most * count; sum += Mark(rule.step)) {
    result.push_back(points(KeptMarks{sum, count}).value().units());
  }
  return result;
}

}  // namespace

Draws::Draws(const Routine& routine, unsigned seed)
    : routine_(routine), random_(seed), day_(routine.day ? number_of(*routine.day) : 0) {
  for (const Element& element : routine.elements) {
    if (element.panel != nullptr) add_element(element);
  }
  for (const AspectMark& aspect : routine.impressions) {
    Line one = line(*aspect.rule, aspect.mark, std::nullopt);
    one.declared_points =
        table(*one.rule, [&](const KeptMarks& marks) { return plain_points(*aspect.rule, marks); });
    lines_.push_back(std::move(one));
  }
}

Draws::Line Draws::line(const PanelRule& rule, Mark expected, std::optional<Decimal> spread) const {
  Line result;
  result.rule = &rule;
  result.expected = number_of(expected.value());
  result.spread = number_of(spread ? *spread : routine_.spread.value());
  return result;
}

void Draws::add_element(const Element& element) {
  const Option& option = element.options.front();
  const PanelRule& rule = *element.panel;
  Line one = line(rule, option.expect.value(), option.spread);
  one.declared = option.declared.value();
  if (option.slip) one.base_chance = number_of(*option.slip) / 100;
  if (element.kind->base) one.base = *element.kind->base;
  const auto with = [&](Difficulty difficulty) {
    return table(rule, [&](const KeptMarks& marks) {
      return rule.use == Use::plain ? plain_points(rule, marks) : element_points(rule, marks, difficulty);
    });
  };
  one.declared_points = with(one.declared);
  one.base_points = with(one.base);
  (rule.use == Use::weighted ? weighted_ : lines_).push_back(std::move(one));
}

double Draws::day() {
  return day_ * boost::random::normal_distribution<double>()(random_);
}

Mark Draws::mark(const Line& line, double shift) {
  const PanelRule& rule = *line.rule;
  const double normal = boost::random::normal_distribution<double>()(random_);
  const double drawn = line.expected + shift + line.spread * normal;
  const double least = number_of(rule.least.value()), step = number_of(rule.step);
  const double most_steps = std::round((number_of(rule.most.value()) - least) / step);
  const double steps = std::clamp(std::floor((drawn - least) / step + 0.5), 0.0, most_steps);
  return rule.least + Mark(Decimal::from_units(static_cast<std::int64_t>(steps) * rule.step.units()));
}

KeptMarks Draws::kept(const Line& line, double shift) {
  marks_.resize(static_cast<std::size_t>(line.rule->judges));
  for (std::optional<Mark>& one : marks_) one = mark(line, shift);
  return keep(*line.rule, marks_);
}

std::int64_t Draws::points(const Line& line, double shift) {
  const KeptMarks marks = kept(line, shift);
  const bool base = line.base_chance > 0 && boost::random::uniform_01<double>()(random_) < line.base_chance;
  return (base ? line.base_points : line.declared_points)[kept_steps(*line.rule, marks.sum, marks.count)];
}

std::int64_t Draws::weighted_together(double shift) {
  Exact merit;
  Difficulty difficulty;
  for (const Line& line : weighted_) {
    const KeptMarks marks = kept(line, shift);
    const bool base = line.base_chance > 0 && boost::random::uniform_01<double>()(random_) < line.base_chance;
    const Difficulty credited = base ? line.base : line.declared;
    merit = merit + combined(*line.rule, marks) * Exact(credited.value());
    difficulty += credited;
  }
  if (weighted_.empty()) return 0;
  return weighted_points(*weighted_.front().rule, merit, difficulty).value().units();
}

std::int64_t Draws::taken_off() {
  std::int64_t points = 0;
  for (const ExpectedErrors& one : routine_.errors) {
    const int times = boost::random::poisson_distribution<int, double>(number_of(one.number))(random_);
    points += one.sync->points->value().units() * times;
  }
  for (const PenaltyRisk& one : routine_.risks) {
    const bool comes = boost::random::uniform_01<double>()(random_) < number_of(one.chance) / 100;
    if (comes) points += one.penalty->points->value().units();
  }
  return points;
}

std::int64_t Draws::next() {
  const double shift = day();
  std::int64_t total = weighted_together(shift) - taken_off();
  for (const Line& line : lines_) total += points(line, shift);
  return total;
}

}  // namespace landdrill
