#include "engine/chances/days.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

#include "tables/binary.h"

namespace landdrill {
namespace {

constexpr double reach = 4.5;                // spreads of the day
constexpr Chance beyond = 2 * 3.4e-6;        // of a day further out
constexpr Chance worth_a_finer_step = 2e-5;  // of being off
constexpr double most_days = 1500;

double density(double spreads) {
  return std::exp(-spreads * spreads / 2);
}

// Of the narrowest bell curve that any chance can be, as the day shifts: 1 / spread^2.
double sharpness(std::span<const DayLine> lines) {
  double sum = 0;
  for (const DayLine& line : lines) {
    if (line.spread > Decimal()) sum += line.rule->judges / std::pow(binary(line.spread), 2);
  }
  return sum;
}

// Where the marks of a line without spread go from one step of the scale to the next.
void add_changes(const DayLine& line, Decimal furthest, std::vector<double>& edges) {
  const PanelRule& rule = *line.rule;
  for (Decimal mark = rule.least.value(); mark < rule.most.value(); mark += rule.step) {
    const double change = binary(mark - line.expected) + binary(rule.step) / 2;
    if (std::abs(change) < binary(furthest)) edges.push_back(change);
  }
}

Decimal to_millionths(double marks) {
  return Decimal::from_units(std::llround(marks * static_cast<double>(Decimal::one)));
}

Days scaled(std::vector<Odds::Case> cases, Chance off) {
  const Chance whole = Odds(cases).whole();
  for (Odds::Case& one : cases) one.chance /= whole;
  return {Odds(std::move(cases)), off + 2 * beyond};
}

// The trapezoidal rule.
Days in_even_steps(Decimal spread, double narrowest) {
  const double day = binary(spread);
  const double step = std::max(narrowest * std::numbers::pi * std::sqrt(2 / std::log(2 / worth_a_finer_step)),
                               2 * reach * day / most_days);
  const auto each = std::max<Decimal>(to_millionths(step), Decimal::from_units(1));
  const auto steps = static_cast<std::int64_t>(reach * day / binary(each)) + 1;
  std::vector<Odds::Case> cases;
  for (std::int64_t at = -steps; at <= steps; ++at)
    cases.push_back({each * at, density(binary(each * at) / day)});
  const double x = 2 * std::pow(std::numbers::pi * narrowest / binary(each), 2);
  return scaled(std::move(cases), std::min(1.0, 2 * std::exp(-x) / (1 - std::exp(-x))));
}

// Between the edges, in pieces of at most `widest`, Gauss's rule of two points in each.
Days around_the_changes(std::vector<double> edges, Decimal spread, double narrowest) {
  const double day = binary(spread), widest = narrowest / 2;
  std::sort(edges.begin(), edges.end());
  std::vector<Odds::Case> cases;
  for (std::size_t i = 0; i + 1 < edges.size(); ++i) {
    const double pieces = std::ceil((edges[i + 1] - edges[i]) / widest);
    const double half = (edges[i + 1] - edges[i]) / pieces / 2;
    for (double piece = 0; piece < pieces; ++piece) {
      const double middle = edges[i] + (2 * piece + 1) * half, off = half / std::numbers::sqrt3;
      const Chance left = density((middle - off) / day), right = density((middle + off) / day);
      const Chance whole = std::erf((middle + half) / day / std::numbers::sqrt2) -
                           std::erf((middle - half) / day / std::numbers::sqrt2);
      cases.push_back({to_millionths(middle - off), whole * left / (left + right)});
      cases.push_back({to_millionths(middle + off), whole * right / (left + right)});
    }
  }
  // Off by (width / spread)^4 / 4320 times the mean size of the fourth derivative of a bell curve, below 5.
  return scaled(std::move(cases), std::pow(widest / narrowest, 4) * 5 / 4320);
}

}  // namespace

Days days_of(Decimal spread, std::span<const DayLine> lines) {
  if (spread == Decimal()) return {};
  const double day = binary(spread), sharp = sharpness(lines);
  const double narrowest = 1 / std::sqrt(sharp + 1 / (day * day));
  const Decimal furthest = to_millionths(reach * day);
  std::vector<double> edges = {-binary(furthest), binary(furthest)};
  for (const DayLine& line : lines) {
    if (line.spread == Decimal()) add_changes(line, furthest, edges);
  }
  if (edges.size() == 2) return in_even_steps(spread, narrowest);
  return around_the_changes(std::move(edges), spread, narrowest);
}

}  // namespace landdrill
