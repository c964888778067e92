// Where the value sets of sheets come from: folders (value_sets.h) or a season file (season/season_sets.h). Each set
// is read once and lives as long as this.
//
//   auto set = sets.of_sheet("kingfisher-2026", "club/duet.sheet");   // (*set)->loaded.set
#pragma once

#include <filesystem>
#include <map>
#include <memory>
#include <mutex>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "tables/folder.h"
#include "tables/load.h"

namespace landdrill {

// A value set as it was read, and from where: a folder, a season file, or neither when it is an edition of the book.

struct ReadSet {
  TableFiles files;
  Loaded loaded;
  std::filesystem::path folder = {};               // empty when it is from a season file
  std::vector<std::filesystem::path> hidden = {};  // with further sets of that name, which do not count
  std::string season = {};                         // the season file
};

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

// Value sets from folders: those that are told, beside the sheet, or where folder.h says.
//
//   SetFolders folders({"club-sets"});
//   folders.of_sheet("kingfisher-2026", "club/duet.sheet")
//   folders.of_path("club-sets/kingfisher-2026")

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

// Where a coach's own sets may be written: never over those that come with the program.

// Empty when the set in `folder` may be changed; else why not, and what to do.
std::optional<Trouble> no_own_folder(const ReadSet& set);
// Empty when a new set may be written into `folder`: it is not there, or empty.
std::optional<Trouble> not_new(const std::filesystem::path& folder);

}  // namespace landdrill
