// What the options of `landdrill plan` wish: for what, within which limits, what has to stay, how long.
//
//   TypedPlan typed = typed_plan(call);                            // before any sheet is read
//   std::string mistake = apply_limits(call, routine, texts);      // --limit "throw most 2", into a copy
#pragma once

#include <deque>
#include <string>

#include "engine/cli/call.h"
#include "engine/plan.h"

namespace landdrill::cli {

struct TypedPlan {
  PlanWish wish;
  Decimal share, target;  // as typed: share in per cent
  Decimal seconds;        // how long it may look
  std::string mistake;    // empty when all is well
};
TypedPlan typed_plan(const Call& call);

// The limits, elements to keep and elements that may be left out, put into a routine; or the mistake. `texts`
// keeps what the limits' names point into.
std::string apply_limits(const Call& call, Routine& routine, std::deque<std::string>& texts);
std::string apply_keeps(const Call& call, Routine& routine, Wish& wish);

}  // namespace landdrill::cli
