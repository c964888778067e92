#include "engine/judging/statistics/sample.h"

#include <algorithm>
#include <array>
#include <bit>
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

std::string why_incomplete(const MarkTable& table, const MarkTable& complete) {
  if (!all_finite(table)) return not_finite;
  if (table.judges < 2) return "there is only one judge";
  if (complete.rows() == 0) return "no row was marked by every judge";
  return "";
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

// Numbers different marks as they come in.
class MarkNumbers {
 public:
  // most_different when there are more.
  std::size_t of(double mark) {
    mark += 0.0;  // so that -0 is 0
    std::size_t slot = (std::bit_cast<std::uint64_t>(mark) * 0x9E3779B97F4A7C15) >> 56;
    for (; slots_[slot] != 0; slot = (slot + 1) % slots_.size()) {
      if (marks_[slots_[slot] - 1u] == mark) return slots_[slot] - 1u;
    }
    if (marks_.size() == most_different) return most_different;
    marks_.push_back(mark);
    slots_[slot] = static_cast<unsigned char>(marks_.size());
    return marks_.size() - 1;
  }

  std::vector<double> in_order() const {
    std::vector<double> sorted = marks_;
    std::sort(sorted.begin(), sorted.end());
    return sorted;
  }
  // Of each number, the place of its mark among `sorted`.
  std::vector<std::size_t> places_in(const std::vector<double>& sorted) const {
    std::vector<std::size_t> places;
    for (double mark : marks_)
      places.push_back(
          static_cast<std::size_t>(std::lower_bound(sorted.begin(), sorted.end(), mark) - sorted.begin()));
    return places;
  }

 private:
  std::array<unsigned char, 256> slots_{};  // by the bits of the mark; 0 is free
  std::vector<double> marks_;
};

std::optional<CrossTable> cross_table(const Pairs& pairs) {
  MarkNumbers first, second;
  std::vector<std::pair<std::size_t, std::size_t>> cells;
  cells.reserve(pairs.size());
  for (const auto& [one, other] : pairs) {
    cells.emplace_back(first.of(one), second.of(other));
    if (cells.back().first == most_different || cells.back().second == most_different) return std::nullopt;
  }
  CrossTable table{first.in_order(), second.in_order(), {}};
  const std::vector<std::size_t> row = first.places_in(table.first), column = second.places_in(table.second);
  table.counts.resize(table.first.size() * table.second.size());
  for (const auto& [one, other] : cells) ++table.counts[row[one] * table.second.size() + column[other]];
  return table;
}

}  // namespace

CountedPairs::CountedPairs(Pairs of) : pairs(std::move(of)) {
  if (all_finite(pairs)) table = cross_table(pairs);
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
  Statistic statistic = std::isfinite(value) ? Statistic{value, {}, {}, "", 0} : no_number(marks_too_large);
  statistic.rows = rows;
  return statistic;
}

}  // namespace landdrill
