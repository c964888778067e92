// The marks of a panel -> the marks that are kept -> points. Exact: multiply, divide once, round once.
//
//   keep(rule, {7.25, 7.50, 7.25, 7.00, 7.75})    // drops 7.00 and 7.75; sum 22.00 of 3
#pragma once

#include <span>

#include "engine/routine/routine.h"
#include "tables/decimal.h"
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
// All judges giving `mark`: what an expected mark stands for.
KeptMarks all_giving(const PanelRule& rule, Mark mark);

// The mean of the kept marks, to the sixth place.
Decimal mean_mark(const KeptMarks& kept);
// The panel's mark before any factor: the mean of the kept marks, or their sum, as the rule says.
Exact combined(const PanelRule& rule, const KeptMarks& kept);
// `combined` as it is read: to four places, which no score is ever made of.
struct PanelMark {
  Decimal value;
  int places = 0;  // that are written at least
};
PanelMark panel_mark(const PanelRule& rule, const KeptMarks& kept);
// combined x difficulty x weight, rounded once. For Use::times_difficulty.
Points element_points(const PanelRule& rule, const KeptMarks& kept, Difficulty credited);
// merit / difficulty x weight, rounded once, where `merit` is the sum of combined x credited difficulty and
// `difficulty`, not 0, the sum of the credited ones. For Use::weighted.
Points weighted_points(const PanelRule& rule, Exact merit, Difficulty difficulty);
// combined x weight, rounded once. For Use::plain.
Points plain_points(const PanelRule& rule, const KeptMarks& kept);

}  // namespace landdrill
