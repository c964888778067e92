// Which value sets there are, and where sets come from.
//
//   values_list_page({{{"club-2026", "Club league", "2026", 214, {}, "/home/club/values/club-2026", 4}}, ...})
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/report/page.h"

namespace landdrill::report {

// A set that can be named.
struct ListedSet {
  std::string name, title, edition;
  std::size_t rows = 0;
  std::optional<std::size_t> edits = {};  // of one in a season file
  std::string place = {};                 // its folder, or the season file
  std::size_t origin = 0;                 // its place in `origins`, from 1 on; 0: none of them
  std::vector<std::string> hidden = {};   // the folders of further sets of that name, which do not count
};
// Where sets are looked for: "the folders that --values names", and which these are here.
struct SetOrigin {
  std::string words;
  std::vector<std::string> folders = {};
};
struct ListedSets {
  std::vector<ListedSet> sets;
  std::vector<SetOrigin> origins = {};  // in order; none when a season file is named
  std::string season = {};              // the file
};
Page values_list_page(const ListedSets& listed);

}  // namespace landdrill::report
