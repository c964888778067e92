#include "engine/cli/as_swum.h"

#include <map>
#include <tuple>

namespace landdrill::cli {
namespace {

using Names = std::set<std::pair<std::string_view, std::string_view>>;  // date and title
struct Counting {
  Names runs, panels;
};

bool same_name(const KeptBlock& a, const KeptBlock& b) {
  return std::tie(a.what, a.routine, a.event, a.date, a.title) ==
         std::tie(b.what, b.routine, b.event, b.date, b.title);
}

// For each version of a routine, which of its runs and panels count. Versions of one name follow each other.
std::map<std::int64_t, Counting> counting(const std::vector<KeptBlock>& found) {
  std::map<std::int64_t, Counting> all;
  for (std::size_t i = 0; i < found.size(); ++i) {
    const KeptBlock& block = found[i];
    const bool first = i == 0 || !same_name(found[i - 1], block);
    const bool last = i + 1 == found.size() || !same_name(found[i + 1], block);
    if (block.what == Block::What::run && first) all[block.of_routine].runs.emplace(block.date, block.title);
    if (block.what == Block::What::panel && last)
      all[block.of_routine].panels.emplace(block.date, block.title);
  }
  return all;
}

std::vector<bool> flags(const auto& runs_or_panels, const Names& names) {
  std::vector<bool> counts;
  for (const auto& one : runs_or_panels) counts.push_back(names.count({one.date, one.title}) > 0);
  return counts;
}

}  // namespace

Result<std::vector<Swum>> AsSwum::read(BookWish wish) {
  wish.all_versions = true;
  const auto found = book_.find(wish);
  if (!found) return tl::unexpected(found.error());
  const std::map<std::int64_t, Counting> wanted = counting(*found);
  Versions versions;
  for (const auto& [version, counts] : wanted) versions.insert(version);
  const auto sheets = sheets_.read(versions);
  if (!sheets) return tl::unexpected(sheets.error());
  std::vector<Swum> all;
  for (const KeptSheet* kept : *sheets) {
    Swum swum{kept, {}, {}};
    if (const std::optional<Routine>& routine = kept->sheet.routine()) {
      const Counting& counts = wanted.at(kept->routine.id);
      swum.runs = flags(routine->runs, counts.runs);
      swum.panels = flags(routine->panels, counts.panels);
    }
    all.push_back(std::move(swum));
  }
  return all;
}

}  // namespace landdrill::cli
