// An estimate with its expected marks moved by what panels gave so far: raw and calibrated side by side.
//
//   CalibratedEstimate both = calibrated_estimate(routine, {}, learn(kept));
//   both.elements[1].calibrated
//   // 7.0613, where 7.25 is expected and panels give hybrids 0.1887 less
//   both.raw_total, both.calibrated_total
//
// What is calibrated is rounded to four places, ties away from zero, and scored in exact decimals from there.
// Marks of the whole routine stay as expected: no lessons are of them. So does a base mark.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/judging/lessons.h"
#include "engine/routine/wish.h"
#include "tables/quantity.h"

namespace landdrill {

inline constexpr int calibrated_places = 4;

struct CalibratedElement {
  std::string label, kind;                              // "2 Undertow", "hybrid"
  std::optional<Mark> raw, calibrated;                  // empty: none is expected
  std::optional<Points> raw_points, calibrated_points;  // empty: none of its own
};
struct CalibratedEstimate {
  std::vector<CalibratedElement> elements;
  std::optional<Points> raw_total, calibrated_total, change;  // empty while a mark is missing
  int places = 4;                                             // of points of this event
};
CalibratedEstimate calibrated_estimate(const Routine& routine, const Wish& wish, const Learned& learned);

}  // namespace landdrill
