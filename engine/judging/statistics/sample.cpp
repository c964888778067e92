#include "engine/judging/statistics/sample.h"

#include <algorithm>
#include <boost/math/distributions/binomial.hpp>
#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/fisher_f.hpp>
#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>
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

namespace {

namespace policies = boost::math::policies;
// What is out of range comes back as no number, not as an exception.
using Quiet =
    policies::policy<policies::domain_error<policies::ignore_error>,
                     policies::pole_error<policies::ignore_error>,
                     policies::overflow_error<policies::ignore_error>,
                     policies::evaluation_error<policies::ignore_error>, policies::promote_double<false>>;

std::optional<double> finite(double value) {
  if (!std::isfinite(value)) return std::nullopt;
  return value;
}
bool possible(double freedom) {
  return std::isfinite(freedom) && freedom > 0;
}

}  // namespace

std::optional<double> normal_quantile(double share) {
  return finite(boost::math::quantile(boost::math::normal_distribution<double, Quiet>(), share));
}

std::optional<double> student_quantile(double share, double freedom) {
  if (!possible(freedom)) return std::nullopt;
  return finite(boost::math::quantile(boost::math::students_t_distribution<double, Quiet>(freedom), share));
}

std::optional<double> fisher_quantile(double share, double above, double below) {
  if (!possible(above) || !possible(below)) return std::nullopt;
  return finite(
      boost::math::quantile(boost::math::fisher_f_distribution<double, Quiet>(above, below), share));
}

std::optional<double> chi_square_above(double value, double freedom) {
  if (!possible(freedom) || !(value >= 0)) return std::nullopt;
  const boost::math::chi_squared_distribution<double, Quiet> distribution(freedom);
  return finite(boost::math::cdf(boost::math::complement(distribution, value)));
}

std::optional<double> binomial_at_least(std::size_t count, std::size_t of, double chance) {
  if (count == 0) return 1;
  const boost::math::binomial_distribution<double, Quiet> distribution(static_cast<double>(of), chance);
  return finite(boost::math::cdf(boost::math::complement(distribution, static_cast<double>(count - 1))));
}

}  // namespace landdrill
