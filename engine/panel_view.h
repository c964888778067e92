// A recorded panel, judge by judge: who marks high, who scatters, who is dropped, and how far they agree.
//
//   PanelView view = panel_view(routine, routine.panels[0]);
//   view.judges[2].bias            // +0.18 marks above the mean of the others
//   view.sentences[0]              // "Judge 3 marks lifts 0.5 higher than the others."
//
// Warns where there are too few marks to say anything. A missing judge is treated as the set's rule says (the
// mean of the others, or fewer marks). Statistics are from agreement.h.
#pragma once

#include <string>
#include <vector>

#include "engine/agreement.h"
#include "engine/routine.h"

namespace landdrill {

struct JudgeView {
  std::size_t judge = 0;  // 0 is the first
  std::size_t marks = 0, missing = 0, dropped_high = 0, dropped_low = 0;
  std::optional<double> bias;        // mean of (her mark - mean of the other judges), in marks
  std::optional<double> spread;      // standard deviation of those differences
  std::optional<double> mean;        // of her marks
  std::optional<double> rank_order;  // Spearman against the mean of the others
};
struct PairView {
  std::size_t judge = 0, other = 0;
  Statistic spearman, kendall, kappa;
  AgreementLimits limits;
};
// The judges of one panel of the set (the elements' judges, or those of one aspect of the whole routine).
struct PanelView {
  std::string title;               // "Execution"
  std::vector<std::string> lines;  // what was marked: "2 Undertow"
  MarkTable table;
  std::vector<JudgeView> judges;
  std::vector<PairView> pairs;
  Intraclass intraclass;
  Statistic nominal, ordinal, interval;
  Concordance concordance;
  std::vector<std::string> sentences;  // plain, the most important first
  std::vector<std::string> warnings;   // too few marks to ...
};

// Elements that are marked by the same number of judges on the same scale make one view, over all panels
// given; so do the aspects of the whole routine together. Judges are taken to sit in the same seats in all of
// them.
std::vector<PanelView> panel_views(const Routine& routine, std::span<const RecordedPanel> panels);

}  // namespace landdrill
