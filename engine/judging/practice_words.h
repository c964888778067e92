// What the report of a practice says in sentences. Of the room alone.
#pragma once

#include <span>

#include "engine/judging/practice.h"
#include "engine/judging/practice_figures.h"
#include "engine/judging/practice_places.h"
#include "engine/judging/statistics/sample.h"

namespace landdrill {

// What chance does not explain.
struct PracticeFaults {
  Statistic bias;  // with an interval that allows for everything else that was looked at
  bool order = false, scale = false;
  PlacesApart places;
};
void say_faults(const PracticeFaults& faults, double step, PracticeReport& report);
void warn_of_practice(std::span<const PracticeTask> tasks, PracticeReport& report);

// Whether a mean is not 0. A difference that never changes has no interval, and is the clearest of all: of marks enough it
// is sure from one step on.
bool is_sure(const Statistic& bias, double step);

}  // namespace landdrill
