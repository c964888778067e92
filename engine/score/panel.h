// The kept marks of a panel -> points. Exact: multiply, divide once, round once.
//
//   element_points(rule, {22.00, 3}, 2.70)    // 22 / 3 x 2.70 x 1 = 19.8000
#pragma once

#include "engine/score/dropped_marks.h"  // IWYU pragma: export
#include "tables/decimal.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {

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
