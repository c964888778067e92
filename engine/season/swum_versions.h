// How the routines of the season book went: version after version, with what came of each.
//
//   SwumVersions versions;
//   versions.add(routine, {version_swum(swum)});       // in the order of the book
//   versions.all()[0].versions
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "engine/judging/progress.h"
#include "engine/score/account.h"
#include "engine/score/totals.h"
#include "engine/season/as_swum.h"
#include "tables/folder.h"
#include "tables/store/book.h"

namespace landdrill {

// Panels of the book scored again, beside what the coach could expect on their day.
//
//   panel_scores(swum)[0].totals.recorded      // 209.7167, by the values of that day

struct PanelScore {
  std::string date, title;
  Totals totals;
  Unmarked without_total, without_estimate;  // why there is none
};

// Of a sheet with a routine. An estimate rests on no run that came later than the panel.
std::vector<PanelScore> panel_scores(const Swum& swum);

// What the club swam under each edition of a value set.
//
//   (*swum_by_edition(book, {}))[edition.id].panels       // 3

// What was swum under one edition.
struct SwumUnder {
  std::set<std::pair<std::string, std::string>> routines;  // title and event
  std::set<std::int64_t> versions;
  std::size_t runs = 0, panels = 0;
};

// Of what the wish finds, by KeptEdition::id.
Result<std::map<std::int64_t, SwumUnder>> swum_by_edition(const Book& book, BookWish wish);

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
