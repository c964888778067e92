#include <cassert>
#include <cmath>

#include "engine/judging/statistics/agreement.h"
#include "engine/judging/statistics/quantile.h"
#include "engine/judging/statistics/sample.h"

namespace landdrill {
namespace {

// 95 of 100 differences, when they follow a bell curve.
constexpr double deviations = 1.96;

std::vector<double> differences_of(const Pairs& pairs) {
  std::vector<double> differences;
  differences.reserve(pairs.size());
  for (const auto& [first, second] : pairs) differences.push_back(first - second);
  return differences;
}

Statistic limit(double value, std::size_t rows, double reach) {
  Statistic result = number(value, rows);
  if (reach > 0) set_interval(result, value - reach, value + reach);
  return result;
}

}  // namespace

AgreementLimits bland_altman(const Pairs& pairs, double confidence) {
  AgreementLimits result;
  const std::vector<double> differences = differences_of(pairs);
  result.bias = mean_with_interval(differences, confidence);
  if (pairs.empty()) result.bias.why_not = "the two judges have no row in common";
  result.lower = result.upper = result.bias;
  if (!result.bias.value) return result;
  if (pairs.size() < 2) {
    result.lower = result.upper = no_number("one difference has no spread");
    return result;
  }
  const auto n = static_cast<double>(pairs.size());
  double size = 0;
  for (const auto& [first, second] : pairs) size += first * first + second * second;
  const double squares = without_rounding(squares_around(differences, *result.bias.value), size);
  const double deviation = std::sqrt(squares / (n - 1));
  const double reach =
      student_quantile((1 + confidence) / 2, n - 1).value_or(0) * std::sqrt(3 / n) * deviation;
  result.lower = limit(*result.bias.value - deviations * deviation, pairs.size(), reach);
  result.upper = limit(*result.bias.value + deviations * deviation, pairs.size(), reach);
  return result;
}

}  // namespace landdrill
