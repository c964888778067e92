// How a routine went over a season, version by version, and what that comes to in plain sentences.
//
//   const SeasonOf of{"Harbour Lights", "duet-free", "Duet, free routine"};
//   season_progress(of, versions).sentences[0]
//   // "From the panel of 2026-05-09 \"Tarn Open\" to that of 2026-06-20 \"Mere Cup\"
//   //  the mean mark of an element went from 7.27 to 7.60 (+0.33)."
//
// First and last are so by their day, of whatever version they are: differences between versions are told all
// the same, and what was changed is said.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "engine/judging/lessons.h"
#include "tables/quantity.h"

namespace landdrill {

struct ProgressVersion {
  int number = 1, of = 1;  // how many versions of the routine there are
  std::string kept_at, set;
  std::size_t elements = 0;
  Difficulty declared;                // as written
  int places = 4;                     // of its points
  std::vector<ProgressPoint> points;  // by date; none of one that was not swum yet
  std::string words;                  // what tells one wording of the routine
  std::int64_t edition = 0;           // and one edition of the value set from another
};
struct SeasonOf {
  std::string routine, event, event_title;
};
struct SeasonProgress {
  SeasonOf of;
  std::vector<ProgressVersion> versions;
  std::vector<std::string> sentences, warnings;
};
// `versions`: by their number.
SeasonProgress season_progress(SeasonOf of, std::vector<ProgressVersion> versions);

}  // namespace landdrill
