// What the risk of the base mark does to the points that can be expected, exactly.
//
//   38.0625 as declared, 3.6250 on the base mark, slip 12 %: expected 0.88 x 38.0625 + 0.12 x 3.6250 = 33.93
//
// Everything here is at the marks the coach expects: every judge gives that mark. How marks scatter is in
// forecast.h.
#pragma once

#include <optional>
#include <vector>

#include "engine/score.h"

namespace landdrill {

// The chance that an element gets the base mark, and what says so.
struct BaseChance {
  enum class From { nothing, slip, runs } from = From::nothing;
  Decimal percent;  // 0 to 100; 0 when nothing says so
};
// The option's `slip`; without it the share of the run-throughs that `runs` takes into account in which the
// element was shown as base (one run: 0 or 100 %); an element that the event does not mark, or without one of
// both: 0.
BaseChance base_chance(const Routine& routine, std::size_t element, const Wish& wish);

// The showing as expected, every element credited as declared, and the chance of the base mark beside it.
struct Risked {
  Showing showing;                  // nothing is base here
  std::vector<BaseChance> chances;  // one for each element
};
Risked risked(const Routine& routine, const Wish& wish);

// The expected points of one element that is not weighted: (1 - p) x declared + p x base, not rounded. Empty
// without a mark.
struct RiskedPoints {
  Points declared, base;
  Exact expected;
};
std::optional<RiskedPoints> risked_points(const Routine& routine, const Risked& risked, std::size_t element);

// The expected total, not rounded. Where elements are weighted by difficulty together, over every way in
// which base marks can fall. Empty while marks are missing, or when more than `most_risky` elements of one
// weighted rule have a chance that is neither 0 nor 100 %.
constexpr int most_risky = 16;
std::optional<Exact> expected_total(const Routine& routine, const Risked& risked);

}  // namespace landdrill
