#include "engine/files/own_folder.h"

#include <fmt/format.h>

#include "tables/folder.h"

namespace landdrill {
namespace fs = std::filesystem;
namespace {

bool is_inside(const fs::path& folder, const fs::path& outer) {
  std::error_code ignored;
  const fs::path whole = fs::weakly_canonical(folder, ignored), around = fs::weakly_canonical(outer, ignored);
  return !around.empty() &&
         std::mismatch(around.begin(), around.end(), whole.begin(), whole.end()).first == around.end();
}

}  // namespace

std::optional<Trouble> no_own_folder(const ReadSet& set) {
  if (!is_inside(set.folder, shipped_place())) return std::nullopt;
  return Trouble{
      set.files.name, "it comes with the program and is not changed",
      fmt::format("make a set of your own first: landdrill values copy {} my-set", set.files.name)};
}

std::optional<Trouble> not_new(const fs::path& folder) {
  std::error_code failed;
  if (!fs::exists(folder, failed)) return std::nullopt;
  if (fs::is_directory(folder, failed) && fs::is_empty(folder, failed)) return std::nullopt;
  return Trouble{folder.string(), "there is something of that name already", "give the name of a new folder"};
}

}  // namespace landdrill
