// How far two judges agree.
#include <algorithm>
#include <cassert>
#include <cmath>
#include <cstdint>

#include "engine/judging/statistics/agreement.h"
#include "engine/judging/statistics/sample.h"

namespace landdrill {

Pairs pairs_of(const MarkTable& table, std::size_t judge, std::size_t other) {
  assert(judge < table.judges && other < table.judges);
  Pairs pairs;
  for (std::size_t row = 0; row < table.rows(); ++row) {
    const std::optional<double> first = table.at(row, judge), second = table.at(row, other);
    if (first && second) pairs.emplace_back(*first, *second);
  }
  return pairs;
}

// Bland & Altman (1986): the limits of agreement.

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

// Rank correlations.

namespace {

struct TwoColumns {
  std::vector<double> first, second;
};
TwoColumns columns_of(const Pairs& pairs) {
  TwoColumns columns;
  for (const auto& [first, second] : pairs) {
    columns.first.push_back(first);
    columns.second.push_back(second);
  }
  return columns;
}

std::string why_no_order(const Pairs& pairs) {
  if (!all_finite(pairs)) return not_finite;
  if (pairs.empty()) return "the two judges have no row in common";
  if (pairs.size() < 2) return "one row has no order";
  const auto as_first = [&](const auto& one) { return one.first == pairs.front().first; };
  const auto as_second = [&](const auto& one) { return one.second == pairs.front().second; };
  if (std::all_of(pairs.begin(), pairs.end(), as_first) || std::all_of(pairs.begin(), pairs.end(), as_second))
    return "one of the judges gave the same mark to all rows";
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

struct PairCounts {
  std::int64_t falling = 0, tied_first = 0, tied_second = 0, tied_both = 0;
};

PairCounts count_pairs(Pairs sorted) {
  std::sort(sorted.begin(), sorted.end());
  PairCounts counts;
  counts.tied_first = tied_pairs(sorted, [](const auto& a, const auto& b) { return a.first == b.first; });
  counts.tied_both = tied_pairs(sorted, [](const auto& a, const auto& b) { return a == b; });
  std::vector<double> second = columns_of(sorted).second, spare(second.size());
  counts.falling = falling_pairs(second, spare);
  counts.tied_second = tied_pairs(second, [](double a, double b) { return a == b; });
  return counts;
}

}  // namespace

Statistic spearman(const Pairs& pairs, double confidence) {
  assert(confidence > 0 && confidence < 1);
  if (std::string why = why_no_order(pairs); !why.empty()) return no_number(std::move(why));
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
  if (std::string why = why_no_order(pairs); !why.empty()) return no_number(std::move(why));
  const std::int64_t all = pairs_among(static_cast<std::int64_t>(pairs.size()));
  const PairCounts of = count_pairs(pairs);
  const std::int64_t rising = all - of.tied_first - of.tied_second + of.tied_both - of.falling;
  const double most = std::sqrt(static_cast<double>(all - of.tied_first)) *
                      std::sqrt(static_cast<double>(all - of.tied_second));
  return number(std::clamp(static_cast<double>(rising - of.falling) / most, -1.0, 1.0), pairs.size());
}

// Cohen, J. (1968), Weighted kappa; Fleiss, J. L., Cohen, J. & Everitt, B. S. (1969) for its variance.

namespace {

// Two judges' marks by category; shares add up to 1.
struct Shares {
  std::vector<double> marks;                               // that occur, the lowest first
  std::vector<std::pair<std::size_t, std::size_t>> cells;  // of each pair, by their places in `marks`
  std::vector<double> first, second;                       // the share of each category
  double distance(std::size_t i, std::size_t j) const {
    return std::abs(marks[i] - marks[j]) / (marks.back() - marks.front());
  }
};

Shares crossed(const Pairs& pairs) {
  Shares table;
  for (const auto& [first, second] : pairs) table.marks.insert(table.marks.end(), {first, second});
  std::sort(table.marks.begin(), table.marks.end());
  table.marks.erase(std::unique(table.marks.begin(), table.marks.end()), table.marks.end());
  table.first.resize(table.marks.size());
  table.second.resize(table.marks.size());
  const auto place = [&](double mark) {
    return static_cast<std::size_t>(std::lower_bound(table.marks.begin(), table.marks.end(), mark) -
                                    table.marks.begin());
  };
  for (const auto& [first, second] : pairs) {
    table.cells.emplace_back(place(first), place(second));
    table.first[table.cells.back().first] += 1 / static_cast<double>(pairs.size());
    table.second[table.cells.back().second] += 1 / static_cast<double>(pairs.size());
  }
  return table;
}

// What agreement one judge's mark can hope for from the other judge by chance, and both together.
struct ByChance {
  std::vector<double> first, second;
  double both = 0;
};
ByChance by_chance(const Shares& table) {
  const std::size_t categories = table.marks.size();
  ByChance chance{std::vector<double>(categories), std::vector<double>(categories), 0};
  for (std::size_t i = 0; i < categories; ++i) {
    for (std::size_t j = 0; j < categories; ++j) {
      chance.first[i] += table.second[j] * (1 - table.distance(i, j));
      chance.second[j] += table.first[i] * (1 - table.distance(i, j));
    }
    chance.both += table.first[i] * chance.first[i];
  }
  return chance;
}

double variance_of_kappa(const Shares& table, const ByChance& chance, double agreed) {
  const auto sample = static_cast<double>(table.cells.size());
  double squares = 0;
  for (const auto& [first, second] : table.cells) {
    const double one = (1 - table.distance(first, second)) * (1 - chance.both) -
                       (chance.first[first] + chance.second[second]) * (1 - agreed);
    squares += one * one / sample;
  }
  const double mean = agreed * chance.both - 2 * chance.both + agreed;
  return (squares - mean * mean) / (sample * std::pow(1 - chance.both, 4));
}

}  // namespace

Statistic weighted_kappa(const Pairs& pairs, double confidence) {
  assert(confidence > 0 && confidence < 1);
  if (!all_finite(pairs)) return no_number(not_finite);
  if (pairs.empty()) return no_number("the two judges have no row in common");
  const Shares table = crossed(pairs);
  if (table.marks.size() == 1) return no_number("both judges gave one and the same mark to all rows");
  const ByChance chance = by_chance(table);
  // From the disagreement, which is exactly 0 where the judges agree.
  double apart = 0;
  for (const auto& [first, second] : table.cells)
    apart += table.distance(first, second) / static_cast<double>(pairs.size());
  Statistic kappa = number(1 - apart / (1 - chance.both), pairs.size());
  const double variance = variance_of_kappa(table, chance, 1 - apart);
  const std::optional<double> z = normal_quantile((1 + confidence) / 2);
  // Full agreement has no variance but what rounding leaves.
  if (!kappa.value || !z || !(variance > 1e-14)) return kappa;
  const double reach = *z * std::sqrt(variance);
  set_interval(kappa, std::max(*kappa.value - reach, std::min(-1.0, *kappa.value)),
               std::min(*kappa.value + reach, 1.0));
  return kappa;
}

}  // namespace landdrill
