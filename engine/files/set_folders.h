// Value sets from folders: those that are told, beside the sheet, or where folder.h says.
//
//   SetFolders folders({"club-sets"});
//   folders.of_sheet("kingfisher-2026", "club/duet.sheet")
//   folders.of_path("club-sets/kingfisher-2026")
#pragma once

#include <filesystem>
#include <map>
#include <memory>
#include <string>
#include <utility>
#include <vector>

#include "engine/files/read_set.h"
#include "engine/files/value_sets.h"
#include "tables/folder.h"

namespace landdrill {

class SetFolders : public ValueSets {
 public:
  explicit SetFolders(std::vector<std::filesystem::path> told) { search_.told = std::move(told); }

  // The set of a folder.
  Result<const ReadSet*> at(const SetPlace& place);
  // The same; it is called as the folder is.
  Result<const ReadSet*> of_path(const std::string& folder);
  // Where sets are looked for, for a sheet in `file`.
  Search search_beside(std::string_view file) const;

 private:
  Result<const ReadSet*> find(std::string_view name, std::string_view file) override;
  std::vector<std::string> look_for_names(std::string_view file) override;

  Search search_;
  std::map<std::string, std::unique_ptr<ReadSet>> read_;  // by folder
  // Folders are looked through once, by where the sheet is.
  std::map<std::pair<std::string, std::string>, Result<SetPlace>> places_;  // by name and folder
};

// The whole path of a folder, wherever the reader is; links stay links.
std::string whole_path(const std::filesystem::path& folder);

}  // namespace landdrill
