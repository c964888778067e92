// A recorded panel, judge by judge: who marks high, who scatters, who is dropped, and how far they agree.
//
//   PanelView view = panel_view(mark_sheets(routine, routine.panels)[0]);
//   view.judges[2].bias.value    // -0.25 marks: below the mean of the others
//   view.sentences[0]            // "Judge 3 marks half a step lower than the others (0.05 to 0.36 marks)."
//
// Differences are in marks. Judges are told apart by their seat, 0 is the first; they are taken to sit in the
// same seats all through a view. Statistics are from agreement.h and never go into a score.
#pragma once

#include "engine/judging/mark_sheet.h"     // IWYU pragma: export
#include "engine/judging/panel_figures.h"  // IWYU pragma: export

namespace landdrill {

PanelView panel_view(const MarkSheet& sheet);  // of at least one line

}  // namespace landdrill
