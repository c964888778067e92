// How the routines of the season book went: version after version, with what came of each.
//
//   SwumVersions versions;
//   versions.add(routine, {version_swum(swum)});       // in the order of the book
//   versions.all()[0].versions
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/judging/season_progress.h"
#include "engine/season/as_swum.h"
#include "tables/folder.h"
#include "tables/store/book.h"

namespace landdrill {

struct SwumVersion {
  std::string event_title;
  ProgressVersion version;
};

// Of a sheet with a routine, which may have some of the panels of its version alone.
SwumVersion version_swum(const Swum& swum);

class SwumVersions {
 public:
  // `parts` of one version, at least one.
  void add(const KeptBlock& version, std::vector<SwumVersion> parts);
  // The latest version of each routine too, when nothing was swum of it yet.
  Result<void> add_latest(const Book& book);
  std::vector<SeasonProgress> all();

 private:
  struct OfRoutine {
    KeptBlock last;
    std::string event_title;
    std::vector<ProgressVersion> versions;
  };
  std::vector<OfRoutine> routines_;
};

}  // namespace landdrill
