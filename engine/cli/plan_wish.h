// What the options of `landdrill plan` wish: for what, within which limits, what has to stay, how long.
//
//   TypedPlan typed = typed_plan(call);                            // before any sheet is read
//   std::string mistake = read_limits(call, routine, typed);       // --limit "throw most 2"
#pragma once

#include <deque>
#include <string>

#include "engine/cli/call.h"
#include "engine/choosing/plan.h"

namespace landdrill::cli {

struct TypedPlan {
  PlanWish wish;
  Decimal share, target;          // as typed: share in per cent
  Decimal seconds;                // how long it may look
  std::string mistake;            // empty when all is well
  std::deque<std::string> texts;  // what the names of the wish's limits point into
};
TypedPlan typed_plan(const Call& call);

// The limits, into the wish; or the mistake.
std::string read_limits(const Call& call, const Routine& routine, TypedPlan& plan);
// Elements to keep and elements that may be left out, into a routine; or the mistake.
std::string apply_keeps(const Call& call, Routine& routine, Wish& wish);

}  // namespace landdrill::cli
