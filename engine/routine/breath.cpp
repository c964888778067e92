#include "engine/routine/breath.h"

namespace landdrill {

void Breath::swim(const CountUse& use, std::size_t item) {
  if (!use.under) {
    now_ = 0;
    return;
  }
  if (now_ == 0) starts_ = item;
  now_ += use.counts;
  if (now_ <= longest_) return;
  longest_ = now_;
  longest_starts_ = starts_;
}

}  // namespace landdrill
