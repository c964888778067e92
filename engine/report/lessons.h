// What the season teaches about the coach's expected marks, as text, JSON or CSV.
//
//   lessons({learned, tested}, Format::text, {})
//   //            lessons   panels  95 % interval   drawn in   spread
//   //   all           42   -0.19  -0.30 to -0.08     -0.19     0.31
//
// Computes nothing. With a routine: its expected marks beside the calibrated ones, and both totals.
#pragma once

#include <string>

#include "engine/judging/calibrated_estimate.h"
#include "engine/report/values.h"

namespace landdrill::report {

struct LessonsTold {
  const Learned* learned = nullptr;
  const BackTest* tested = nullptr;
  std::string routine;                           // of `estimate`
  const CalibratedEstimate* estimate = nullptr;  // nullptr: none was asked for
};
std::string lessons(const LessonsTold& told, Format format, const TextWish& wish);

}  // namespace landdrill::report
