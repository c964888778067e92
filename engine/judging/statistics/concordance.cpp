// Kendall, M. G. (1948), Rank correlation methods: the coefficient of concordance, corrected for ties.
#include <algorithm>
#include <cmath>

#include "engine/judging/statistics/agreement.h"
#include "engine/judging/statistics/quantile.h"
#include "engine/judging/statistics/sample.h"

namespace landdrill {
namespace {

// Sum of t^3 - t over the groups of t equal ranks.
double ties_in(std::vector<double> ranks) {
  std::sort(ranks.begin(), ranks.end());
  double ties = 0;
  for (auto first = ranks.begin(), end = first; first != ranks.end(); first = end) {
    end = std::upper_bound(first, ranks.end(), *first);
    const auto t = static_cast<double>(end - first);
    ties += t * t * t - t;
  }
  return ties;
}

std::string why_no_concordance(const MarkTable& table, const MarkTable& complete) {
  const std::string why = why_incomplete(table, complete);
  return why.empty() && complete.rows() < 2 ? "one row has no order" : why;
}

}  // namespace

Concordance kendall_w(const MarkTable& table) {
  const MarkTable complete = complete_rows(table);
  if (std::string why = why_no_concordance(table, complete); !why.empty())
    return {no_number(std::move(why)), {}};
  const auto n = static_cast<double>(complete.rows()), m = static_cast<double>(table.judges);
  std::vector<double> sums(complete.rows());
  double ties = 0;
  for (std::size_t judge = 0; judge < table.judges; ++judge) {
    std::vector<double> marks;
    for (std::size_t row = 0; row < complete.rows(); ++row) marks.push_back(*complete.at(row, judge));
    const std::vector<double> ranks = mid_ranks(marks);
    for (std::size_t row = 0; row < ranks.size(); ++row) sums[row] += ranks[row];
    ties += ties_in(ranks);
  }
  const double most = m * m * (n * n * n - n) - m * ties;  // twelve times the squares of full agreement
  if (most <= 0) return {no_number("every judge gave one and the same mark to all rows"), {}};
  const double w = 12 * squares_around(sums, m * (n + 1) / 2) / most;
  return {number(w, complete.rows()), chi_square_above(m * (n - 1) * w, n - 1)};
}

}  // namespace landdrill
