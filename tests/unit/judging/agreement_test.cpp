#include "engine/judging/statistics/agreement.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <random>

#include "engine/judging/statistics/sample.h"
#include "tables/decimal.h"

namespace landdrill {
namespace {

const std::optional<double> none;

// "0.5", "0.5 in 0.1 0.9", or the reason in brackets.
std::string told(const Statistic& one) {
  const auto text = [](double value) {
    return Decimal::from_units(std::llround(value * 1000) * (Decimal::one / 1000)).text();
  };
  if (!one.value) return "[" + one.why_not + "]";
  return text(*one.value) + (one.low ? " in " + text(*one.low) + " " + text(*one.high) : "");
}
std::string told(const Intraclass& six) {
  std::string text;
  for (const Statistic& form : six.forms) text += (text.empty() ? "" : " | ") + told(form);
  return text;
}
std::string in_all_six(const std::string& reason) {
  Intraclass six;
  for (Statistic& form : six.forms) form.why_not = reason;
  return told(six);
}

TEST(Agreement, KeepsTheRowsThatEveryJudgeMarked) {
  const MarkTable table{2, {7, 8, none, 6, 5, none, 4, 3}};
  EXPECT_EQ(complete_rows(table).marks, (std::vector<std::optional<double>>{7, 8, 4, 3}));
  EXPECT_EQ(pairs_of(table, 1, 0), (Pairs{{8, 7}, {3, 4}}));
}

TEST(Agreement, RanksEqualMarksByTheMeanOfTheirRanks) {
  EXPECT_EQ(mid_ranks(std::vector<double>{7.5, 8, 7.5, 6, 8, 8}),
            (std::vector<double>{2.5, 5, 2.5, 1, 5, 5}));
  EXPECT_TRUE(mid_ranks({}).empty());
}

TEST(Agreement, HasNoQuantileWhereThereIsNoDistribution) {
  EXPECT_FALSE(student_quantile(0.975, 0));
  EXPECT_FALSE(fisher_quantile(0.975, 3, -1));
  EXPECT_FALSE(fisher_quantile(0.975, std::numeric_limits<double>::infinity(), 3));
  EXPECT_FALSE(chi_square_above(std::nan(""), 3));
  EXPECT_FALSE(normal_quantile(1));
  EXPECT_NEAR(normal_quantile(0.975).value(), 1.96, 0.0001);
}

TEST(Agreement, GivesAMeanItsInterval) {
  EXPECT_EQ(told(mean_with_interval(std::vector<double>{1, 2, 3})), "2 in -0.484 4.484");
  EXPECT_EQ(told(mean_with_interval(std::vector<double>{2})), "2");
  EXPECT_EQ(told(mean_with_interval(std::vector<double>{0.1, 0.1, 0.1})), "0.1");
  EXPECT_EQ(told(mean_with_interval({})), "[there is nothing to take the mean of]");
}

TEST(Intraclass, IsNegativeWhereRowsDifferLessThanTheirMarks) {
  const Intraclass six = intraclass({2, {7, 9, 9, 7, 8, 8, 7, 8}});
  EXPECT_LT(six.forms[0].value.value(), 0);
  EXPECT_LT(six.forms[2].value.value(), 0);
  EXPECT_LT(six.forms[3].value.value(), six.forms[0].value.value());
  EXPECT_LE(six.forms[0].low.value(), six.forms[0].value.value());
}

TEST(Intraclass, SaysWhyThereIsNone) {
  EXPECT_EQ(told(intraclass({1, {7, 8, 9}})), in_all_six("there is only one judge"));
  EXPECT_EQ(told(intraclass({3, {7, 8, 9}})), in_all_six("only one row was marked by every judge"));
  EXPECT_EQ(told(intraclass({2, {7, none, none, 8}})), in_all_six("no row was marked by every judge"));
  EXPECT_EQ(told(intraclass({2, {7.1, 7.1, 7.1, 7.1, 7.1, 7.1}})), in_all_six("all marks are equal"));
  EXPECT_EQ(told(intraclass({2, {7, 8, std::nan(""), 8}})), in_all_six("a mark is no number"));
  EXPECT_EQ(told(intraclass({2, {1e200, 8, 1, 8}})), in_all_six("the marks are too large to reckon with"));
}

TEST(Intraclass, HasNoIntervalWhereJudgesDifferByNothing) {
  EXPECT_EQ(told(intraclass({2, {7.1, 7.1, 8.3, 8.3, 6.7, 6.7}})), "1 | 1 | 1 | 1 | 1 | 1");
}

TEST(Intraclass, TellsOrderFromLevel) {
  const Intraclass apart = intraclass({2, {6, 7, 7, 8, 8, 9}});  // a constant mark apart
  EXPECT_EQ(told(apart.forms[2]), "1");
  EXPECT_EQ(told(apart.forms[1]), "0.667");
}

TEST(Intraclass, HasNoMeanFormWhereRowsDifferLessThanChance) {
  const Intraclass six = intraclass({2, {6, 9, 7, 8, 8, 7, 9, 6}});  // every row has the mean 7.5
  EXPECT_EQ(told(six.forms[0]), "-1 in -1 -1");
  EXPECT_EQ(told(six.forms[5]), "[the rows differ less than the scatter within them would make them]");
}

TEST(KrippendorffAlpha, LeavesOutRowsWithOneMark) {
  const MarkTable with{2, {1, 1, 2, 2, 3, 3, 1, 2, none, 3}}, without{2, {1, 1, 2, 2, 3, 3, 1, 2}};
  for (AlphaLevel level : {AlphaLevel::nominal, AlphaLevel::ordinal, AlphaLevel::interval}) {
    EXPECT_EQ(told(krippendorff_alpha(with, level)), told(krippendorff_alpha(without, level)));
    EXPECT_EQ(krippendorff_alpha(with, level).rows, 4u);
  }
}

// Worked out by hand: 4 rows, 8 marks 1 1 2 2 3 3 1 2; one pair differs. Nominal: observed 2 / 8, expected
// (64 - 9 - 9 - 4) / 56.
TEST(KrippendorffAlpha, ComparesDisagreementWithChance) {
  const MarkTable table{2, {1, 1, 2, 2, 3, 3, 1, 2}};
  EXPECT_NEAR(krippendorff_alpha(table, AlphaLevel::nominal).value.value(), 1 - 0.25 * 56 / 42, 1e-12);
}

TEST(KrippendorffAlpha, SaysWhyThereIsNone) {
  EXPECT_EQ(told(krippendorff_alpha({2, {7, 7, 7, 7}}, AlphaLevel::interval)), "[all marks are equal]");
  EXPECT_EQ(told(krippendorff_alpha({2, {7, none, none, 8}}, AlphaLevel::nominal)),
            "[no row was marked by two judges]");
  EXPECT_EQ(told(krippendorff_alpha({1, {7, 8}}, AlphaLevel::ordinal)), "[no row was marked by two judges]");
  EXPECT_EQ(told(krippendorff_alpha({0, {}}, AlphaLevel::ordinal)), "[no row was marked by two judges]");
}

TEST(KendallW, GoesFromFullAgreementToNone) {
  const Concordance full = kendall_w({3, {6, 7, 5, 7, 8, 6, 8, 9, 7}});
  EXPECT_EQ(told(full.w), "1");
  EXPECT_NEAR(full.by_chance.value(), std::exp(-3), 1e-12);  // chi-square 6 with two degrees of freedom
  EXPECT_EQ(told(kendall_w({2, {6, 8, 7, 7, 8, 6}}).w), "0");
}

TEST(KendallW, CountsAJudgeWhoTiesAll) {
  EXPECT_EQ(told(kendall_w({2, {7, 6, 7, 8, 7, 9}}).w), "0.5");
}

TEST(KendallW, SaysWhyThereIsNone) {
  const auto why = [](const MarkTable& table) {
    EXPECT_FALSE(kendall_w(table).by_chance);
    return told(kendall_w(table).w);
  };
  EXPECT_EQ(why({2, {7, 8, 7, 8}}), "[every judge gave one and the same mark to all rows]");
  EXPECT_EQ(why({2, {7, 8}}), "[one row has no order]");
  EXPECT_EQ(why({1, {7, 8}}), "[there is only one judge]");
  EXPECT_EQ(why({2, {7, none}}), "[no row was marked by every judge]");
}

TEST(MeanRankCorrelation, IsThatOfEveryTwoJudgesOnAverage) {
  const MarkTable three{3, {6, 7, 6.5, 7, 6, 7, 8, 9, 8.5, 9, 8, 7.5, 5, 5, 5}};
  const double mean = (*spearman(pairs_of(three, 0, 1)).value + *spearman(pairs_of(three, 0, 2)).value +
                       *spearman(pairs_of(three, 1, 2)).value) /
                      3;
  EXPECT_NEAR(*mean_rank_correlation(three).value, mean, 1e-12);
  EXPECT_NEAR(*mean_rank_correlation(three).value, (3 * *kendall_w(three).w.value - 1) / 2, 1e-12);
}

TEST(MeanRankCorrelation, IsWhatWSaysAlsoWithEqualMarks) {
  const MarkTable two{2, {6, 7, 6, 6, 8, 9, 9, 9, 5, 5, 7, 7}};
  EXPECT_NEAR(*mean_rank_correlation(two).value, 2 * *kendall_w(two).w.value - 1, 1e-12);
  EXPECT_EQ(told(mean_rank_correlation({2, {6, 7, 7, 8, 8, 9}})), "1");
  EXPECT_EQ(told(mean_rank_correlation({1, {7, 8}})), "[there is only one judge]");
}

TEST(Agreement, ReckonsHowLikelySoManyAre) {
  EXPECT_NEAR(*binomial_at_least(3, 3, 0.5), 0.125, 1e-12);
  EXPECT_EQ(binomial_at_least(0, 3, 0.5), 1);
  EXPECT_NEAR(*binomial_at_least(1, 2, 0.5), 0.75, 1e-12);
}

TEST(WeightedKappa, WeighsByTheDistanceOfTheMarks) {
  // 7.5 to 9 is three times as far as 7 to 7.5, though all are neighbours among the marks that occur.
  const Pairs near{{7, 7.5}, {7.5, 7.5}, {9, 9}, {7, 7}}, far{{7, 7}, {7.5, 9}, {9, 9}, {7, 7}};
  EXPECT_GT(*weighted_kappa(near).value, *weighted_kappa(far).value);
  // By hand: distances 1 and 2; observed 1/3 of 1, expected (1 + 1 + 2 + 1 + 1 + 1) / 9 of the marginal
  // shares.
  const Pairs three{{1, 1}, {2, 2}, {3, 2}};
  EXPECT_NEAR(weighted_kappa(three).value.value(), 1 - (1.0 / 3) / (7.0 / 9), 1e-12);
}

TEST(WeightedKappa, CutsItsIntervalOffAtOne) {
  const Statistic kappa = weighted_kappa({{1, 1}, {2, 2}, {3, 3}, {1, 2}});
  EXPECT_EQ(kappa.high, 1);
  EXPECT_LT(kappa.low.value(), *kappa.value);
}

TEST(WeightedKappa, SaysWhyThereIsNone) {
  EXPECT_EQ(told(weighted_kappa({{7, 7}, {7, 7}})), "[both judges gave one and the same mark to all rows]");
  EXPECT_EQ(told(weighted_kappa(Pairs{})), "[the two judges have no row in common]");
  EXPECT_EQ(told(weighted_kappa({{7, HUGE_VAL}})), "[a mark is no number]");
  EXPECT_EQ(told(weighted_kappa({{-1e308, 1e308}})), "[the marks are too large to reckon with]");
}

TEST(WeightedKappa, IsOneWithoutIntervalWhereJudgesAgree) {
  EXPECT_EQ(told(weighted_kappa({{7, 7}, {8, 8}, {7.5, 7.5}})), "1");
}

// `different` marks at most, a quarter apart; the second judge mostly follows the first.
Pairs some_pairs(std::size_t rows, int different) {
  std::mt19937 random(20261125);
  Pairs pairs;
  for (std::size_t i = 0; i < rows; ++i) {
    const int first = static_cast<int>(random() % static_cast<unsigned>(different));
    const int second = (first + static_cast<int>(random() % 5)) % different;
    pairs.emplace_back(first * 0.25, second * 0.25);
  }
  return pairs;
}

// Kendall's tau-b, every pair of rows looked at.
double tau_of_every_pair(const Pairs& pairs) {
  double sum = 0, first = 0, second = 0;
  const auto sign = [](double a, double b) { return (a > b) - (a < b); };
  for (std::size_t i = 0; i < pairs.size(); ++i) {
    for (std::size_t j = 0; j < i; ++j) {
      const int one = sign(pairs[i].first, pairs[j].first), other = sign(pairs[i].second, pairs[j].second);
      sum += one * other;
      first += one * one;
      second += other * other;
    }
  }
  return sum / std::sqrt(first * second);
}

TEST(RankCorrelation, CountsEveryPairOfRows) {
  for (const int different : {2, 3, 17, 41, 250}) {
    const Pairs pairs = some_pairs(400, different);
    EXPECT_NEAR(*kendall_tau(pairs).value, tau_of_every_pair(pairs), 1e-12) << different;
  }
}

TEST(RankCorrelation, GoesFromTheSameOrderToTheReverse) {
  const Pairs same{{6, 1}, {7, 4}, {8, 9}, {9, 10}}, reverse{{6, 9}, {7, 8}, {8, 7}, {9, 6}};
  EXPECT_EQ(told(spearman(same)) + told(kendall_tau(same)), "11");
  EXPECT_EQ(told(spearman(reverse)) + told(kendall_tau(reverse)), "-1-1");
}

TEST(RankCorrelation, HasAnIntervalFromFourPairsOn) {
  EXPECT_FALSE(spearman({{6, 7}, {7, 6}, {8, 9}}).low);
  EXPECT_EQ(told(spearman({{6, 7}, {7, 6}, {8, 9}, {9, 10}})), "0.8 in -0.697 0.996");
}

TEST(RankCorrelation, SaysWhyThereIsNone) {
  for (auto correlation : {+[](const Pairs& pairs) { return spearman(pairs); }, kendall_tau}) {
    EXPECT_EQ(told(correlation({})), "[the two judges have no row in common]");
    EXPECT_EQ(told(correlation({{7, 8}})), "[one row has no order]");
    EXPECT_EQ(told(correlation({{7, 8}, {7, 9}})), "[one of the judges gave the same mark to all rows]");
    EXPECT_EQ(told(correlation({{7, 8}, {std::nan(""), 9}})), "[a mark is no number]");
  }
}

// Every pair of pairs looked at: rising, falling, tied.
double tau_by_looking(const Pairs& pairs) {
  double sum = 0, first = 0, second = 0;
  for (const auto& a : pairs) {
    for (const auto& b : pairs) {
      const double x = (a.first > b.first) - (a.first < b.first),
                   y = (a.second > b.second) - (a.second < b.second);
      sum += x * y;
      first += x * x;
      second += y * y;
    }
  }
  return sum / std::sqrt(first * second);
}

TEST(RankCorrelation, CountsPairsAsLookingAtAllOfThemDoes) {
  unsigned dice = 1;
  const auto roll = [&](unsigned sides) {
    dice = dice * 1664525u + 1013904223u;
    return static_cast<double>((dice >> 16) % sides);
  };
  for (std::size_t size = 3; size < 60; ++size) {
    Pairs pairs{{0, 0}, {1, 1}};  // neither column is all ties
    while (pairs.size() < size) pairs.emplace_back(roll(7), roll(5));
    EXPECT_NEAR(kendall_tau(pairs).value.value(), tau_by_looking(pairs), 1e-12) << size;
  }
}

TEST(BlandAltman, TakesTheFirstLessTheSecond) {
  const AgreementLimits limits = bland_altman({{7, 6}, {8, 8}, {9, 8.5}});
  EXPECT_EQ(told(limits.bias), "0.5 in -0.742 1.742");
  EXPECT_EQ(told(limits.lower), "-0.48 in -2.631 1.671");
  EXPECT_EQ(told(limits.upper), "1.48 in -0.671 3.631");
}

TEST(BlandAltman, HasNoIntervalWhereAllDifferencesAreEqual) {
  const AgreementLimits limits = bland_altman({{7.3, 7.2}, {7.2, 7.1}, {8.9, 8.8}});
  EXPECT_EQ(told(limits.bias) + " " + told(limits.lower) + " " + told(limits.upper), "0.1 0.1 0.1");
}

TEST(BlandAltman, SaysWhyThereIsNone) {
  EXPECT_EQ(told(bland_altman({}).upper), "[the two judges have no row in common]");
  EXPECT_EQ(told(bland_altman({{7, 8}}).bias), "-1");
  EXPECT_EQ(told(bland_altman({{7, 8}}).lower), "[one difference has no spread]");
}

}  // namespace
}  // namespace landdrill
