// What the season teaches about the coach's expected marks.
//
//   render_text(lessons_page({&learned, &tested, {}, nullptr}), {})
//   //            lessons   panels  95 % interval   drawn in   spread
//   //   all           42   -0.19  -0.30 to -0.08     -0.19     0.31
//
// With a routine: its expected marks beside the calibrated ones, and both totals, which alone are in CSV then.
#pragma once

#include <string>
#include <vector>

#include "engine/judging/calibrated_estimate.h"
#include "engine/judging/lessons.h"
#include "engine/report/page.h"
#include "engine/report/pages/asked.h"
#include "engine/report/pages/lessons_tables.h"  // IWYU pragma: export

namespace landdrill::report {

Page lessons_page(const LessonsTold& told);
// Of all lessons there are; `routine`: whose estimate is to be calibrated, or nullptr.
Page lessons_page(const std::vector<Lesson>& lessons, const Routine* routine);

}  // namespace landdrill::report
