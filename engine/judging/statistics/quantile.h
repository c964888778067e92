// Quantiles of the distributions that intervals of confidence come from. From Boost.Math.
//
//   *student_quantile(0.975, 16)      // 2.1199
//
// Empty where there is none: a degree of freedom that is not positive, a result that is no finite number.
#pragma once

#include <optional>

namespace landdrill {

std::optional<double> normal_quantile(double share);
std::optional<double> student_quantile(double share, double freedom);
std::optional<double> fisher_quantile(double share, double above, double below);
// The chance of a chi-square of at least `value`.
std::optional<double> chi_square_above(double value, double freedom);

}  // namespace landdrill
