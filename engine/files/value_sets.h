// Where the value sets of sheets come from: folders (set_folders.h) or a season file (season/season_sets.h). Each set
// is read once and lives as long as this.
//
//   auto set = sets.of_sheet("kingfisher-2026", "club/duet.sheet");   // (*set)->loaded.set
#pragma once

#include <map>
#include <mutex>
#include <string>
#include <string_view>
#include <vector>

#include "engine/files/read_set.h"
#include "tables/folder.h"

namespace landdrill {

class ValueSets {
 public:
  ValueSets() = default;
  ValueSets(const ValueSets&) = delete;
  ValueSets& operator=(const ValueSets&) = delete;
  virtual ~ValueSets() = default;

  // The set called `name` for a sheet in `file`. Diagnostics of the tables are the caller's to print, once.
  Result<const ReadSet*> of_sheet(std::string_view name, std::string_view file);
  // The same, when it is the one that was asked for last; nullptr otherwise. Changes nothing, and may be called while
  // another thread asks for a set.
  const ReadSet* last_of_sheet(std::string_view name, std::string_view file) const;
  // The names of all sets that can be found, for "did you mean"; for a sheet in `file`.
  const std::vector<std::string>& names(std::string_view file);

 private:
  virtual Result<const ReadSet*> find(std::string_view name, std::string_view file) = 0;
  virtual std::vector<std::string> look_for_names(std::string_view file) = 0;

  // A long stream asks for the same again and again.
  std::map<std::string, std::vector<std::string>> names_;  // by the folder of the sheet
  mutable std::mutex last_mutex_;
  std::string last_name_, last_beside_;
  const ReadSet* last_ = nullptr;
};

// The folder of a file as it is typed, with its `/`.
inline std::string_view beside(std::string_view file) {
  return file.substr(0, file.rfind('/') + 1);
}

}  // namespace landdrill
