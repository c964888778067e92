// Recorded panels judge by judge: plain sentences first, then the numbers.
//
//   render_text(*judges(Asked("judges"), panels), {})
//   //   Tarn Open, 2026-05-09: Duet, free
//   //   Execution: 7 elements, 5 judges
//   //    - Judge 4 is dropped most often: 4 of 7 marks, 2 too high and 2 too low.
//
// In full it has every pair and the biases by kind; CSV has one number a row.
#pragma once

#include <vector>

#include "engine/judging/meets.h"
#include "engine/report/pages/asked.h"

namespace landdrill::report {

// Of these panels, put together as --same-judges says.
Answer judges(const Asked& asked, std::vector<SatPanel> panels);
// Of meets that are put together already.
Answer judges(const Asked& asked, const std::vector<MeetView>& meets);

}  // namespace landdrill::report
