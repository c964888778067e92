#include "engine/judging/statistics/by_day.h"

#include <cmath>

namespace landdrill {
namespace {

// What rounding of binary numbers leaves of equal marks.
constexpr double no_scatter = 1e-9;

}  // namespace

std::optional<DayError> error_by_day(std::span<const DayShare> days) {
  double variance = 0, squares = 0, across = 0, across_squares = 0;
  for (const DayShare& day : days) {
    if (day.share >= 1) return std::nullopt;
    const double one = day.share * day.share / (1 - day.share);
    variance += day.off * day.off / (1 - day.share);
    squares += day.share * day.share;
    across += one;
    across_squares += one * one;
  }
  const double error = std::sqrt(variance);
  if (error < no_scatter) return std::nullopt;
  return DayError{error, 1 / (squares + across * across - across_squares)};
}

}  // namespace landdrill
