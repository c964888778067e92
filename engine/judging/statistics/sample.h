// A handful of numbers: their mean, how far they scatter, their ranks. What agreement.h is made of.
//
//   mid_ranks({{7.5, 8, 7.5}})      // 1.5, 3, 1.5: equal numbers share the mean of their ranks
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "engine/judging/statistics/mark_table.h"

namespace landdrill {

bool all_finite(const MarkTable& table);
bool all_finite(const Pairs& pairs);
inline constexpr const char* not_finite = "a mark is no number";
// Why nothing can be said of the rows that every judge marked; empty where something can be.
std::string why_incomplete(const MarkTable& table, const MarkTable& complete);
inline constexpr const char* marks_too_large = "the marks are too large to reckon with";

double mean_of(std::span<const double> numbers);  // of at least one
double squares_around(std::span<const double> numbers, double mean);
// `squares` as it is, or exactly 0 where it is nothing but rounding of numbers whose squares add up to
// `size`.
double without_rounding(double squares, double size);
double sum_of_squares(std::span<const double> numbers);

std::vector<double> mid_ranks(std::span<const double> numbers);  // from 1, the lowest first

struct TwoColumns {
  std::vector<double> first, second;
};
TwoColumns columns_of(const Pairs& pairs);

Statistic no_number(std::string why);
// Both bounds, or none when one of them is missing or no finite number.
void set_interval(Statistic& statistic, std::optional<double> low, std::optional<double> high);
// Value with its rows, or why not when it is no finite number.
Statistic number(double value, std::size_t rows);

}  // namespace landdrill
