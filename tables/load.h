// CSV texts -> a value set, with every mistake of all files in one run.
//
//   Loaded loaded = load({"club-2026", {{"parts.csv", "code,family,...\n"}, ...}});
//   loaded.set                 // empty when there are errors
//
// Pure: the texts come from folder.h or from the season file.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "grammar/diagnostics.h"
#include "tables/value_set.h"

namespace landdrill {

struct TableFile {
  std::string file;  // "parts.csv"
  std::string text;
};

struct TableFiles {
  std::string name;   // of the set: "kingfisher-2026"
  std::string place;  // put before file names in messages: "tables/data/kingfisher-2026/"; may be empty
  std::vector<TableFile> files;

  const TableFile* find(std::string_view file) const;  // nullptr when there is none
};

// The same bytes under the same names, in whatever order.
bool same_files(std::vector<TableFile> one, std::vector<TableFile> other);

struct Loaded {
  std::optional<ValueSet> set;
  Diagnostics diagnostics;
};

// What every set says that has no row of its own with that code: data/usual-cautions.csv.
const std::vector<CautionRule>& usual_cautions();

// Reads, then checks (check.h). Warnings do not stop a set from being used.
Loaded load(const TableFiles& files);

}  // namespace landdrill
