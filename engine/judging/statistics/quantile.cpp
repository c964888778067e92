#include "engine/judging/statistics/quantile.h"

#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/fisher_f.hpp>
#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>
#include <cmath>
#include <map>
#include <tuple>

namespace landdrill {
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

// A season asks for the quantiles of a few freedoms again and again.
template <class... Parameters>
class Known {
 public:
  template <class Work>
  std::optional<double> value(const Work& work, Parameters... parameters) {
    if (values_.size() > most_) values_.clear();
    const auto [place, is_new] = values_.try_emplace({parameters...});
    if (is_new) place->second = finite(work());
    return place->second;
  }

 private:
  static constexpr std::size_t most_ = 1000;
  std::map<std::tuple<Parameters...>, std::optional<double>> values_;
};

}  // namespace

std::optional<double> normal_quantile(double share) {
  return finite(boost::math::quantile(boost::math::normal_distribution<double, Quiet>(), share));
}

std::optional<double> student_quantile(double share, double freedom) {
  if (!possible(freedom)) return std::nullopt;
  thread_local Known<double, double> known;
  return known.value(
      [&] {
        return boost::math::quantile(boost::math::students_t_distribution<double, Quiet>(freedom), share);
      },
      share, freedom);
}

std::optional<double> fisher_quantile(double share, double above, double below) {
  if (!possible(above) || !possible(below)) return std::nullopt;
  thread_local Known<double, double, double> known;
  return known.value(
      [&] {
        return boost::math::quantile(boost::math::fisher_f_distribution<double, Quiet>(above, below), share);
      },
      share, above, below);
}

std::optional<double> chi_square_above(double value, double freedom) {
  if (!possible(freedom) || !(value >= 0)) return std::nullopt;
  const boost::math::chi_squared_distribution<double, Quiet> distribution(freedom);
  return finite(boost::math::cdf(boost::math::complement(distribution, value)));
}

}  // namespace landdrill
