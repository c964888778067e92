// Kept marks against the textbook distribution of an order statistic: the r-th smallest of n independent
// numbers is at most x with the chance that at least r of them are,
//   sum over i = r ... n of (n over i) F(x)^i (1 - F(x))^(n - i) = I_F(x)(r, n - r + 1),
// the incomplete beta function, for F with jumps as well. T. A. Severini, Elements of Distribution Theory,
// Cambridge University Press 2005, Theorem 7.6 (pp. 219-220; page 220 was read) for the sum; M. Ahsanullah
// and others, An Introduction to Order Statistics, Atlantis 2013, chapter 2, first formula (p. 15, read), for
// the beta function, which is worked out here by Boost.Math.
#include <gtest/gtest.h>

#include <boost/math/special_functions/beta.hpp>
#include <cmath>

#include "engine/chances/mark_odds.h"
#include "tests/unit/kit/kit.h"

namespace landdrill {
namespace {

double below(const Odds& odds, Decimal value) {
  return odds.whole() - odds.at_least(value);
}

using kit::number;

PanelRule panel(int judges, int drop_low, int drop_high, const char* step) {
  PanelRule rule;
  rule.judges = judges;
  rule.drop_low = drop_low;
  rule.drop_high = drop_high;
  rule.step = number(step);
  rule.least = Mark(number("0"));
  rule.most = Mark(number("10"));
  return rule;
}

double binomial_sum(int n, int r, double f) {
  double sum = 0;
  for (int i = r; i <= n; ++i) {
    double choose = 1;
    for (int k = 1; k <= i; ++k) choose = choose * (n - i + k) / k;
    sum += choose * std::pow(f, i) * std::pow(1 - f, n - i);
  }
  return sum;
}

// Dropping all but the r-th smallest leaves its mark as the kept sum.
void check_order_statistic(int judges, int r, const char* step) {
  const PanelRule rule = panel(judges, r - 1, judges - r, step);
  const Odds mark = mark_odds(rule, number("7.3"), number("0.6"));
  const Odds kept = kept_odds(rule, mark);
  for (const Odds::Case& one : mark.cases()) {
    const double f = below(mark, one.value + rule.step), reached = below(kept, one.value + rule.step);
    const double beta = f < 1 ? boost::math::ibeta(r, judges - r + 1, f) : 1.0;
    EXPECT_NEAR(reached, beta, 1e-13) << judges << " " << r << " " << one.value.text();
    EXPECT_NEAR(reached, binomial_sum(judges, r, f), 1e-13);
    // The tail by itself, where the sum down from 1 would hide it.
    const double above = mark.at_least(one.value);
    const double expected = above < 1 ? boost::math::ibeta(judges - r + 1, r, above) : 1.0;
    if (expected < 1e-60) continue;
    EXPECT_NEAR(kept.at_least(one.value) / expected, 1, 1e-10)
        << judges << " " << r << " " << one.value.text();
  }
}

TEST(OrderStatistics, OfSevenJudgesFollowTheIncompleteBetaFunction) {
  for (int r = 1; r <= 7; ++r) check_order_statistic(7, r, "0.5");
}
TEST(OrderStatistics, OfFiveJudgesInTenthsFollowTheIncompleteBetaFunction) {
  for (int r = 1; r <= 5; ++r) check_order_statistic(5, r, "0.1");
}
TEST(OrderStatistics, OfTwentyJudgesFollowTheIncompleteBetaFunction) {
  for (int r : {1, 7, 20}) check_order_statistic(20, r, "0.25");
}

// The mean of the sum of the third to the fifth of seven is the sum of their means, each from its
// distribution: E = sum of P(X > x) over the steps.
TEST(OrderStatistics, OfTwoHighAndTwoLowDroppedAddUpInTheMean) {
  const PanelRule rule = panel(7, 2, 2, "0.5");
  const Odds mark = mark_odds(rule, number("6.9"), number("0.8"));
  double mean = 0;
  for (int r = 3; r <= 5; ++r) {
    for (const Odds::Case& one : mark.cases()) {
      const double f = std::min(1.0, below(mark, one.value));
      mean += 0.5 * (one.value > number("0") ? 1 - boost::math::ibeta(r, 8 - r, f) : 0);
    }
  }
  EXPECT_NEAR(kept_odds(rule, mark).mean(), mean, 1e-11);
}

}  // namespace
}  // namespace landdrill
