#include "engine/sample.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace landdrill {

bool all_finite(const MarkTable& table) {
  return std::all_of(table.marks.begin(), table.marks.end(),
                     [](const std::optional<double>& mark) { return !mark || std::isfinite(*mark); });
}

bool all_finite(const Pairs& pairs) {
  return std::all_of(pairs.begin(), pairs.end(), [](const auto& pair) {
    return std::isfinite(pair.first) && std::isfinite(pair.second);
  });
}

double mean_of(std::span<const double> numbers) {
  return std::accumulate(numbers.begin(), numbers.end(), 0.0) / static_cast<double>(numbers.size());
}

double squares_around(std::span<const double> numbers, double mean) {
  double squares = 0;
  for (double number : numbers) squares += (number - mean) * (number - mean);
  return without_rounding(squares, sum_of_squares(numbers));
}

double without_rounding(double squares, double size) {
  // A rounding error is 1e-16 of a number, its square 1e-32; a step of the marks is never below 1e-3 of one.
  constexpr double nothing = 1e-24;
  return std::isfinite(size) && squares <= nothing * size ? 0 : squares;
}

double sum_of_squares(std::span<const double> numbers) {
  return std::inner_product(numbers.begin(), numbers.end(), numbers.begin(), 0.0);
}

std::vector<double> mid_ranks(std::span<const double> numbers) {
  std::vector<std::size_t> order(numbers.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::sort(order.begin(), order.end(),
            [&](std::size_t a, std::size_t b) { return numbers[a] < numbers[b]; });
  std::vector<double> ranks(numbers.size());
  for (std::size_t first = 0, end = 0; first < order.size(); first = end) {
    while (end < order.size() && numbers[order[end]] == numbers[order[first]]) ++end;
    const double rank = (static_cast<double>(first + 1) + static_cast<double>(end)) / 2;
    for (std::size_t i = first; i < end; ++i) ranks[order[i]] = rank;
  }
  return ranks;
}

TwoColumns columns_of(const Pairs& pairs) {
  TwoColumns columns;
  for (const auto& [first, second] : pairs) {
    columns.first.push_back(first);
    columns.second.push_back(second);
  }
  return columns;
}

namespace {

constexpr std::size_t most_different = 64;

// Adds the mark where it is new; false when there are too many.
bool note_mark(std::vector<double>& marks, double mark) {
  const auto place = std::lower_bound(marks.begin(), marks.end(), mark);
  if (place != marks.end() && *place == mark) return true;
  marks.insert(place, mark);
  return marks.size() <= most_different;
}

std::size_t place_in(const std::vector<double>& marks, double mark) {
  return static_cast<std::size_t>(std::lower_bound(marks.begin(), marks.end(), mark) - marks.begin());
}

}  // namespace

std::optional<CrossTable> cross_table(const Pairs& pairs) {
  CrossTable table;
  for (const auto& [first, second] : pairs) {
    if (!note_mark(table.first, first) || !note_mark(table.second, second)) return std::nullopt;
  }
  table.counts.resize(table.first.size() * table.second.size());
  for (const auto& [first, second] : pairs)
    ++table.counts[place_in(table.first, first) * table.second.size() + place_in(table.second, second)];
  return table;
}

Statistic no_number(std::string why) {
  Statistic statistic;
  statistic.why_not = std::move(why);
  return statistic;
}

void set_interval(Statistic& statistic, std::optional<double> low, std::optional<double> high) {
  if (!statistic.value || !low || !high || !std::isfinite(*low) || !std::isfinite(*high)) return;
  statistic.low = low;
  statistic.high = high;
}

Statistic number(double value, std::size_t rows) {
  Statistic statistic = std::isfinite(value) ? Statistic{value, {}, {}, "", 0} : no_number(too_large);
  statistic.rows = rows;
  return statistic;
}

}  // namespace landdrill
