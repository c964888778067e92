// Marks in steps are counted in a cross table, others pair by pair: both ways say what the definitions say.
#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "engine/judging/statistics/agreement.h"
#include "engine/judging/statistics/sample.h"

namespace landdrill {
namespace {

// `different` marks at most, a quarter apart; the second judge mostly follows the first.
Pairs some_pairs(std::size_t rows, int different) {
  std::mt19937 random(20261125);
  Pairs pairs;
  for (std::size_t i = 0; i < rows; ++i) {
    const int first = static_cast<int>(random() % static_cast<unsigned>(different));
    const int second = (first + static_cast<int>(random() % 5)) % different;
    pairs.emplace_back(first * 0.25, second * 0.25);
  }
  return pairs;
}

// Kendall's tau-b, every pair of rows looked at.
double tau_of_every_pair(const Pairs& pairs) {
  double sum = 0, first = 0, second = 0;
  const auto sign = [](double a, double b) { return (a > b) - (a < b); };
  for (std::size_t i = 0; i < pairs.size(); ++i) {
    for (std::size_t j = 0; j < i; ++j) {
      const int one = sign(pairs[i].first, pairs[j].first), other = sign(pairs[i].second, pairs[j].second);
      sum += one * other;
      first += one * one;
      second += other * other;
    }
  }
  return sum / std::sqrt(first * second);
}

double correlation_of_ranks(const Pairs& pairs) {
  const TwoColumns columns = columns_of(pairs);
  const std::vector<double> first = mid_ranks(columns.first), second = mid_ranks(columns.second);
  double products = 0;
  for (std::size_t i = 0; i < first.size(); ++i)
    products += (first[i] - mean_of(first)) * (second[i] - mean_of(second));
  return products /
         std::sqrt(squares_around(first, mean_of(first)) * squares_around(second, mean_of(second)));
}

double kappa_of_counts(const Pairs& pairs, int different) {
  const auto n = static_cast<std::size_t>(different);
  std::vector<double> counts(n * n), apart(n * n);
  for (const auto& [first, second] : pairs)
    counts[static_cast<std::size_t>(first * 4) * n + static_cast<std::size_t>(second * 4)] += 1;
  for (std::size_t i = 0; i < n; ++i) {
    for (std::size_t j = 0; j < n; ++j)
      apart[i * n + j] = std::abs(static_cast<double>(i) - static_cast<double>(j));
  }
  return *weighted_kappa(counts, apart, static_cast<double>(pairs.size())).value;
}

class FewMarks : public testing::TestWithParam<int> {};

TEST_P(FewMarks, AndManyGiveTheStatisticsOfTheirDefinitions) {
  const Pairs pairs = some_pairs(400, GetParam());
  EXPECT_EQ(CountedPairs(pairs).table.has_value(), GetParam() <= 64);
  EXPECT_NEAR(*kendall_tau(pairs).value, tau_of_every_pair(pairs), 1e-12);
  EXPECT_NEAR(*spearman(pairs).value, correlation_of_ranks(pairs), 1e-12);
  EXPECT_NEAR(*weighted_kappa(pairs, KappaWeights::linear).value, kappa_of_counts(pairs, GetParam()), 1e-12);
}

INSTANTIATE_TEST_SUITE_P(Marks, FewMarks, testing::Values(2, 3, 17, 41, 64, 100, 250));

}  // namespace
}  // namespace landdrill
