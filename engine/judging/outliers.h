// Who scatters more than the others, and whose marks are dropped more often, beyond what chance makes of judges who mark
// alike.
//
//   dropped_most(view.judges)     // judge 4 (of 0 to 6): 8 of 11 marks, where chance drops 2
//
// Each for as many judges as are looked at (Bonferroni).
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "engine/judging/mark_sheet.h"
#include "engine/judging/panel_figures.h"

namespace landdrill {

// The one with the widest spread of those who lie further off their own usual distance from the others than the others lie
// off theirs, line by line (after Brown & Forsythe 1974, by Student's t). Nobody of two: they lie as far from each other.
std::optional<std::size_t> scatters_most(const MarkSheet& sheet, const std::vector<JudgeView>& judges);
// Of those whose marks are dropped too often for chance, the one with most of them. On each line the same chance for every
// judge, so their number is no likelier to be high than a binomial one (Hoeffding 1956).
std::optional<std::size_t> dropped_most(const std::vector<JudgeView>& judges);

}  // namespace landdrill
