// The drop rule: which marks of a panel count, which are dropped as the highest and the lowest, and what a judge who is
// missing is given.
//
//   judge(rule, {7.25, 7.50, 7.25, 7.00, 7.75})    // drops 7.00 and 7.75; sum 22.00 of 3
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "engine/routine/routine.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {

struct JudgeMark {
  Mark mark;
  enum class State { kept, dropped_high, dropped_low, absent } state = State::kept;
  bool filled = false;  // the judge was missing and got the mean of the others
};

// The sum of the kept marks, and how many there are.
struct KeptMarks {
  Mark sum;
  int count = 0;
};

struct Judged {
  std::vector<JudgeMark> judges;  // as they sat
  KeptMarks kept;
};

// Given as many entries as the rule has judges, with enough marks to keep at least one (resolve.h saw to
// both). Of equal marks the first judge's is dropped as low and the last judge's as high.
Judged judge(const PanelRule& rule, std::span<const std::optional<Mark>> marks);
// The sum that goes into the score.
inline KeptMarks keep(const PanelRule& rule, std::span<const std::optional<Mark>> marks) {
  return judge(rule, marks).kept;
}

}  // namespace landdrill
