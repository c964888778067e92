// A value set as it was read, and from where: a folder, a season file, or neither when it is an edition of the book.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "tables/load.h"

namespace landdrill {

struct ReadSet {
  TableFiles files;
  Loaded loaded;
  std::filesystem::path folder = {};               // empty when it is from a season file
  std::vector<std::filesystem::path> hidden = {};  // with further sets of that name, which do not count
  std::string season = {};                         // the season file
};

}  // namespace landdrill
