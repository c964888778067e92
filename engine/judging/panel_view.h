// A recorded panel, judge by judge: who marks high, who scatters, who is dropped, and how far they agree.
//
//   std::vector<PanelView> views = panel_views(routine, routine.panels);
//   views[0].judges[2].bias.value    // -0.25 marks: below the mean of the others
//   views[0].sentences[0]            // "Judge 3 marks half a step lower than the others."
//
// Differences are in marks. Judges are told apart by their seat, 0 is the first; they are taken to sit in the
// same seats all through a view. Statistics are from agreement.h and never go into a score.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "engine/judging/statistics/agreement.h"
#include "engine/routine/routine.h"
#include "tables/decimal.h"
#include "tables/value_set.h"

namespace landdrill {

// What was marked and how: an element, or an aspect of the whole routine.
struct MarkedLine {
  std::string title;  // "2 Undertow"
  std::string kind;   // of the element: "Lift"; empty for an aspect
  const PanelRule* rule = nullptr;
  JudgeMarks marks;  // as many as the rule has judges, and enough to keep one
};
// Lines of equally many judges on one scale.
struct MarkSheet {
  std::string title;  // "Execution"
  std::vector<MarkedLine> lines;
};

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
  Statistic bias;                // mean of (her mark - mean of the other judges)
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
  MarkTable table;            // as marked
  MarkTable filled;           // with what the set's rule puts in the place of a missing mark
  std::size_t filled_in = 0;  // how many marks that are
  std::vector<JudgeView> judges;
  std::vector<PairView> pairs;
  Intraclass intraclass;                 // of `filled`
  Statistic nominal, ordinal, interval;  // Krippendorff's alpha, of `table`
  Concordance concordance;               // of `filled`
  std::vector<std::string> sentences;    // plain, the most important first
  std::vector<std::string> warnings;     // where there are too few marks to say anything, and why
};

PanelView panel_view(const MarkSheet& sheet);  // of at least one line

// Elements with the same aspect, number of judges and scale make one sheet, over all panels given; so do the
// aspects of the whole routine.
std::vector<MarkSheet> mark_sheets(const Routine& routine, std::span<const RecordedPanel> panels);
std::vector<PanelView> panel_views(const Routine& routine, std::span<const RecordedPanel> panels);
// The lines of `more` behind those of the same aspect, number of judges and scale.
void put_together(std::vector<MarkSheet> more, std::vector<MarkSheet>& sheets);

}  // namespace landdrill
