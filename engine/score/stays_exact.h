// Whether every total of a routine stays within the exact numbers, whichever options are chosen. One that does not is
// refused with the other mistakes, before anything is scored.
#pragma once

#include "engine/routine/routine.h"

namespace landdrill {

bool stays_exact(const Routine& routine);

}  // namespace landdrill
