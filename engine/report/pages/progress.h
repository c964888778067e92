// How routines went over the season: a line for each run-through and each panel, the versions of a routine apart.
//
//   render_text(progress_page(seasons), {})
//   //   2026-05-09  panel  Tarn Open    21.05   7.27     1  -1.80   209.7167
//
// In full it has elements and impression apart as well.
#pragma once

#include <vector>

#include "engine/judging/progress.h"
#include "engine/report/page.h"

namespace landdrill::report {

Page progress_page(const std::vector<SeasonProgress>& seasons);

}  // namespace landdrill::report
