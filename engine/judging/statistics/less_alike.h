// Two questions of one who marks beside a panel, answered only where chance is seldom so striking.
//
//   spreads_less({{7, 6}, {7.25, 7}, {7.25, 8}, {7.5, 9}}, 0.01)     // whether the first of each pair spread less
//   ranks_less_alike(hers, judges, 0.01)                             // whether her order is less the panel's than theirs
#pragma once

#include <span>

#include "engine/judging/statistics/sample.h"

namespace landdrill {

// Pitman (1939), Morgan (1939): of paired numbers, sum and difference correlate where the spreads differ. One-sided;
// `chance`: how often it may say so of equal spreads.
bool spreads_less(const Pairs& pairs, double chance);

// By Fisher's z of Spearman's rho, with the variance 1.06 / (n - 3) (Fieller, Hartley & Pearson 1957), against the mean z
// of judges who were each paired with the others. From eight pairs and two judges on; `chance` as above.
bool ranks_less_alike(const Pairs& hers, std::span<const Pairs> judges, double chance);

}  // namespace landdrill
