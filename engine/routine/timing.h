// Counts and tempo -> seconds, time under water, and the longest time the heads stay down.
//
//   one eight at 120 beats a minute is 4 s; at 160, 3 s
//
// One count is one beat. No limit for breath-hold is stated anywhere here: none is published.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/routine/wish.h"
#include "tables/decimal.h"

namespace landdrill {

// Exact: counts x 60 / beats a minute.
Exact seconds_of(int counts, Decimal beats_a_minute);

struct ItemTime {
  Item item;
  int counts = 0, under = 0;
  std::optional<Decimal> seconds, under_seconds;  // to a tenth; empty without a tempo
};
struct Timing {
  std::vector<ItemTime> items;                   // in the order of the routine
  int counts = 0, under = 0, longest_under = 0;  // longest_under: counts in one go, across items
  std::size_t longest_starts = 0;                // in `items`
  std::optional<Decimal> seconds, under_seconds, longest_under_seconds;
  std::optional<Decimal> under_share;  // per cent of the counts, to a tenth
};
Timing timing(const Routine& routine, const Wish& wish);

}  // namespace landdrill
