// Marks in rows and columns, two judges row by row, and a number that says something of them.
//
//   MarkTable{2, {7.5, 7.25, 8, {}}}.at(1, 0)     // 8: the second row, the first judge
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace landdrill {

struct MarkTable {
  std::size_t judges = 0;
  std::vector<std::optional<double>> marks;  // row after row, `judges` of each
  std::size_t rows() const { return judges == 0 ? 0 : marks.size() / judges; }
  std::optional<double> at(std::size_t row, std::size_t judge) const { return marks[row * judges + judge]; }
};

// A number with its interval of confidence; `why_not` when there is no number. `low` and `high` are both
// there or both missing: there is no interval where the method has none, or where the marks do not scatter
// enough to make one from.
struct Statistic {
  std::optional<double> value, low, high;
  std::string why_not;   // "all marks are equal"
  std::size_t rows = 0;  // that it rests on
};

// Two judges, row by row.
using Pairs = std::vector<std::pair<double, double>>;

// How often each mark of the one judge met each of the other, where both gave few different ones: marks come
// in steps, so many pairs are few cells.
struct CrossTable {
  std::vector<double> first, second;  // the marks that occur, the lowest first
  std::vector<std::int64_t> counts;   // `second.size()` for each of `first`
  std::int64_t at(std::size_t i, std::size_t j) const { return counts[i * second.size() + j]; }
};

// Pairs counted once for all that is asked of them.
struct CountedPairs {
  explicit CountedPairs(Pairs of);
  Pairs pairs;
  std::optional<CrossTable> table;  // none where there are too many different marks, or one is no number
};

}  // namespace landdrill
