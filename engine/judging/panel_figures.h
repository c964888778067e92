// The figures of a recorded panel: of each judge, of each pair, and of all (panel_view.h works them out).
//
//   view.judges[2].bias.value    // -0.25 marks: below the mean of the others
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "engine/judging/leanings.h"
#include "engine/judging/statistics/agreement.h"  // IWYU pragma: export
#include "tables/decimal.h"

namespace landdrill {

struct KindBias {
  std::string kind;
  Statistic bias;
};
struct JudgeView {
  std::size_t judge = 0;
  std::size_t marks = 0, missing = 0;
  // Where her mark lies outside those that count. Of two equal marks it makes no difference which is dropped:
  // then it is neither.
  std::size_t dropped_high = 0, dropped_low = 0;
  double dropped_by_chance =
      0;  // of as many dropped marks, if every judge of a line were as likely to have one
  std::size_t dropped() const { return dropped_high + dropped_low; }
  Statistic bias;                // mean of (her mark - mean of the other judges)
  Statistic level;               // the same without those who were named as high or low before (leanings.h)
  bool high_or_low = false;      // beyond chance, on all lines
  std::optional<double> spread;  // standard deviation of those differences
  std::optional<double> mean;    // of her marks
  Statistic order;               // Spearman's rho with the mean of the others
  std::vector<KindBias> kinds;   // the bias by kind of element, where there are several kinds
};
struct PairView {
  std::size_t judge = 0, other = 0;
  Statistic spearman, kendall;
  Statistic kappa;              // weighted by the distance of the marks
  AgreementLimits limits;       // of (judge - other)
  std::vector<KindBias> kinds;  // mean of (judge - other) by kind, where there are several
};
struct PanelView {
  std::string title;
  bool of_elements = true;  // else of aspects of the whole routine
  Decimal step;             // of the marks
  std::vector<std::string> lines;
  MarkTable table;   // as marked
  MarkTable seated;  // the same without judges who marked nothing
  // How many missing marks the set's rule puts something in the place of, for the score. Here they count for nothing.
  std::size_t filled_in = 0;
  std::vector<JudgeView> judges;
  std::vector<PairView> pairs;
  std::vector<Leaning> leanings;                    // who marks high or low, beyond chance
  std::optional<std::size_t> scatters, is_dropped;  // more than the others, beyond chance (outliers.h)
  Intraclass intraclass;                            // of `seated`, its complete rows
  Statistic nominal, ordinal, interval;             // Krippendorff's alpha, of `table`
  Concordance concordance;                          // of `seated`, its complete rows
  Statistic rank_correlation;                       // likewise: of two judges, on average
  std::vector<std::string> sentences;  // plain, the most important first, without any coefficient
  std::vector<std::string> warnings;   // where there are too few marks to say anything, and why
  std::vector<std::string> about_agreement, agreement_warnings;  // the same of the coefficients
};

}  // namespace landdrill
