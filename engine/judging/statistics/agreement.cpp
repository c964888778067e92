#include "engine/judging/statistics/agreement.h"

#include <cassert>
#include <cmath>

#include "engine/judging/statistics/quantile.h"
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

Pairs pairs_of(const MarkTable& table, std::size_t judge, std::size_t other) {
  assert(judge < table.judges && other < table.judges);
  Pairs pairs;
  for (std::size_t row = 0; row < table.rows(); ++row) {
    const std::optional<double> first = table.at(row, judge), second = table.at(row, other);
    if (first && second) pairs.emplace_back(*first, *second);
  }
  return pairs;
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

}  // namespace landdrill
