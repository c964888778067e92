// What is taken off a total: for sync errors, and for penalties, of which a row may allow only so many.
//
//   points_of("small x3")          // 0.3, where each small one takes 0.1
//   times_counted({overtime, 2})           // 1, where panels take overtime at most once
#pragma once

#include <vector>

#include "engine/routine/routine.h"
#include "tables/quantity.h"

namespace landdrill {

// 0 or more.
Points points_of(const std::vector<SyncUse>& sync_errors);
Points points_of(const std::vector<PenaltyUse>& penalties);
Points points_of(const SyncUse& sync_errors);
Points points_of(const PenaltyUse& penalty);
int times_counted(const PenaltyUse& penalty);

}  // namespace landdrill
