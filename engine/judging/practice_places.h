// Where a trainee is off: by kind, by level, by part of the session; and which of these chance does not explain. Of the
// room alone.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/judging/practice.h"
#include "engine/judging/practice_figures.h"
#include "tables/binary.h"

namespace landdrill {

// One task that she has marked.
struct MarkedTask {
  const PracticeTask* task = nullptr;
  double hers = 0;
  double off() const { return hers - task->kept; }
};

// A place that lies apart from the rest by more than chance: with her bias there, or with how far off she is.
struct PlaceApart {
  PracticeReport::Where::By by = PracticeReport::Where::By::kind;
  std::string name;
  double here = 0, elsewhere = 0;
};
struct PlacesApart {
  std::optional<PlaceApart> further_off, otherwise;  // the most striking of each
};
// Puts the places into the report.
PlacesApart find_places(const std::vector<MarkedTask>& marked, PracticeReport& report);

}  // namespace landdrill
