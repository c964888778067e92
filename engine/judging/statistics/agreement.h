// How far judges agree: the statistics, each by its published definition.
//
//   MarkTable six{4, {9, 2, 5, 8,  6, 1, 3, 2,  8, 4, 6, 8,  7, 1, 2, 6,  10, 5, 6, 9,  6, 2, 4, 7}};
//   intraclass(six).forms[0].value     // 0.165742, ICC(1,1) of Shrout & Fleiss 1979
//
// Rows are what was marked, columns who marked it; a mark may be missing. Statistics are binary floating
// point: they describe marks and never go into a score. What cannot be worked out says why, in a sentence,
// and is never a number. Pure; panel_view.h makes tables of marks from recorded panels.
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "engine/judging/statistics/sample.h"  // IWYU pragma: export

namespace landdrill {

// The rows that every judge marked.
MarkTable complete_rows(const MarkTable& table);

// The mean of several numbers; interval by Student's t, from two numbers on.
Statistic mean_with_interval(std::span<const double> numbers, double confidence = 0.95);

// The six forms of Shrout & Fleiss (1979), with intervals by their F distributions. Rows with a missing mark
// are left out. Negative where rows differ less than the marks of one row do.
struct Intraclass {
  Statistic forms[6];
};
inline constexpr std::string_view intraclass_forms[6] = {"(1,1)", "(2,1)", "(3,1)",
                                                         "(1,k)", "(2,k)", "(3,k)"};
Intraclass intraclass(const MarkTable& table, double confidence = 0.95);

// Krippendorff (2011); marks may be missing, rows with one mark count for nothing. No interval.
enum class AlphaLevel { nominal, ordinal, interval };
Statistic krippendorff_alpha(const MarkTable& table, AlphaLevel level);

// Kendall's coefficient of concordance with the correction for ties; the chance of a W as high without any
// agreement (chi-square with rows - 1 degrees of freedom). Rows with a missing mark are left out.
struct Concordance {
  Statistic w;
  std::optional<double> by_chance;
};
Concordance kendall_w(const MarkTable& table);

// Of every two judges' orders, on average: (judges x W - 1) / (judges - 1), that is ICC(3,1) of the mid-ranks, with its
// interval. Rows with a missing mark are left out.
Statistic mean_rank_correlation(const MarkTable& table, double confidence = 0.95);

// Pairs with a missing mark are left out.
Pairs pairs_of(const MarkTable& table, std::size_t judge, std::size_t other);

// Cohen's weighted kappa (1968) on the marks that occur; a disagreement weighs the distance of the two marks. Interval by
// the large-sample variance of Fleiss, Cohen & Everitt (1969), cut off at -1 and 1.
Statistic weighted_kappa(const Pairs& pairs, double confidence = 0.95);

// Spearman's rho by mid-ranks, Kendall's tau-b. Interval of rho by Fisher's z, from four pairs on; of tau
// none.
Statistic spearman(const Pairs& pairs, double confidence = 0.95);
Statistic kendall_tau(const Pairs& pairs);

// Bland & Altman (1986): mean difference (first less second), and the limits of agreement mean +- 1.96 s;
// intervals by Student's t, the standard error of a limit being sqrt(3 s^2 / n).
struct AgreementLimits {
  Statistic bias, lower, upper;
};
AgreementLimits bland_altman(const Pairs& pairs, double confidence = 0.95);

}  // namespace landdrill
