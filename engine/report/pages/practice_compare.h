// Trainees beside each other, and a form to mark on by hand.
//
//   render_text(practice_compare_page(compare_trainees(trainees, "the panel")), {})
//   render_text(marking_form_page(routine), {76})
#pragma once

#include "engine/judging/practice_compare.h"
#include "engine/report/page.h"
#include "engine/routine/routine.h"

namespace landdrill::report {

Page practice_compare_page(const PracticeComparison& comparison);

// A line for each element and aspect that is marked, in swum order, with the scale and room for a mark. Who swims it, who
// marks it and what a panel gave are not on it. At 76 columns it fits a sheet of A4.
Page marking_form_page(const Routine& routine);

}  // namespace landdrill::report
