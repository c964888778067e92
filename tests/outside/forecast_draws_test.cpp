// The forecast of ten made-up routines against ten million drawn performances each. Tolerances are five
// standard errors of the draws: a right forecast fails one of all these checks about once in 20,000 runs with
// other seeds; the seed is fixed.
#include <gtest/gtest.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>

#include "engine/chances/forecast.h"
#include "engine/report/sentences.h"
#include "tests/outside/draws.h"
#include "tests/outside/made_up_routines.h"

namespace landdrill {
namespace {

constexpr std::size_t draws = 10'000'000;
constexpr double standard_errors = 5;

struct Moments {
  double mean = 0, deviation = 0, kurtosis = 0;
};
Moments moments(const std::vector<std::int64_t>& totals) {
  Moments result;
  const double count = static_cast<double>(totals.size());
  for (std::int64_t one : totals) result.mean += static_cast<double>(one) / 1e6 / count;
  double squares = 0, fourths = 0;
  for (std::int64_t one : totals) {
    const double off = static_cast<double>(one) / 1e6 - result.mean;
    squares += off * off / count;
    fourths += off * off * off * off / count;
  }
  result.deviation = std::sqrt(squares);
  result.kurtosis = fourths / squares / squares;
  return result;
}

// The share of draws of at least `value`.
double share_from(const std::vector<std::int64_t>& sorted, Decimal value) {
  const auto from = std::lower_bound(sorted.begin(), sorted.end(), value.units());
  return static_cast<double>(sorted.end() - from) / static_cast<double>(sorted.size());
}

double allowed(double chance) {
  const double c = std::clamp(chance, 1e-7, 1 - 1e-7);
  return standard_errors * std::sqrt(c * (1 - c) / static_cast<double>(draws));
}

std::vector<std::int64_t> drawn(const Routine& routine) {
  const auto start = std::chrono::steady_clock::now();
  Draws source(routine, 20261125);
  std::vector<std::int64_t> totals(draws);
  for (std::int64_t& one : totals) one = source.next();
  const std::chrono::duration<double> took = std::chrono::steady_clock::now() - start;
  std::printf("%zu draws in %.1f s\n", draws, took.count());
  std::sort(totals.begin(), totals.end());
  return totals;
}

// At least `share` of the draws are no higher than the quantile, and no more than it are lower.
void check_quantile(const TotalOdds& total, const std::vector<std::int64_t>& sorted, double share) {
  const Decimal quantile = total.odds.quantile(share), one = Decimal::from_units(1);
  EXPECT_GE(1 - share_from(sorted, quantile + total.bound + one), share - allowed(share)) << share;
  EXPECT_LE(1 - share_from(sorted, quantile - total.bound), share + allowed(share)) << share;
}

void check(std::size_t which) {
  const MadeUpRoutine& made = made_up_routines().at(which);
  const ValueSet& set = made.set == "pond" ? kit::pond() : kit::shipped(made.set);
  const kit::ReadSheet sheet(made.text, set);
  const Routine& routine = sheet.routine();
  const Forecast told = forecast(routine, {}, {});
  ASSERT_TRUE(told.total) << (told.obstacles.empty() ? "" : report::words_of(told.obstacles.front()));
  const std::vector<std::int64_t> totals = drawn(routine);
  const Moments seen = moments(totals);
  const double bound = static_cast<double>(told.total->bound.units()) / 1e6;
  const double root = std::sqrt(static_cast<double>(draws));
  const Odds& odds = told.total->odds;
  EXPECT_NEAR(odds.mean(), seen.mean, standard_errors * seen.deviation / root + bound);
  EXPECT_NEAR(odds.deviation(), seen.deviation,
              standard_errors * seen.deviation * std::sqrt((seen.kurtosis - 1) / 4) / root + bound);
  for (double share : {0.05, 0.25, 0.5, 0.75, 0.95}) check_quantile(*told.total, totals, share);
  const ChanceBounds reached = reaches(*told.total, kit::number(made.target));
  const double share = share_from(totals, kit::number(made.target));
  EXPECT_GT(share, 0.02);  // else the target says nothing
  EXPECT_LT(share, 0.98);
  EXPECT_GE(share, reached.least - allowed(share));
  EXPECT_LE(share, reached.most + allowed(share));
}

TEST(ForecastDraws, AgreeOnACalmSolo) {
  check(0);
}
TEST(ForecastDraws, AgreeOnASoloWithSlipsAndADay) {
  check(1);
}
TEST(ForecastDraws, AgreeWhereOneElementScattersMoreThanTheRest) {
  check(2);
}
TEST(ForecastDraws, AgreeOnAnAbsurdSpread) {
  check(3);
}
TEST(ForecastDraws, AgreeAtTheTopOfTheScaleWithSyncErrorsAndPenalties) {
  check(4);
}
TEST(ForecastDraws, AgreeOnFiguresWeightedByDifficulty) {
  check(5);
}
TEST(ForecastDraws, AgreeOnSumsOfPlainMarks) {
  check(6);
}
TEST(ForecastDraws, AgreeWhereFiguresAreWeightedAndTheRestIsNot) {
  check(7);
}
TEST(ForecastDraws, AgreeOnSevenJudgesWithTwoHighAndTwoLowDropped) {
  check(8);
}
TEST(ForecastDraws, AgreeWhereOnlyTheWholeIsMarked) {
  check(9);
}

}  // namespace
}  // namespace landdrill
