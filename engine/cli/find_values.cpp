#include "engine/cli/find_values.h"

#include <fmt/format.h>

#include "engine/cli/exit.h"
#include "engine/report/page.h"

namespace landdrill::cli {
namespace {

namespace fs = std::filesystem;

fs::path folder_of(std::string_view file) {
  const fs::path folder = file == "-" ? fs::path() : fs::path(file).parent_path();
  return folder.empty() ? fs::path(".") : folder;
}

// The folder of a file as it is typed, with its `/`.
std::string_view beside(std::string_view file) {
  return file.substr(0, file.rfind('/') + 1);
}

bool is_path(const std::string& operand) {
  return operand.find('/') != operand.npos || operand == "." || operand == "..";
}

// The last name of a folder, also of "club/" and ".".
std::string folder_name(const fs::path& folder) {
  std::error_code ignored;
  const fs::path whole = fs::weakly_canonical(folder, ignored);
  return (whole.empty() ? folder : whole).filename().string();
}

}  // namespace

Values::Values(const Call& call) {
  if (has_option(call.command, "--values"))
    for (const std::string& folder : call.given.values("--values")) search_.told.emplace_back(folder);
  if (has_option(call.command, "--season")) season_file_ = call.given.value("--season");
}

Search Values::search_beside(std::string_view file) const {
  Search search = search_;
  search.beside.push_back(folder_of(file));
  return search;
}

Result<Season*> Values::season(Season::Mode mode) {
  if (season_ && (mode == Season::Mode::read || season_mode_ != Season::Mode::read)) return &*season_;
  auto opened = Season::open(season_file_, mode);
  if (!opened) return tl::unexpected(opened.error());
  season_.emplace(std::move(*opened));
  season_mode_ = mode;
  return &*season_;
}

Result<const ReadSet*> Values::at(const SetPlace& place) {
  const fs::path folder = place.folder.lexically_normal();  // "my-2026", not "./my-2026"
  auto& known = read_["folder " + folder.string()];
  if (known) return known.get();
  auto files = read_folder(folder);
  if (!files) return tl::unexpected(files.error());
  files->name = place.name;
  Loaded loaded = load(*files);
  known = std::make_unique<ReadSet>(ReadSet{std::move(*files), folder, std::move(loaded), place.hidden});
  return known.get();
}

Result<const ReadSet*> Values::from_season(const std::string& name) {
  auto& known = read_["season " + name];
  if (known) return known.get();
  auto opened = season(Season::Mode::read);
  if (!opened) return tl::unexpected(opened.error());
  auto files = (*opened)->export_set(name);
  if (!files) return tl::unexpected(files.error());
  Loaded loaded = load(*files);
  known = std::make_unique<ReadSet>(ReadSet{std::move(*files), {}, std::move(loaded), {}, season_file_});
  return known.get();
}

const ReadSet* Values::last_of_sheet(std::string_view name, std::string_view file) const {
  const std::lock_guard lock(last_mutex_);
  return last_ != nullptr && last_name_ == name && last_beside_ == beside(file) ? last_ : nullptr;
}

Result<const ReadSet*> Values::of_sheet(std::string_view name, std::string_view file) {
  if (const ReadSet* last = last_of_sheet(name, file)) return last;
  Result<const ReadSet*> found = nullptr;
  if (in_season()) {
    found = from_season(std::string(name));
  } else {
    const Result<SetPlace>& place = place_of(name, file);
    if (!place) return tl::unexpected(place.error());
    found = at(*place);
  }
  if (!found) return found;
  const std::lock_guard lock(last_mutex_);
  last_name_ = name;
  last_beside_ = beside(file);
  last_ = *found;
  return found;
}

const Result<SetPlace>& Values::place_of(std::string_view name, std::string_view file) {
  const auto [known, is_new] = places_.try_emplace({std::string(name), std::string(beside(file))});
  if (is_new) known->second = find_set(name, search_beside(file));
  return known->second;
}

Result<const ReadSet*> Values::of_operand(const std::string& operand) {
  if (!is_path(operand)) return of_sheet(operand, "-");
  return at({folder_name(operand), operand});
}

const std::vector<std::string>& Values::names(std::string_view file) {
  const auto [known, is_new] = names_.try_emplace(std::string(beside(file)));
  if (is_new) known->second = look_for_names(file);
  return known->second;
}

std::vector<std::string> Values::look_for_names(std::string_view file) {
  std::vector<std::string> found;
  if (in_season()) {
    const auto opened = season(Season::Mode::read);
    if (!opened) return found;
    if (const auto sets = (*opened)->sets())
      for (const SeasonSet& set : *sets) found.push_back(set.name);
  } else {
    for (const SetPlace& place : all_sets(search_beside(file))) found.push_back(place.name);
  }
  return found;
}

std::string whole_path(const fs::path& folder) {
  std::error_code failed;
  fs::path whole = fs::absolute(folder, failed).lexically_normal();
  if (!whole.has_filename()) whole = whole.parent_path();
  return (failed ? folder : whole).string();
}

report::ValuesPlace values_place(const ReadSet& set) {
  report::ValuesPlace place{set.files.name, {}, set.season};
  if (!set.folder.empty()) place.folder = whole_path(set.folder);
  for (const fs::path& hidden : set.hidden) place.hidden.push_back(whole_path(hidden));
  return place;
}

report::Page with_place(report::Page page, const ReadSet& set) {
  put_values_place(page, values_place(set));
  return page;
}

std::string message(const Trouble& trouble) {
  return "landdrill: " + to_string(trouble);
}

Exit refuse(Call& call, const Trouble& trouble) {
  call.streams.say(message(trouble));
  return Exit::environment;
}

Exit refuse_set(Call& call, const ReadSet& set) {
  call.streams.say(to_string(set.loaded.diagnostics));
  call.streams.say(
      fmt::format("landdrill: the value set {} cannot be used until these are mended\n", set.files.name));
  return Exit::errors;
}

}  // namespace landdrill::cli
