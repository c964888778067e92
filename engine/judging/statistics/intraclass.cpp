// Shrout, P. E. & Fleiss, J. L. (1979), Intraclass correlations: uses in assessing rater reliability.
#include <cassert>
#include <cmath>

#include "engine/judging/statistics/agreement.h"
#include "engine/judging/statistics/sample.h"

namespace landdrill {
namespace {

// The analysis of variance of n rows by k judges; the names of the paper.
struct Variance {
  double n = 0, k = 0;
  double bms = 0, wms = 0, jms = 0, ems = 0;  // mean squares: between rows, within rows, judges, error
};

std::vector<double> complete_marks(const MarkTable& complete) {
  std::vector<double> numbers;
  numbers.reserve(complete.marks.size());
  for (const std::optional<double>& mark : complete.marks) numbers.push_back(*mark);
  return numbers;
}

struct Means {
  double all = 0;
  std::vector<double> rows, judges;
};

Means means_of(std::span<const double> numbers, std::size_t judges) {
  Means means{mean_of(numbers), {}, std::vector<double>(judges)};
  const std::size_t rows = numbers.size() / judges;
  for (std::size_t row = 0; row < rows; ++row) {
    means.rows.push_back(mean_of(numbers.subspan(row * judges, judges)));
    for (std::size_t judge = 0; judge < judges; ++judge) {
      means.judges[judge] += numbers[row * judges + judge] / static_cast<double>(rows);
    }
  }
  return means;
}

Variance analysis_of_variance(std::span<const double> numbers, std::size_t judges) {
  const Means means = means_of(numbers, judges);
  const std::size_t rows = numbers.size() / judges;
  const auto n = static_cast<double>(rows), k = static_cast<double>(judges);
  // Residuals are squared one by one: the difference of two large sums would lose the small ones.
  double error = 0, between = 0, of_judges = 0;
  for (std::size_t i = 0; i < numbers.size(); ++i) {
    const double rest = numbers[i] - means.rows[i / judges] - means.judges[i % judges] + means.all;
    error += rest * rest;
  }
  for (double mean : means.rows) between += k * (mean - means.all) * (mean - means.all);
  for (double mean : means.judges) of_judges += n * (mean - means.all) * (mean - means.all);
  const double size = sum_of_squares(numbers);
  between = without_rounding(between, size);
  of_judges = without_rounding(of_judges, size);
  error = without_rounding(error, size);
  return {n,
          k,
          between / (n - 1),
          (of_judges + error) / (n * (k - 1)),
          of_judges / (k - 1),
          error / ((n - 1) * (k - 1))};
}

// One form: above / below, where the rows differ enough for it to mean anything.
Statistic form(double above, double below, std::size_t rows) {
  Statistic result = below > 0
                         ? number(above / below, rows)
                         : no_number("the rows differ less than the scatter within them would make them");
  result.rows = rows;
  return result;
}

// Of the mean of k judges, from that of one (Spearman and Brown).
std::optional<double> stepped_up(double one, double k) {
  const double below = 1 + (k - 1) * one;
  if (below <= 0) return std::nullopt;
  return k * one / below;
}

// Bounds of F and what they say about one judge and about the mean of k; no error, no interval.
struct RatioBounds {
  std::optional<double> low, high;
};
struct MeanSquare {
  double value = 0, freedom = 0;
};
RatioBounds bounds_of_ratio(MeanSquare of, MeanSquare error, double confidence) {
  const std::optional<double> down = fisher_quantile((1 + confidence) / 2, of.freedom, error.freedom);
  const std::optional<double> up = fisher_quantile((1 + confidence) / 2, error.freedom, of.freedom);
  if (!down || !up || error.value == 0) return {};
  return {of.value / error.value / *down, of.value / error.value * *up};
}
void set_bounds(Statistic& one, Statistic& mean, const RatioBounds& ratio, double k) {
  if (!ratio.low || !ratio.high) return;
  set_interval(one, (*ratio.low - 1) / (*ratio.low + k - 1), (*ratio.high - 1) / (*ratio.high + k - 1));
  set_interval(mean, 1 - 1 / *ratio.low, 1 - 1 / *ratio.high);
}

// Judges drawn at random: the degrees of freedom are themselves an estimate.
void set_random_bounds(Statistic& one, Statistic& mean, const Variance& v, double confidence) {
  if (!one.value || v.ems == 0) return;
  const auto [n, k, bms, wms, jms, ems] = v;
  const double rho = *one.value, fj = jms / ems;
  const double common = n * (1 + (k - 1) * rho) - k * rho;
  const double above = (k - 1) * (n - 1) * (k * rho * fj + common) * (k * rho * fj + common);
  const double below = (n - 1) * k * k * rho * rho * fj * fj + common * common;
  const double freedom = above / below;
  const std::optional<double> down = fisher_quantile((1 + confidence) / 2, n - 1, freedom);
  const std::optional<double> up = fisher_quantile((1 + confidence) / 2, freedom, n - 1);
  if (!down || !up) return;
  const double rest = k * jms + (k * n - k - n) * ems;
  const double low = n * (bms - *down * ems) / (*down * rest + n * bms);
  const double high = n * (*up * bms - ems) / (rest + n * *up * bms);
  set_interval(one, low, high);
  set_interval(mean, stepped_up(low, k), stepped_up(high, k));
}

std::string why_no_forms(const MarkTable& table, const MarkTable& complete) {
  const std::string why = why_incomplete(table, complete);
  return why.empty() && complete.rows() < 2 ? "only one row was marked by every judge" : why;
}

Intraclass no_forms(const std::string& why) {
  Intraclass result;
  for (Statistic& one : result.forms) one = no_number(why);
  return result;
}

}  // namespace

Intraclass intraclass(const MarkTable& table, double confidence) {
  assert(confidence > 0 && confidence < 1);
  const MarkTable complete = complete_rows(table);
  if (const std::string why = why_no_forms(table, complete); !why.empty()) return no_forms(why);
  const Variance v = analysis_of_variance(complete_marks(complete), table.judges);
  const auto [n, k, bms, wms, jms, ems] = v;
  if (!std::isfinite(bms + wms)) return no_forms(marks_too_large);
  if (bms == 0 && wms == 0) return no_forms("all marks are equal");
  const std::size_t rows = complete.rows();
  Intraclass result{{form(bms - wms, bms + (k - 1) * wms, rows),
                     form(bms - ems, bms + (k - 1) * ems + k * (jms - ems) / n, rows),
                     form(bms - ems, bms + (k - 1) * ems, rows), form(bms - wms, bms, rows),
                     form(bms - ems, bms + (jms - ems) / n, rows), form(bms - ems, bms, rows)}};
  auto& [one_way, random, fixed, one_way_mean, random_mean, fixed_mean] = result.forms;
  set_bounds(one_way, one_way_mean, bounds_of_ratio({bms, n - 1}, {wms, n * (k - 1)}, confidence), k);
  set_random_bounds(random, random_mean, v, confidence);
  set_bounds(fixed, fixed_mean, bounds_of_ratio({bms, n - 1}, {ems, (n - 1) * (k - 1)}, confidence), k);
  return result;
}

}  // namespace landdrill
