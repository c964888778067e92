#include "engine/quantile.h"

#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/fisher_f.hpp>
#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>
#include <cmath>

namespace landdrill {
namespace {

namespace policies = boost::math::policies;
// What is out of range comes back as no number, not as an exception.
using Quiet = policies::policy<
    policies::domain_error<policies::ignore_error>, policies::pole_error<policies::ignore_error>,
    policies::overflow_error<policies::ignore_error>, policies::evaluation_error<policies::ignore_error>>;

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

}  // namespace landdrill
