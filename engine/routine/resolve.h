// Sheet + value set -> routine, or what is wrong with it.
//
//   Resolved resolved = resolve(sheet, set);
//   resolved.routine        // empty when anything is in error: nothing is scored from a bad line
//
// Errors: a word that is not in the set, a number out of its range or off its step, the wrong number of
// judges, an element that is not in the routine, a value of the set that is a gap. What the rules object to in a
// routine is a second step (score/objections.h).
#pragma once

#include "engine/routine/routine.h"  // IWYU pragma: export
#include "grammar/blocks.h"
#include "grammar/diagnostics.h"
#include "tables/value_set.h"

namespace landdrill {

Resolved resolve(const ast::Sheet& sheet, const ValueSet& set);

}  // namespace landdrill
