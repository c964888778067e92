// Krippendorff, K. (2011), Computing Krippendorff's alpha-reliability.
#include <algorithm>
#include <cmath>
#include <iterator>

#include "engine/judging/statistics/agreement.h"
#include "engine/judging/statistics/sample.h"

namespace landdrill {
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
