// From one total to another, line by line, each line with its cause, summing to the last decimal place.
//
//   estimate 186.4000 | 2 Undertow, difficulty: base mark credited -14.2500 | ... | recorded 171.2250
//
// One thing after another is exchanged; what its share of the score moves by is that line's doing. So the lines add
// up exactly under every scheme, rounding included.
#pragma once

#include <string>
#include <vector>

#include "engine/score/score.h"
#include "tables/decimal.h"
#include "tables/quantity.h"

namespace landdrill {

enum class Cause { difficulty, execution, impression, sync, penalty };
inline constexpr Cause all_causes[] = {Cause::difficulty, Cause::execution, Cause::impression, Cause::sync,
                                       Cause::penalty};
std::string_view word_of(Cause cause);

struct BridgeStep {
  Cause cause;
  std::optional<std::size_t> element;  // index, for difficulty and execution
  std::string label;                   // "2 Undertow", "Choreography and musicality"
  Decimal before, after;               // what changed: a difficulty, the panel's mark, points (below 0)
  int places = 0;                      // with which these are written at least
  Points change = {};
  Points reached = {};  // the total after this step
};
struct Bridge {
  Points from, to;
  std::vector<BridgeStep> steps;  // those that changed something, in the order of the routine
  Points by_cause(Cause cause) const;
};

// Given two complete showings of the same routine (both totals exist), the steps from one to the other.
Bridge bridge(const Routine& routine, const Scored& from, const Scored& to);

}  // namespace landdrill
