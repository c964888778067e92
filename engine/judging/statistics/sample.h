// A handful of numbers: their mean, how far they scatter, their ranks. What agreement.h is made of.
//
//   mid_ranks({{7.5, 8, 7.5}})      // 1.5, 3, 1.5: equal numbers share the mean of their ranks
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <utility>
#include <vector>

namespace landdrill {

// Marks in rows and columns, two judges row by row, and a number that says something of them.
//
//   MarkTable{2, {7.5, 7.25, 8, {}}}.at(1, 0)     // 8: the second row, the first judge

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

Statistic no_number(std::string why);
// Both bounds, or none when one of them is missing or no finite number.
void set_interval(Statistic& statistic, std::optional<double> low, std::optional<double> high);
// Value with its rows, or why not when it is no finite number.
Statistic number(double value, std::size_t rows);

// Quantiles of the distributions that intervals of confidence come from. From Boost.Math.
//
//   *student_quantile(0.975, 16)      // 2.1199
//
// Empty where there is none: a degree of freedom that is not positive, a result that is no finite number.

std::optional<double> normal_quantile(double share);
std::optional<double> student_quantile(double share, double freedom);
std::optional<double> fisher_quantile(double share, double above, double below);
// The chance of a chi-square of at least `value`.
std::optional<double> chi_square_above(double value, double freedom);
// The chance that at least `count` of `of` come true, each with the same chance.
std::optional<double> binomial_at_least(std::size_t count, std::size_t of, double chance);

}  // namespace landdrill
