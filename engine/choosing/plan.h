// The best programme: one option for each element, optional elements in or out, within every limit.
//
//   Plan best = plan(routine, wish, {});
//   best.choices[0].options       // {0, 1, 0, leave_out, ...}
//   best.limits[3].one_more       // +0.8400: what one more second would be worth
//
// Highest expected total (exact, risk.h), or the highest value that is reached with a wished chance, or the
// highest chance to reach a target (by the odds of forecast.h). Limits: the event's quotas, the limits of
// families over the routine, the time with its tolerance, and the coach's own. Without a tempo there are no
// limits in seconds; the notes say so. An option that breaks a limit within its element (how many parts, of a
// family, of one code) is no option, unless the event's limits are not heeded; the notes name it.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/chances/forecast.h"
#include "engine/chances/obstacle.h"
#include "engine/chances/odds.h"
#include "engine/choosing/plan_wish.h"  // IWYU pragma: export
#include "engine/routine/routine.h"
#include "engine/routine/wish.h"
#include "grammar/diagnostics.h"
#include "tables/decimal.h"
#include "tables/quantity.h"

namespace landdrill {

struct Plan {
  Obstacles obstacles;
  std::vector<std::string> notes;  // options that are left out, and limits: whole sentences
  // Best first. The first is the one of the highest expected total among those that nobody would notice to be worse by
  // the aim, and what is written where no change is a gain that anyone would notice.
  std::vector<PlanChoice> choices;
  Decimal noticed;  // so much is: points; for a target, chance in per cent
  // Where that is not the aim: the choice of the highest expected total.
  std::optional<PlanChoice> highest_total;
  // What the sheet says now, with what the changes bring as `behind`; empty while a mark is missing, or when
  // an element has no option to choose from.
  std::optional<PlanChoice> as_written;
  bool as_written_allowed = true;
  bool proved = true;
  // When not proved: nothing is better than choices[0] by more than this (points; for target: chance in per
  // cent). 0: choices[0] is the best, only the next ones are not proved. Empty when nothing bounds it:
  // stopped before any was found.
  std::optional<Decimal> gap;
  // When not proved: how many programmes were tried one by one, where they were too many to try all. 0: it
  // had to stop.
  std::size_t tried = 0;
  // For quantile and target: how many others of those looked into are as good as the first as far as the grid
  // of the odds can tell.
  std::size_t not_told_apart = 0;
  std::vector<PlanLimit> limits;
  PlanDoubt doubt;                    // of `choices`, and as_written after them where it is allowed
  std::vector<std::string> conflict;  // limits that cannot be met together, in words, or elements that their
                                      // own limits leave no option; empty when something is feasible
};

Plan plan(const Routine& routine, const Wish& wish, const PlanWish& how);

// What the rules object to in a programme, see objections.h.
Diagnostics objections_with(const Routine& routine, const Wish& wish, const PlanChoice& choice,
                            const Diagnostics& of_sheet);

}  // namespace landdrill
