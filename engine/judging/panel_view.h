// A recorded panel, judge by judge: who marks high, who scatters, who is dropped, and how far they agree.
//
//   PanelView view = panel_view(mark_sheets(routine, routine.panels)[0]);
//   view.judges[2].bias.value    // -0.25 marks: below the mean of the others
//   view.sentences[0]            // "Judge 3 marks half a step lower than the others."
//
// Differences are in marks. Judges are told apart by their seat, 0 is the first; they are taken to sit in the
// same seats all through a view. Statistics are from agreement.h and never go into a score.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "engine/judging/panel_figures.h"  // IWYU pragma: export
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

PanelView panel_view(const MarkSheet& sheet);  // of at least one line

}  // namespace landdrill
