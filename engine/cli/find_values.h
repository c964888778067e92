// The value sets of one call: from folders, or from the season file that was named; each is read once.
//
//   Values values(call);
//   auto set = values.of_operand("kingfisher-2026");   // (*set)->loaded.set
#pragma once

#include <string>
#include <string_view>

#include "engine/cli/call.h"
#include "engine/cli/exit.h"
#include "engine/files/value_sets.h"
#include "engine/report/page.h"
#include "engine/report/pages/face.h"
#include "engine/season/season_sets.h"
#include "tables/folder.h"
#include "tables/store/season.h"

namespace landdrill::cli {

class Values {
 public:
  // Heeds --values and --season as far as the command has them.
  explicit Values(const Call& call);

  // Where those of sheets come from.
  ValueSets& of_sheets();
  SetFolders& folders() { return folders_; }
  // The set that an operand names: a folder when it has a `/` in it, else a name.
  Result<const ReadSet*> of_operand(const std::string& operand);

  bool in_season() const { return !season_.file().empty(); }
  // Only with --season.
  const std::string& season_file() const { return season_.file(); }
  Result<Season*> season(Season::Mode mode) { return season_.season(mode); }

 private:
  SetFolders folders_;
  SeasonSets season_;
};

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
