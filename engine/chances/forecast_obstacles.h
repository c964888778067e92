// What stands in the way of a forecast, in whole sentences that say what to do.
//
//   obstacles_before(routine, risked, spreads)
//   // {"elements 1 and 3 have no expected mark: add `expect`, or a run"}
#pragma once

#include "engine/chances/forecast.h"
#include "engine/chances/risk.h"
#include "engine/chances/spreads.h"
#include "engine/routine/wish.h"
#include "tables/value_set.h"

namespace landdrill {

// Before anything is worked out: marks or spreads that are missing, base marks that the set does not have,
// numbers that no forecast can be made of.
Obstacles obstacles_before(const Routine& routine, const Risked& risked, const Spreads& spreads);
// Of elements weighted together.
std::string too_many_states(const PanelRule& rule);

// How many of the runs that count said something of sync errors.
std::size_t runs_with_sync(const Routine& routine, const RunWish& wish);

}  // namespace landdrill
