// What changed between two value sets, and what that does to a sheet.
//
//   values_compare_page({"club-2026", "club-2027", compare_sets(before, after), "harbour.sheet", moves})
#pragma once

#include <string>
#include <vector>

#include "engine/report/page.h"
#include "engine/score/moves.h"
#include "tables/compare_sets.h"

namespace landdrill::report {

struct ComparedSets {
  std::string before, after;  // names
  SetComparison changes;
  std::string sheet = {};  // may be empty
  std::vector<SheetMove> moves = {};
};
Page values_compare_page(const ComparedSets& compared);

}  // namespace landdrill::report
