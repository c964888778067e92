// The value sets of one call: from folders, or from the season file that was named; each is read once.
//
//   Values values(call);
//   auto set = values.of_sheet("kingfisher-2026", "club/duet.sheet");   // (*set)->loaded.set
#pragma once

#include <map>
#include <memory>
#include <mutex>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "engine/cli/call.h"
#include "engine/cli/exit.h"
#include "engine/report/page.h"
#include "engine/report/pages/face.h"
#include "tables/folder.h"
#include "tables/load.h"
#include "tables/store/season.h"

namespace landdrill::cli {

// A set as it was read, from a folder or from a season file.
struct ReadSet {
  TableFiles files;
  std::filesystem::path folder;  // empty when it is from a season file
  Loaded loaded;
  std::vector<std::filesystem::path> hidden = {};  // with further sets of that name, which do not count
  std::string season = {};
};

class Values {
 public:
  // Heeds --values and --season as far as the command has them.
  explicit Values(const Call& call);

  // The set called `name` for a sheet in `file`. Diagnostics of the tables are the caller's to print, once.
  Result<const ReadSet*> of_sheet(std::string_view name, std::string_view file);
  // The same, when it is the one that was asked for last; nullptr otherwise. Changes nothing, and may be
  // called while another thread asks for a set.
  const ReadSet* last_of_sheet(std::string_view name, std::string_view file) const;
  // The set that an operand names: a folder when it has a `/` in it, else a name.
  Result<const ReadSet*> of_operand(const std::string& operand);
  // The set of a folder.
  Result<const ReadSet*> at(const SetPlace& place);
  // The names of all sets that can be found, for "did you mean"; for a sheet in `file`.
  const std::vector<std::string>& names(std::string_view file);

  bool in_season() const { return !season_file_.empty(); }
  const std::string& season_file() const { return season_file_; }
  // The season file, opened once, and again when it is to be changed; only with --season.
  Result<Season*> season(Season::Mode mode);
  // Where sets are looked for, for a sheet in `file`; not with --season.
  Search search_beside(std::string_view file) const;

 private:
  Result<const ReadSet*> from_season(const std::string& name);
  const Result<SetPlace>& place_of(std::string_view name, std::string_view file);
  std::vector<std::string> look_for_names(std::string_view file);

  Search search_;
  std::string season_file_;
  std::optional<Season> season_;
  Season::Mode season_mode_ = Season::Mode::read;
  std::map<std::string, std::unique_ptr<ReadSet>> read_;  // by folder, or by name in the season file

  // A long stream asks for the same again and again: folders are looked through once, by where the sheet is.
  std::map<std::pair<std::string, std::string>, Result<SetPlace>> places_;  // by name and folder
  std::map<std::string, std::vector<std::string>> names_;

  // of_sheet is mostly asked for the same again.
  mutable std::mutex last_mutex_;
  std::string last_name_, last_beside_;
  const ReadSet* last_ = nullptr;
};

// The whole path of a folder, wherever the reader is; links stay links.
std::string whole_path(const std::filesystem::path& folder);
// What reports say of where the set is from.
report::ValuesPlace values_place(const ReadSet& set);
// A report with that as its last words.
report::Page with_place(report::Page page, const ReadSet& set);

// A trouble as the program prints it.
std::string message(const Trouble& trouble);
// Prints a trouble; Exit::environment.
Exit refuse(Call& call, const Trouble& trouble);
// Prints the mistakes of a set that cannot be used; Exit::errors.
Exit refuse_set(Call& call, const ReadSet& set);

}  // namespace landdrill::cli
