// How routines went over the season as text, JSON or CSV: a line for each run-through and each panel, the
// versions of a routine apart.
//
//   progress(seasons, Format::text, {})
//   //   2026-05-09  panel  Tarn Open    22.45     21.05   7.27     1  -1.80   209.7167
//
// Computes nothing. With `full`, text has elements, impression, sync errors and penalties apart as well.
#pragma once

#include <string>
#include <vector>

#include "engine/report/values.h"
#include "engine/judging/season_progress.h"

namespace landdrill::report {

std::string progress(const std::vector<SeasonProgress>& seasons, Format format, const TextWish& wish);

}  // namespace landdrill::report
