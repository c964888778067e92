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

#include "engine/judging/lessons.h"
#include "engine/report/page.h"
#include "engine/report/pages/asked.h"

namespace landdrill::report {

// What was learned in numbers, and a routine as expected and calibrated; lessons.h is the door.

struct LessonsTold {
  const Learned* learned = nullptr;
  const BackTest* tested = nullptr;
  std::string routine;                           // of `estimate`
  const CalibratedEstimate* estimate = nullptr;  // nullptr: none was asked for
};

Page lessons_page(const LessonsTold& told);
// Of all lessons there are; `routine`: whose estimate is to be calibrated, or nullptr.
Page lessons_page(const std::vector<Lesson>& lessons, const Routine* routine);

}  // namespace landdrill::report
