// How far marks scatter, and what says so: the sheet, the recorded panels at hand, or the value set.
//
//   spreads(routine, wish, {}).elements[1]
//   // 0.4 marks, "the sheet", or 0.27, "3 recorded panels, 15 marks"
//
// Told by hand (SpreadWish) first; then the sheet (`spread` of the option, then of the routine); then
// recorded panels of this sheet, if they have enough marks; then the set's table `spreads`. Nothing is made
// up: where nothing says it, it is empty.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/routine/wish.h"
#include "engine/score/score.h"
#include "tables/decimal.h"
#include "tables/value_set.h"

namespace landdrill {

enum class SpreadFrom { nothing, told, sheet, panels, set };
std::string_view word_of(SpreadFrom from);  // "told", "sheet", "panels", "set"

struct Spread {
  SpreadFrom from = SpreadFrom::nothing;
  Decimal marks;                    // standard deviation
  std::string says;                 // "spread 0.4 in the sheet", "3 recorded panels, 45 marks"
  const Provenance* row = nullptr;  // for SpreadFrom::set
};
struct SpreadWish {
  std::optional<Decimal> judges, day;  // told by hand
  std::optional<SpreadFrom> only;      // sheet, panels or set: nothing else is asked
};
struct Spreads {
  std::vector<Spread> elements;  // one for each element, for the option of the wish
  std::vector<Spread> aspects;   // in the order of Showing::aspects
  Spread day;                    // without any source: 0, SpreadFrom::nothing
};

// Recorded panels: pooled standard deviation of the judges around the mean of each line (an element or an
// aspect that they marked), all elements together, all aspects together: sqrt(sum of squares / sum of (marks
// - 1)); at least ten degrees of freedom, to a thousandth of a mark. The day: standard deviation, over three
// panels or more, of the mean by which a panel's kept means lie off the expected marks.
Spreads spreads(const Routine& routine, const Wish& wish, const SpreadWish& spread);

}  // namespace landdrill
