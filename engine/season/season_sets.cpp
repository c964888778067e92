#include "engine/season/season_sets.h"

#include "engine/files/value_sets.h"
#include "tables/load.h"

namespace landdrill {

Result<Season*> SeasonSets::season(Season::Mode mode) {
  if (season_ && (mode == Season::Mode::read || mode_ != Season::Mode::read)) return &*season_;
  auto opened = Season::open(file_, mode);
  if (!opened) return tl::unexpected(opened.error());
  season_.emplace(std::move(*opened));
  mode_ = mode;
  return &*season_;
}

Result<const ReadSet*> SeasonSets::find(std::string_view name, std::string_view) {
  auto& known = read_[std::string(name)];
  if (known) return known.get();
  auto opened = season(Season::Mode::read);
  if (!opened) return tl::unexpected(opened.error());
  auto files = (*opened)->export_set(std::string(name));
  if (!files) return tl::unexpected(files.error());
  Loaded loaded = load(*files);
  known = std::make_unique<ReadSet>(ReadSet{std::move(*files), std::move(loaded), {}, {}, file_});
  return known.get();
}

std::vector<std::string> SeasonSets::look_for_names(std::string_view) {
  std::vector<std::string> found;
  const auto opened = season(Season::Mode::read);
  if (!opened) return found;
  if (const auto sets = (*opened)->sets())
    for (const SeasonSet& set : *sets) found.push_back(set.name);
  return found;
}

}  // namespace landdrill
