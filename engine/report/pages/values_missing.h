// The values that a sheet needs and its set does not have.
//
//   values_missing_page({"duet.sheet", "Undercurrent", "declared-2024", resolved.gaps})
#pragma once

#include <string>
#include <vector>

#include "engine/report/page.h"
#include "engine/routine/resolve.h"

namespace landdrill::report {

struct MissingValues {
  std::string file, routine;
  std::string set;
  std::vector<Gap> gaps;
};
Page values_missing_page(const MissingValues& missing);

}  // namespace landdrill::report
