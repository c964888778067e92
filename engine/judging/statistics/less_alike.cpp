#include "engine/judging/statistics/less_alike.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "engine/judging/statistics/agreement.h"

namespace landdrill {
namespace {

constexpr std::size_t least_pairs_for_z = 8, least_judges = 2;

std::optional<double> product_correlation(const Pairs& pairs) {
  std::vector<double> first, second;
  for (const auto& [a, b] : pairs) {
    first.push_back(a);
    second.push_back(b);
  }
  const double mean_first = mean_of(first), mean_second = mean_of(second);
  double products = 0;
  for (const auto& [a, b] : pairs) products += (a - mean_first) * (b - mean_second);
  const double squares = squares_around(first, mean_first) * squares_around(second, mean_second);
  if (squares == 0) return std::nullopt;
  return products / std::sqrt(squares);
}

// A full agreement would be infinitely sure.
std::optional<double> fishers_z(const Pairs& pairs) {
  constexpr double nearly_one = 0.999;
  const Statistic rho = spearman(pairs);
  if (!rho.value) return std::nullopt;
  return std::atanh(std::clamp(*rho.value, -nearly_one, nearly_one));
}

}  // namespace

bool spreads_less(const Pairs& pairs, double chance) {
  if (pairs.size() < 3) return false;
  Pairs sums;
  for (const auto& [a, b] : pairs) sums.emplace_back(a + b, a - b);
  const std::optional<double> r = product_correlation(sums);
  const auto freedom = static_cast<double>(pairs.size() - 2);
  const std::optional<double> most = student_quantile(1 - chance, freedom);
  if (!r || !most || *r >= 0) return false;
  return *r * *r * freedom > *most * *most * (1 - *r * *r);
}

bool ranks_less_alike(const Pairs& hers, std::span<const Pairs> judges, double chance) {
  const std::optional<double> mine = fishers_z(hers);
  double sum = 0;
  std::size_t count = 0;
  for (const Pairs& judge : judges) {
    const std::optional<double> one = fishers_z(judge);
    if (!one) continue;
    sum += *one;
    ++count;
  }
  const std::optional<double> most = normal_quantile(1 - chance);
  if (!mine || !most || count < least_judges || hers.size() < least_pairs_for_z) return false;
  // The judges move together, so their mean is taken to be no surer than one of them.
  const double error = std::sqrt(2 * 1.06 / static_cast<double>(hers.size() - 3));
  return sum / static_cast<double>(count) - *mine > *most * error;
}

}  // namespace landdrill
