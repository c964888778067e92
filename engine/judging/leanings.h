// Who marks higher or lower than the others, beyond what chance makes of judges who mark alike.
//
//   leanings_in(sheet).found[0]     // judge 4 (of 0 to 6), on all lines, +0.43 marks, surely +0.12 to +0.74
//
// Each judge is held against the mean of the others, by Student's t at a level divided by how many judges and kinds are
// looked at (Bonferroni; Dunn 1961), and the one who stands out most is named. From then on she is none of the others, for
// a single judge far up would make all the rest look low. So it goes on until nobody stands out.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "engine/judging/mark_sheet.h"
#include "engine/judging/statistics/sample.h"

namespace landdrill {

struct Leaning {
  std::size_t judge = 0;
  std::optional<std::size_t> than;  // the other one, where there are but two
  std::string kind;                 // empty: on all lines
  Statistic above;                  // marks above the others who were not named before her
  bool always = false;              // by just so much on every line
};
struct Leanings {
  std::vector<Leaning> found;  // those who are always above or below first, then the largest first
  std::vector<Statistic>
      levels;  // by seat, of all lines: `above` of those who are named, and of those who are not
};
Leanings leanings_in(const MarkSheet& sheet);  // of at least one line

}  // namespace landdrill
