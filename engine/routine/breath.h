// How long the heads stay down in one go: breath-hold, in counts. A stretch goes on across elements and passages, until a
// count above water.
//
//   Breath breath;
//   breath.swim({8, under}, 0);  breath.swim({4, under}, 1);
//   breath.longest()             // 12, and it starts in item 0
#pragma once

#include <cstddef>

#include "engine/routine/routine.h"

namespace landdrill {

class Breath {
 public:
  void swim(const CountUse& use, std::size_t item);
  int longest() const { return longest_; }
  std::size_t longest_starts() const { return longest_starts_; }  // the item; of two as long, the first

 private:
  int longest_ = 0, now_ = 0;
  std::size_t longest_starts_ = 0, starts_ = 0;
};

}  // namespace landdrill
