// The marks that judges are compared by: lines of equally many judges on one scale.
//
//   const Others others = others_of(line, 2);     // 7.25 7.50 7.00 7.25, without judge 3: their mean is 7.333...
//   others.below(*line.marks[2])                  // -0.333...: judge 3 marked so much lower
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

#include "engine/routine/routine.h"
#include "tables/binary.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {

// What was marked and how: an element, or an aspect of the whole routine.
struct MarkedLine {
  std::string title;  // "2 Undertow"
  std::string kind;   // of the element: "Lift"; empty for an aspect
  const PanelRule* rule = nullptr;
  JudgeMarks marks;  // as many as the rule has judges, and enough to keep one
};
struct MarkSheet {
  std::string title;  // "Execution"
  std::vector<MarkedLine> lines;
};

// The other judges' marks of a line, added up exactly, so that equal means are equal numbers.
struct Others {
  Mark sum;
  std::int64_t count = 0;
  double mean() const { return binary_mean(sum, count); }
  double below(Mark mark) const { return binary_mean(mark * count - sum, count); }
};
// Without the judge herself and those that are `left_out`, by seat.
Others others_of(const MarkedLine& line, std::size_t judge, const std::vector<bool>& left_out = {});
// The kinds in the order they come in; none when there is only one.
std::vector<std::string> kinds_of(const MarkSheet& sheet);

}  // namespace landdrill
