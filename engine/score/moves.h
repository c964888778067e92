// What the lines of one sheet are worth under one value set and under another: those that move.
//
//   moves({routine_2026, wish}, {routine_2027, wish})     // {{"2 Undertow", 4.00, 4.10, 2}, ...}
//
// Both routines are of the same sheet. A total without a mark that it needs is empty.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/routine/routine.h"
#include "engine/routine/wish.h"
#include "tables/decimal.h"

namespace landdrill {

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
