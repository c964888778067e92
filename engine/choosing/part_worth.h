// What each part of an option is worth, and what the element would be with other parts.
//
//   workable(with_more(option, *hold, -1), kind)      // 1.40: the formula asked again with one hold less
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/choosing/worth.h"
#include "engine/routine/routine.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {

// One part of an option: what it adds, and what taking one of it out or exchanging one of it does to the
// expected total, at the same mark and chance.
struct PartWorth {
  std::string code;
  int times = 1;
  std::optional<Difficulty>
      adds;  // declared difficulty with it less without one of it; empty: cannot be worked out
  std::optional<Points> dropping;  // change of the expected total, 0 or less as a rule
  struct Exchange {
    std::string code;     // the next part of the family with a lower or higher value that may stand there
    Difficulty declared;  // of the element then
    Points change;        // of the expected total
  };
  std::optional<Exchange> easier, harder;
};

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
