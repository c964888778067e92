// The totals of a routine alone, as the account has them but without its story: for long streams of sheets.
//
//   totals(routine, wish, 0).estimate      // 213.6125
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/routine/routine.h"
#include "engine/routine/wish.h"
#include "engine/score/score.h"
#include "tables/decimal.h"
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

Totals totals(const Routine& routine, const Wish& wish, std::optional<std::size_t> panel);

// What the lines of one sheet are worth under one value set and under another: those that move.
//
//   moves({routine_2026, wish}, {routine_2027, wish})     // {{"2 Undertow", 4.00, 4.10, 2}, ...}
//
// Both routines are of the same sheet. A total without a mark that it needs is empty.

struct SheetMove {
  std::string line;
  std::optional<Decimal> before, after;
  int places = 2;  // that they are shown with, at least

  std::optional<Decimal> change() const;  // empty when one of them is
};

struct PricedSheet {
  const Routine& routine;
  Wish wish;
};
std::vector<SheetMove> moves(const PricedSheet& before, const PricedSheet& after);

}  // namespace landdrill
