// What the rules of the event object to in a routine that can be priced all the same: limits within elements,
// quotas, time, swimmers.
//
//   objections_to(routine, {})[0]     // about the event: "5 hybrid elements", "from 3 to 4 in duet-free"
//
// What a sheet says of it with line and column is made of them (objections.cpp).
#pragma once

#include "engine/routine/resolve.h"
#include "engine/routine/routine.h"
#include "engine/routine/sheet.h"
#include "engine/routine/wish.h"
#include "engine/score/option_limits.h"
#include "engine/score/score.h"
#include "grammar/blocks.h"
#include "grammar/diagnostics.h"
#include "grammar/problem_code.h"
#include "tables/value_set.h"

namespace landdrill {

// To the routine with these options; nothing of what is within them (option_limits.h).
std::vector<Objection> objections_to(const Routine& routine, const Wish& wish);

// Of what was said of a sheet, what still holds with these options, in the same words; and what comes new,
// without a place in the sheet.
Diagnostics objections_with(const Routine& routine, const Wish& wish, const Diagnostics& of_sheet);

// Sheet + value set -> a routine that can be priced, with what the rules object to in it as warnings at their places in
// the sheet. A total that would leave the exact numbers is an error like those of resolve.
Resolved understood(const ast::Sheet& sheet, const ValueSet& set);
// The sheet gets its routine and these messages, once; nothing happens without a tree.
void understand(Sheet& sheet, const ValueSet& set);

}  // namespace landdrill
