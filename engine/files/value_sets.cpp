#include "engine/files/value_sets.h"

#include <fmt/format.h>

#include <algorithm>

#include "tables/folder.h"
#include "tables/load.h"

namespace landdrill {

const ReadSet* ValueSets::last_of_sheet(std::string_view name, std::string_view file) const {
  const std::lock_guard lock(last_mutex_);
  return last_ != nullptr && last_name_ == name && last_beside_ == beside(file) ? last_ : nullptr;
}

Result<const ReadSet*> ValueSets::of_sheet(std::string_view name, std::string_view file) {
  if (const ReadSet* last = last_of_sheet(name, file)) return last;
  auto found = find(name, file);
  if (!found) return found;
  const std::lock_guard lock(last_mutex_);
  last_name_ = name;
  last_beside_ = beside(file);
  last_ = *found;
  return found;
}

const std::vector<std::string>& ValueSets::names(std::string_view file) {
  const auto [known, is_new] = names_.try_emplace(std::string(beside(file)));
  if (is_new) known->second = look_for_names(file);
  return known->second;
}

namespace {

namespace fs = std::filesystem;

fs::path folder_of(std::string_view file) {
  const fs::path folder = file == "-" ? fs::path() : fs::path(file).parent_path();
  return folder.empty() ? fs::path(".") : folder;
}

}  // namespace

Search SetFolders::search_beside(std::string_view file) const {
  Search search = search_;
  search.beside.push_back(folder_of(file));
  return search;
}

Result<const ReadSet*> SetFolders::at(const SetPlace& place) {
  const fs::path folder = place.folder.lexically_normal();  // "my-2026", not "./my-2026"
  auto& known = read_[folder.string()];
  if (known) return known.get();
  auto files = read_folder(folder);
  if (!files) return tl::unexpected(files.error());
  if (!place.name.empty()) files->name = place.name;
  Loaded loaded = load(*files);
  known = std::make_unique<ReadSet>(ReadSet{std::move(*files), std::move(loaded), folder, place.hidden});
  return known.get();
}

Result<const ReadSet*> SetFolders::of_path(const std::string& folder) {
  return at({{}, folder});
}

Result<const ReadSet*> SetFolders::find(std::string_view name, std::string_view file) {
  const auto [known, is_new] = places_.try_emplace({std::string(name), std::string(beside(file))});
  if (is_new) known->second = find_set(name, search_beside(file));
  const Result<SetPlace>& place = known->second;
  if (!place) return tl::unexpected(place.error());
  return at(*place);
}

std::vector<std::string> SetFolders::look_for_names(std::string_view file) {
  std::vector<std::string> found;
  for (const SetPlace& place : all_sets(search_beside(file))) found.push_back(place.name);
  return found;
}

std::string whole_path(const fs::path& folder) {
  std::error_code failed;
  fs::path whole = fs::absolute(folder, failed).lexically_normal();
  if (!whole.has_filename()) whole = whole.parent_path();
  return (failed ? folder : whole).string();
}

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
