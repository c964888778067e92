// Cohen, J. (1968), Weighted kappa; Fleiss, J. L., Cohen, J. & Everitt, B. S. (1969) for its variance.
#include <algorithm>
#include <cassert>
#include <cmath>
#include <functional>
#include <iterator>

#include "engine/judging/statistics/agreement.h"
#include "engine/judging/statistics/sample.h"

namespace landdrill {
namespace {

// Two judges' marks by category; shares add up to 1. A cell may come several times.
struct Shares {
  struct Cell {
    std::size_t first = 0, second = 0;
    double share = 0;
  };
  std::vector<Cell> cells;
  std::vector<double> first, second;  // the share of each category
};
using Distance = std::function<double(std::size_t, std::size_t)>;

double largest(const Distance& distance, std::size_t categories) {
  double most = 0;
  for (std::size_t i = 0; i < categories; ++i) {
    for (std::size_t j = 0; j < categories; ++j) most = std::max(most, distance(i, j));
  }
  return most;
}

// What agreement one judge's mark can hope for from the other judge by chance, and both together.
struct ByChance {
  std::vector<double> first, second;
  double both = 0;
};
ByChance by_chance(const Shares& table, const Distance& agreement) {
  const std::size_t categories = table.first.size();
  ByChance chance{std::vector<double>(categories), std::vector<double>(categories), 0};
  for (std::size_t i = 0; i < categories; ++i) {
    for (std::size_t j = 0; j < categories; ++j) {
      chance.first[i] += table.second[j] * agreement(i, j);
      chance.second[j] += table.first[i] * agreement(i, j);
    }
    chance.both += table.first[i] * chance.first[i];
  }
  return chance;
}

struct Observed {
  double agreed = 0, sample = 0;
};
double variance_of_kappa(const Shares& table, const Distance& agreement, const ByChance& chance,
                         Observed observed) {
  double squares = 0;
  for (const Shares::Cell& cell : table.cells) {
    const double one = agreement(cell.first, cell.second) * (1 - chance.both) -
                       (chance.first[cell.first] + chance.second[cell.second]) * (1 - observed.agreed);
    squares += cell.share * one * one;
  }
  const double mean = observed.agreed * chance.both - 2 * chance.both + observed.agreed;
  return (squares - mean * mean) / (observed.sample * std::pow(1 - chance.both, 4));
}

Statistic kappa_of(const Shares& table, const Distance& distance, double sample, double confidence) {
  assert(confidence > 0 && confidence < 1);
  const double most = largest(distance, table.first.size());
  if (most == 0) return no_number("both judges gave one and the same mark to all rows");
  const Distance agreement = [&](std::size_t i, std::size_t j) { return 1 - distance(i, j) / most; };
  const ByChance chance = by_chance(table, agreement);
  if (1 - chance.both < 1e-12) return no_number("both judges gave one and the same mark to all rows");
  // From the disagreement, which is exactly 0 where the judges agree.
  double apart = 0;
  for (const Shares::Cell& cell : table.cells) {
    apart += cell.share * distance(cell.first, cell.second) / most;
  }
  Statistic kappa = number(1 - apart / (1 - chance.both), static_cast<std::size_t>(std::llround(sample)));
  const double variance = variance_of_kappa(table, agreement, chance, {1 - apart, sample});
  const std::optional<double> z = normal_quantile((1 + confidence) / 2);
  // Full agreement has no variance but what rounding leaves.
  if (!kappa.value || !z || !(variance > 1e-14)) return kappa;
  const double reach = *z * std::sqrt(variance);
  set_interval(kappa, std::max(*kappa.value - reach, std::min(-1.0, *kappa.value)),
               std::min(*kappa.value + reach, 1.0));
  return kappa;
}

std::vector<double> marks_that_occur(const Pairs& pairs) {
  std::vector<double> marks;
  for (const auto& [first, second] : pairs) {
    marks.push_back(first);
    marks.push_back(second);
  }
  std::sort(marks.begin(), marks.end());
  marks.erase(std::unique(marks.begin(), marks.end()), marks.end());
  return marks;
}

Shares crossed(const Pairs& pairs, const std::vector<double>& marks) {
  Shares table{{}, std::vector<double>(marks.size()), std::vector<double>(marks.size())};
  const double share = 1 / static_cast<double>(pairs.size());
  const auto place = [&](double mark) {
    return static_cast<std::size_t>(std::lower_bound(marks.begin(), marks.end(), mark) - marks.begin());
  };
  for (const auto& [first, second] : pairs) {
    table.cells.push_back({place(first), place(second), share});
    table.first[table.cells.back().first] += share;
    table.second[table.cells.back().second] += share;
  }
  return table;
}

// The same from fewer cells.
Shares crossed(const CrossTable& counted, const std::vector<double>& marks, double sample) {
  Shares table{{}, std::vector<double>(marks.size()), std::vector<double>(marks.size())};
  const auto place = [&](double mark) {
    return static_cast<std::size_t>(std::lower_bound(marks.begin(), marks.end(), mark) - marks.begin());
  };
  for (std::size_t i = 0; i < counted.first.size(); ++i) {
    for (std::size_t j = 0; j < counted.second.size(); ++j) {
      if (counted.at(i, j) == 0) continue;
      const double share = static_cast<double>(counted.at(i, j)) / sample;
      table.cells.push_back({place(counted.first[i]), place(counted.second[j]), share});
      table.first[table.cells.back().first] += share;
      table.second[table.cells.back().second] += share;
    }
  }
  return table;
}

std::vector<double> marks_that_occur(const CrossTable& counted) {
  std::vector<double> marks;
  std::set_union(counted.first.begin(), counted.first.end(), counted.second.begin(), counted.second.end(),
                 std::back_inserter(marks));
  return marks;
}

}  // namespace

Statistic weighted_kappa(const CountedPairs& counted, KappaWeights weights, double confidence) {
  const auto& [pairs, table] = counted;
  if (!all_finite(pairs)) return no_number(not_finite);
  if (pairs.empty()) return no_number("the two judges have no row in common");
  const std::vector<double> marks = table ? marks_that_occur(*table) : marks_that_occur(pairs);
  const Distance distance = [&](std::size_t i, std::size_t j) {
    const double apart = std::abs(marks[i] - marks[j]);
    if (weights == KappaWeights::equal) return apart > 0 ? 1.0 : 0.0;
    return weights == KappaWeights::linear ? apart : apart * apart;
  };
  const auto sample = static_cast<double>(pairs.size());
  return kappa_of(table ? crossed(*table, marks, sample) : crossed(pairs, marks), distance, sample,
                  confidence);
}

Statistic weighted_kappa(const Pairs& pairs, KappaWeights weights, double confidence) {
  return weighted_kappa(CountedPairs(pairs), weights, confidence);
}

Statistic weighted_kappa(std::span<const double> counts, std::span<const double> weights, double sample,
                         double confidence) {
  const auto categories =
      static_cast<std::size_t>(std::llround(std::sqrt(static_cast<double>(counts.size()))));
  assert(categories * categories == counts.size() && weights.size() == counts.size() && sample > 0);
  double sum = 0;
  for (double count : counts) sum += count;
  if (!(sum > 0)) return no_number("there are no marks");
  Shares table{{}, std::vector<double>(categories), std::vector<double>(categories)};
  for (std::size_t i = 0; i < counts.size(); ++i) {
    const Shares::Cell cell{i / categories, i % categories, counts[i] / sum};
    table.cells.push_back(cell);
    table.first[cell.first] += cell.share;
    table.second[cell.second] += cell.share;
  }
  const Distance distance = [&](std::size_t i, std::size_t j) { return weights[i * categories + j]; };
  return kappa_of(table, distance, sample, confidence);
}

}  // namespace landdrill
