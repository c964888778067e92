// Recorded panels judge by judge as text, JSON or CSV: plain sentences first, then the numbers.
//
//   judges(views, {Format::text}, {})
//   //   Tarn Open, 2026-05-09: Duet, free
//   //   Execution: 7 elements, 5 judges
//   //    - Judge 4 is dropped most often: 4 of 7 marks, 2 too high and 2 too low.
//
// Computes nothing. CSV has one number a row; with `full`, text has every pair and the biases by kind.
#pragma once

#include <string>
#include <vector>

#include "engine/meets.h"
#include "engine/report/values.h"

namespace landdrill::report {

std::string judges(const std::vector<MeetView>& meets, Format format, const TextWish& wish);

}  // namespace landdrill::report
