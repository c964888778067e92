// Recorded panels judge by judge as text, JSON or CSV: plain sentences first, then the numbers.
//
//   JudgesReport report(Format::text, {});
//   report.head() + report.first(view) + report.next(another) + report.foot()
//   //   Tarn Open, 2026-05-09: Duet, free
//   //   Execution: 7 elements, 5 judges
//   //    - Judge 4 is dropped most often: 4 of 7 marks, 2 too high and 2 too low.
//
// A piece for each meet, so that a long report can be printed while it is made. Computes nothing. CSV has one
// number a row; with `full`, text has every pair and the biases by kind.
#pragma once

#include <string>
#include <vector>

#include "engine/judging/meets.h"
#include "engine/report/values.h"

namespace landdrill::report {

class JudgesReport {
 public:
  JudgesReport(Format format, TextWish wish);
  std::string head() const;
  std::string first(const MeetView& meet) const;
  std::string next(const MeetView& meet) const;
  std::string foot() const;

 private:
  std::string piece(const MeetView& meet) const;

  Format format_;
  TextWish wish_;
};

}  // namespace landdrill::report
