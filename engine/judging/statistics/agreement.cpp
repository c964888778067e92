#include "engine/judging/statistics/agreement.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <iterator>

#include "engine/judging/statistics/sample.h"

namespace landdrill {

MarkTable complete_rows(const MarkTable& table) {
  MarkTable complete{table.judges, {}};
  for (std::size_t row = 0; row < table.rows(); ++row) {
    std::size_t given = 0;
    for (std::size_t judge = 0; judge < table.judges; ++judge) given += table.at(row, judge).has_value();
    if (given < table.judges) continue;
    const auto first = table.marks.begin() + static_cast<std::ptrdiff_t>(row * table.judges);
    complete.marks.insert(complete.marks.end(), first, first + static_cast<std::ptrdiff_t>(table.judges));
  }
  return complete;
}

Statistic mean_with_interval(std::span<const double> numbers, double confidence) {
  assert(confidence > 0 && confidence < 1);
  if (numbers.empty()) return no_number("there is nothing to take the mean of");
  for (double one : numbers) {
    if (!std::isfinite(one)) return no_number(not_finite);
  }
  const auto n = static_cast<double>(numbers.size());
  Statistic mean = number(mean_of(numbers), numbers.size());
  const double squares = squares_around(numbers, mean_of(numbers));
  const std::optional<double> t = student_quantile((1 + confidence) / 2, n - 1);
  if (!mean.value || !t || squares == 0) return mean;
  const double reach = *t * std::sqrt(squares / (n - 1) / n);
  set_interval(mean, *mean.value - reach, *mean.value + reach);
  return mean;
}

// Kendall, M. G. (1948), Rank correlation methods: the coefficient of concordance, corrected for ties.

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

Statistic mean_rank_correlation(const MarkTable& table, double confidence) {
  MarkTable ranks = complete_rows(table);
  for (std::size_t judge = 0; judge < ranks.judges; ++judge) {
    std::vector<double> marks;
    for (std::size_t row = 0; row < ranks.rows(); ++row) marks.push_back(*ranks.at(row, judge));
    const std::vector<double> of_judge = mid_ranks(marks);
    for (std::size_t row = 0; row < ranks.rows(); ++row)
      ranks.marks[row * ranks.judges + judge] = of_judge[row];
  }
  return intraclass(ranks, confidence).forms[2];
}

// Krippendorff, K. (2011), Computing Krippendorff's alpha-reliability.

namespace {

// The marks of the rows that at least two judges marked, and where each row starts; the last start is the
// end.
struct Pairable {
  std::vector<double> marks;
  std::vector<std::size_t> starts{0};
  std::size_t rows() const { return starts.size() - 1; }
  std::span<const double> row(std::size_t i) const {
    return std::span(marks).subspan(starts[i], starts[i + 1] - starts[i]);
  }
};

Pairable pairable(const MarkTable& table) {
  Pairable result;
  for (std::size_t row = 0; row < table.rows(); ++row) {
    for (std::size_t judge = 0; judge < table.judges; ++judge) {
      if (const std::optional<double> mark = table.at(row, judge)) result.marks.push_back(*mark);
    }
    const std::size_t before = result.starts.back();
    if (result.marks.size() - before < 2) result.marks.resize(before);
    if (result.marks.size() > before) result.starts.push_back(result.marks.size());
  }
  return result;
}

// Of the n(n-1) ordered pairs of several marks: the sum of the squared differences ...
double squared_differences(std::span<const double> marks) {
  return 2 * static_cast<double>(marks.size()) * squares_around(marks, mean_of(marks));
}
// ... and how many differ at all.
double unequal_pairs(std::span<const double> marks) {
  std::vector<double> sorted(marks.begin(), marks.end());
  std::sort(sorted.begin(), sorted.end());
  const auto n = static_cast<double>(marks.size());
  double pairs = n * n;
  for (auto first = sorted.begin(), end = first; first != sorted.end(); first = end) {
    end = std::upper_bound(first, sorted.end(), *first);
    const auto equal = static_cast<double>(std::distance(first, end));
    pairs -= equal * equal;
  }
  return pairs;
}

}  // namespace

Statistic krippendorff_alpha(const MarkTable& table, AlphaLevel level) {
  if (!all_finite(table)) return no_number(not_finite);
  Pairable given = pairable(table);
  if (given.rows() == 0) return no_number("no row was marked by two judges");
  // The ordinal difference of two marks, the marks between them and half of their own, is that of their
  // mid-ranks.
  if (level == AlphaLevel::ordinal) given.marks = mid_ranks(given.marks);
  const auto disagreement = level == AlphaLevel::nominal ? unequal_pairs : squared_differences;
  const auto n = static_cast<double>(given.marks.size());
  const double expected = disagreement(given.marks) / (n - 1);
  if (expected == 0) return no_number("all marks are equal");
  double observed = 0;
  for (std::size_t row = 0; row < given.rows(); ++row) {
    observed += disagreement(given.row(row)) / static_cast<double>(given.row(row).size() - 1);
  }
  return number(1 - observed / expected, given.rows());
}

}  // namespace landdrill
