// What each part of an option is worth, and what the element would be with other parts.
//
//   workable(with_more(option, *hold, -1), kind)      // 1.40: the formula asked again with one hold less
#pragma once

#include "engine/choosing/compare.h"
#include "engine/choosing/worth.h"
#include "engine/routine/routine.h"
#include "tables/quantity.h"

namespace landdrill {

// How often the option has this part, in however many places.
int times_of(const Option& option, const Part& part);
// The same option with `more` of a part (less, when negative; down to none).
Option with_more(Option option, const Part& part, int more);
// What the formula gives; empty when it cannot be worked out or is below 0.
std::optional<Difficulty> workable(const Option& option, const Kind& kind);

// One for each part that differs, in the order of the option; none where the difficulty is stated.
std::vector<PartWorth> part_worths(const Routine& routine, const Option& option, const Worth& worth,
                                   const Way& way);

}  // namespace landdrill
