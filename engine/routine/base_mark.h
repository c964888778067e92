// What an element is credited with: the difficulty that was declared, or the base mark of its kind, where what was declared
// was not shown.
//
//   ShownDifficulty shown = credited_as_declared(option);    // declared 2.70, credited 2.70
//   credit_base(shown, kind);                                // declared 2.70, credited 0.50, base
#pragma once

#include <cstddef>

#include "engine/routine/routine.h"
#include "tables/decimal.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {

struct ShownDifficulty {
  Difficulty declared, credited;
  bool base = false;
};

ShownDifficulty credited_as_declared(const Option& option);
// The kind has a base mark (resolve.h saw to it).
void credit_base(ShownDifficulty& shown, const Kind& kind);
// Of several runs that are averaged: whether the base mark is to be expected, as in more than this share of them it fell
// to it.
bool base_is_expected(std::size_t runs_with_base, std::size_t runs, Decimal share);

}  // namespace landdrill
