// Parts -> declared difficulty, by the formula of the element's kind; and what is credited.
//
//   declared(option, kind).difficulty     // 3.85, from "base + sum(parts)" with the option's parts
//
// A difficulty stated on the sheet stands instead of the formula. Rounded once, as the kind's row says.
#pragma once

#include <string>

#include "engine/routine/routine.h"
#include "tables/formula.h"
#include "tables/quantity.h"

namespace landdrill {

struct Declared {
  std::optional<Difficulty> difficulty;  // empty: `why_not` says what is in the way
  std::string why_not;
};

// What the parts of `option` put into the formula of `kind`.
FormulaInput formula_input(const Option& option, const Kind& kind);
Declared declared(const Option& option, const Kind& kind);

}  // namespace landdrill
