// What goes into a forecast or a plan, and what it would be with other numbers than the sheet, its runs and its panels
// say.
//
//   forecast(routine, wish, {.change = change_to(WhatIf::base_likelier)})
#pragma once

#include <functional>

#include "engine/chances/risk.h"
#include "engine/chances/spreads.h"
#include "engine/routine/routine.h"
#include "engine/routine/wish.h"

namespace landdrill {

// Every chance of the base mark a quarter higher or lower, the marks of the judges scattered a quarter wider, no good
// and bad days.
enum class WhatIf { base_likelier, base_rarer, wider, no_day };
inline constexpr WhatIf what_ifs[] = {WhatIf::base_likelier, WhatIf::base_rarer, WhatIf::wider,
                                      WhatIf::no_day};

// Of a routine as it is swum by this wish.
struct Inputs {
  Risked at_risk;
  Spreads spread;
};
using Change = std::function<void(const Wish& wish, Inputs& inputs)>;
Change change_to(WhatIf what);
// `change` may be empty.
Inputs inputs_of(const Routine& routine, const Wish& wish, const SpreadWish& spread, const Change& change);

}  // namespace landdrill
