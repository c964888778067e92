// The totals of a routine alone, as the account has them but without its story: for long streams of sheets.
//
//   totals(routine, wish, 0).estimate      // 213.6125
//   Estimated harbour(routine, wish);      // worked out once,
//   harbour.beside(panel).difference       // beside as many panels as there are
#pragma once

#include <optional>

#include "engine/routine/routine.h"
#include "engine/routine/wish.h"
#include "engine/score/score.h"
#include "tables/quantity.h"

namespace landdrill {

// Whether every total of a routine stays within the exact numbers, whichever options are chosen. One that does not is
// refused with the other mistakes, before anything is scored.

bool stays_exact(const Routine& routine);

// Empty for what is not there.
struct Totals {
  Difficulty difficulty;
  std::optional<Points> estimate, recorded, difference, announced;
  int places = 0;  // that points are shown with, at least
};

class Estimated {
 public:
  // Of a routine that outlives this.
  Estimated(const Routine& routine, const Wish& wish);
  const Totals& alone() const { return alone_; }
  Totals beside(const RecordedPanel& seen) const;

 private:
  const Routine& routine_;
  Wish wish_;
  Totals alone_;
};

Totals totals(const Routine& routine, const Wish& wish, std::optional<std::size_t> panel);

}  // namespace landdrill
