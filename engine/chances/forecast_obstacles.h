// What stands in the way of a forecast.
//
//   obstacles_before(routine, risked, spreads)
//   // {{Obstacle::Of::elements_unmarked, {.elements = {1, 3}}}}
#pragma once

#include "engine/chances/obstacle.h"
#include "engine/chances/risk.h"
#include "engine/chances/spreads.h"
#include "engine/routine/wish.h"
#include "engine/score/account.h"

namespace landdrill {

// Before anything is worked out: marks or spreads that are missing, base marks that the set does not have,
// numbers that no forecast can be made of.
Obstacles obstacles_before(const Routine& routine, const Risked& risked,
                           const Spreads& spreads);
// Lines without a mark, elements in one.
Obstacles unmarked_lines(const Unmarked& missing);

// How many of the runs that count said something of sync errors.
std::size_t runs_with_sync(const Routine& routine, const RunWish& wish);

}  // namespace landdrill
