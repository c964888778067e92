// What the options of a plan wish: for what, within which limits, what has to stay, how long it may look.
//
//   Routine own = routine;                                          // that elements are kept in, or may go
//   const Typed<TypedPlan> typed = typed_plan(asked, own, wish);    // --limit "throw most 2" --keep 2=safer
#pragma once

#include <deque>
#include <string>

#include "engine/choosing/plan.h"
#include "engine/report/pages/asked.h"
#include "engine/report/pages/choosing.h"
#include "engine/routine/wish.h"
#include "tables/decimal.h"

namespace landdrill::report {

struct TypedPlan {
  PlanWish wish;
  Decimal share, target;          // as typed: share in per cent
  std::deque<std::string> texts;  // what the names of the wish's limits point into
};
// Elements to keep and elements that may be left out go into the routine and the wish.
Typed<TypedPlan> typed_plan(const Asked& asked, Routine& routine, Wish& wish);
// --seconds; the usual ones when it is not given.
Typed<Decimal> plan_seconds(const Asked& asked);

}  // namespace landdrill::report
