#include <algorithm>
#include <cassert>
#include <cmath>
#include <cstdint>

#include "engine/agreement.h"
#include "engine/quantile.h"
#include "engine/sample.h"

namespace landdrill {
namespace {

std::string why_none(const Pairs& pairs) {
  if (!all_finite(pairs)) return not_finite;
  if (pairs.empty()) return "the two judges have no row in common";
  if (pairs.size() < 2) return "one row has no order";
  const auto [first, second] = columns_of(pairs);
  for (const std::vector<double>& marks : {first, second}) {
    if (std::equal(marks.begin() + 1, marks.end(), marks.begin())) {
      return "one of the judges gave the same mark to all rows";
    }
  }
  return "";
}

double correlation(std::span<const double> first, std::span<const double> second) {
  const double mean_first = mean_of(first), mean_second = mean_of(second);
  double products = 0;
  for (std::size_t i = 0; i < first.size(); ++i) {
    products += (first[i] - mean_first) * (second[i] - mean_second);
  }
  return products / std::sqrt(squares_around(first, mean_first) * squares_around(second, mean_second));
}

std::int64_t pairs_among(std::int64_t count) {
  return count * (count - 1) / 2;
}

// Pairs of equal neighbours in what is sorted: groups of t give t(t-1)/2.
template <typename Sorted, typename Same>
std::int64_t tied_pairs(const Sorted& sorted, const Same& same) {
  std::int64_t tied = 0, run = 1;
  for (std::size_t i = 1; i <= sorted.size(); ++i) {
    if (i < sorted.size() && same(sorted[i - 1], sorted[i])) {
      ++run;
      continue;
    }
    tied += pairs_among(run);
    run = 1;
  }
  return tied;
}

// How many pairs stand in falling order; sorts them (Knight 1966).
std::int64_t falling_pairs(std::span<double> marks, std::span<double> spare) {
  if (marks.size() < 2) return 0;
  const std::size_t half = marks.size() / 2;
  std::int64_t falling = falling_pairs(marks.first(half), spare.first(half)) +
                         falling_pairs(marks.subspan(half), spare.subspan(half));
  for (std::size_t left = 0, right = half, out = 0; out < marks.size(); ++out) {
    const bool from_right = left == half || (right < marks.size() && marks[right] < marks[left]);
    if (from_right) falling += static_cast<std::int64_t>(half - left);
    spare[out] = from_right ? marks[right++] : marks[left++];
  }
  std::copy(spare.begin(), spare.end(), marks.begin());
  return falling;
}

}  // namespace

Statistic spearman(const Pairs& pairs, double confidence) {
  assert(confidence > 0 && confidence < 1);
  if (std::string why = why_none(pairs); !why.empty()) return no_number(std::move(why));
  const auto [first, second] = columns_of(pairs);
  const double rho = std::clamp(correlation(mid_ranks(first), mid_ranks(second)), -1.0, 1.0);
  Statistic result = number(rho, pairs.size());
  const std::optional<double> z = normal_quantile((1 + confidence) / 2);
  // Fisher's z of a full correlation is infinite, but for what rounding leaves.
  if (pairs.size() < 4 || !z || 1 - std::abs(rho) < 1e-12) return result;
  const double reach = *z / std::sqrt(static_cast<double>(pairs.size()) - 3);
  set_interval(result, std::tanh(std::atanh(rho) - reach), std::tanh(std::atanh(rho) + reach));
  return result;
}

Statistic kendall_tau(const Pairs& pairs) {
  if (std::string why = why_none(pairs); !why.empty()) return no_number(std::move(why));
  Pairs sorted = pairs;
  std::sort(sorted.begin(), sorted.end());
  const std::int64_t all = pairs_among(static_cast<std::int64_t>(pairs.size()));
  const std::int64_t tied_first =
      tied_pairs(sorted, [](const auto& a, const auto& b) { return a.first == b.first; });
  const std::int64_t tied_both = tied_pairs(sorted, [](const auto& a, const auto& b) { return a == b; });
  std::vector<double> second = columns_of(sorted).second, spare(second.size());
  const std::int64_t falling = falling_pairs(second, spare);
  const std::int64_t tied_second = tied_pairs(second, [](double a, double b) { return a == b; });
  const std::int64_t rising = all - tied_first - tied_second + tied_both - falling;
  const double most =
      std::sqrt(static_cast<double>(all - tied_first)) * std::sqrt(static_cast<double>(all - tied_second));
  return number(std::clamp(static_cast<double>(rising - falling) / most, -1.0, 1.0), pairs.size());
}

}  // namespace landdrill
