// Whether some numbers lie apart from the rest by more than chance, where many such groups are looked at together.
//
//   std::vector<Look> looks = {{off, lifts, Look::For::either}, {how_far, lifts, Look::For::above}};
//   chances_by_shuffling(looks, meets)[1]      // 0.004: so seldom does any of the groups lie as far above the rest
//
// The numbers of all rows are dealt out anew many times, within each stratum by itself, and the most striking of all
// looks is noted each time (maxT; Westfall & Young 1993, Resampling-based multiple testing). So the chances are
// corrected for the number of looks, whatever the numbers are distributed like. The same every time.
#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace landdrill {

struct Look {
  enum class For { above, either };
  std::vector<double> numbers;    // of every row
  std::vector<std::size_t> rows;  // of the group
  For what = For::either;
};
// `strata`: of every row, numbered from 0. A group of nothing or of everything has the chance 1.
std::vector<double> chances_by_shuffling(std::span<const Look> looks, std::span<const std::size_t> strata);

}  // namespace landdrill
