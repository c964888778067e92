#include <algorithm>
#include <cassert>
#include <cmath>
#include <cstdint>

#include "engine/judging/statistics/agreement.h"
#include "engine/judging/statistics/sample.h"

namespace landdrill {
namespace {

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

// How often each mark occurs, by the first judge or the second.
std::vector<std::int64_t> margin_of(const CrossTable& table, bool of_first) {
  std::vector<std::int64_t> margin(of_first ? table.first.size() : table.second.size());
  for (std::size_t i = 0; i < table.first.size(); ++i) {
    for (std::size_t j = 0; j < table.second.size(); ++j) margin[of_first ? i : j] += table.at(i, j);
  }
  return margin;
}

// Twice the mid-ranks less twice their mean: whole numbers, one for each mark that occurs.
std::vector<double> centred_ranks(const std::vector<std::int64_t>& margin, std::int64_t all) {
  std::vector<double> ranks;
  std::int64_t below = 0;
  for (std::int64_t count : margin) {
    ranks.push_back(static_cast<double>(2 * below + count - all));
    below += count;
  }
  return ranks;
}

double squares_of(const std::vector<double>& ranks, const std::vector<std::int64_t>& margin) {
  double squares = 0;
  for (std::size_t i = 0; i < ranks.size(); ++i)
    squares += static_cast<double>(margin[i]) * ranks[i] * ranks[i];
  return squares;
}

double rank_correlation(const CrossTable& table, std::int64_t all) {
  const std::vector<std::int64_t> of_first = margin_of(table, true), of_second = margin_of(table, false);
  const std::vector<double> first = centred_ranks(of_first, all), second = centred_ranks(of_second, all);
  double products = 0;
  for (std::size_t i = 0; i < first.size(); ++i) {
    double row = 0;
    for (std::size_t j = 0; j < second.size(); ++j) row += static_cast<double>(table.at(i, j)) * second[j];
    products += first[i] * row;
  }
  return products / std::sqrt(squares_of(first, of_first) * squares_of(second, of_second));
}

struct PairCounts {
  std::int64_t falling = 0, tied_first = 0, tied_second = 0, tied_both = 0;
};

PairCounts count_pairs(const CrossTable& table) {
  PairCounts counts;
  std::vector<std::int64_t> above(table.second.size() +
                                  1);  // of lower first marks, those of second marks from j on
  for (std::size_t i = 0; i < table.first.size(); ++i) {
    for (std::size_t j = 0; j < table.second.size(); ++j) {
      counts.tied_both += pairs_among(table.at(i, j));
      counts.falling += table.at(i, j) * above[j + 1];
    }
    std::int64_t row = 0;
    for (std::size_t j = table.second.size(); j-- > 0;) above[j] += row += table.at(i, j);
  }
  for (std::int64_t count : margin_of(table, true)) counts.tied_first += pairs_among(count);
  for (std::int64_t count : margin_of(table, false)) counts.tied_second += pairs_among(count);
  return counts;
}

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

double rank_correlation(const CountedPairs& counted) {
  if (counted.table) return rank_correlation(*counted.table, static_cast<std::int64_t>(counted.pairs.size()));
  const auto [first, second] = columns_of(counted.pairs);
  return correlation(mid_ranks(first), mid_ranks(second));
}

}  // namespace

Statistic spearman(const CountedPairs& counted, double confidence) {
  const Pairs& pairs = counted.pairs;
  assert(confidence > 0 && confidence < 1);
  if (std::string why = why_no_order(pairs); !why.empty()) return no_number(std::move(why));
  const double rho = std::clamp(rank_correlation(counted), -1.0, 1.0);
  Statistic result = number(rho, pairs.size());
  const std::optional<double> z = normal_quantile((1 + confidence) / 2);
  // Fisher's z of a full correlation is infinite, but for what rounding leaves.
  if (pairs.size() < 4 || !z || 1 - std::abs(rho) < 1e-12) return result;
  const double reach = *z / std::sqrt(static_cast<double>(pairs.size()) - 3);
  set_interval(result, std::tanh(std::atanh(rho) - reach), std::tanh(std::atanh(rho) + reach));
  return result;
}

Statistic kendall_tau(const CountedPairs& counted) {
  const Pairs& pairs = counted.pairs;
  if (std::string why = why_no_order(pairs); !why.empty()) return no_number(std::move(why));
  const std::int64_t all = pairs_among(static_cast<std::int64_t>(pairs.size()));
  const PairCounts of = counted.table ? count_pairs(*counted.table) : count_pairs(pairs);
  const std::int64_t rising = all - of.tied_first - of.tied_second + of.tied_both - of.falling;
  const double most = std::sqrt(static_cast<double>(all - of.tied_first)) *
                      std::sqrt(static_cast<double>(all - of.tied_second));
  return number(std::clamp(static_cast<double>(rising - of.falling) / most, -1.0, 1.0), pairs.size());
}

Statistic spearman(const Pairs& pairs, double confidence) {
  return spearman(CountedPairs(pairs), confidence);
}

Statistic kendall_tau(const Pairs& pairs) {
  return kendall_tau(CountedPairs(pairs));
}

}  // namespace landdrill
