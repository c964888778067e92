// What the routine can be expected to score when one element is shown in another way.
//
//   Worth undertow(routine, 1, wish);
//   undertow.total({difficulty, mark, chance})     // the routine's expected total, exact
//
// compare.h and next_point.h are worked out with it; what the other elements do is as the wish says.
#pragma once

#include <optional>

#include "engine/chances/forecast.h"
#include "engine/chances/obstacle.h"
#include "engine/chances/risk.h"
#include "engine/routine/wish.h"
#include "tables/decimal.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {

// How an element is shown: its declared difficulty, the mark expected, the chance of the base mark in per
// cent (without meaning where the kind has no base mark).
struct Way {
  Difficulty declared;
  Mark mark;
  Decimal chance;
};

class Worth {
 public:
  // Given an element that the event marks by itself.
  Worth(const Routine& routine, std::size_t element, const Wish& wish);

  const Kind& kind() const { return *routine_.elements[element_].kind; }
  const PanelRule& rule() const { return *routine_.elements[element_].panel; }
  // The points of the element alone; empty where the event weights elements together.
  std::optional<RiskedPoints> alone(const Way& way) const;
  // The expected points of the element, or of its rule where the event weights together; not rounded.
  std::optional<Exact> own(const Way& way) const;
  // The routine's expected total; empty when `expected_total` is, or when it is too large to stay exact.
  std::optional<Exact> total(const Way& way) const;
  std::optional<Points> points(const Way& way) const;  // the total, rounded

 private:
  std::optional<Exact> together(const Way& way) const;

  const Routine& routine_;
  std::size_t element_;
  Risked risked_;
  // What the element is weighted together with; what was worked out once is kept in it.
  mutable std::optional<Together> others_;
  std::optional<Exact> rest_;  // all but what is its own
};

// An expected number of points as it is written: half up to four places, or to the event's when it has more.
Points rounded(const Routine& routine, Exact points);

// The marks that are missing. `asked_apart`: an element that is left out here.
Obstacles missing_marks(const Routine& routine, const Wish& wish,
                        std::optional<std::size_t> asked_apart = std::nullopt);
// Why there is no expected total although no mark is missing.
Obstacle no_total(const Routine& routine, const Risked& risked);

}  // namespace landdrill
