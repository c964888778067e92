#include "engine/score/sync_errors.h"

#include <algorithm>

#include "tables/value_set.h"

namespace landdrill {
namespace {

template <class Uses>
Points sum_of(const Uses& uses) {
  Points sum;
  for (const auto& use : uses) sum += points_of(use);
  return sum;
}

}  // namespace

Points points_of(const SyncUse& sync_errors) {
  return *sync_errors.sync->points * sync_errors.times;
}

Points points_of(const PenaltyUse& penalty) {
  return *penalty.penalty->points * times_counted(penalty);
}

int times_counted(const PenaltyUse& penalty) {
  return penalty.penalty->most ? std::min(penalty.times, *penalty.penalty->most) : penalty.times;
}

Points points_of(const std::vector<SyncUse>& sync_errors) {
  return sum_of(sync_errors);
}

Points points_of(const std::vector<PenaltyUse>& penalties) {
  return sum_of(penalties);
}

}  // namespace landdrill
