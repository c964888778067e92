// How a routine went over a season, version by version, and what that comes to in plain sentences.
//
//   SeasonProgress harbour = season_progress("Harbour Lights", "Duet, free", versions);
//   harbour.sentences[0]   // "From the panel of 2026-05-09 to that of 2026-06-20 the mean mark went from
//                          //  7.27 to 7.60 (+0.33)."
//
// Between panels of different versions differences are told all the same, and that the routine changed is
// said.
#pragma once

#include <string>
#include <vector>

#include "engine/lessons.h"

namespace landdrill {

struct ProgressVersion {
  int number = 1;
  std::string kept_at, set;
  std::size_t elements = 0;
  Difficulty declared;                // as written
  int places = 4;                     // of its points
  std::vector<ProgressPoint> points;  // by date
};
struct SeasonProgress {
  std::string routine, event;
  std::vector<ProgressVersion> versions;
  std::vector<std::string> sentences, warnings;
};
SeasonProgress season_progress(std::string routine, std::string event, std::vector<ProgressVersion> versions);

}  // namespace landdrill
