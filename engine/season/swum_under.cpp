#include "engine/season/swum_under.h"

namespace landdrill {
namespace {

void count(const KeptBlock& block, SwumUnder& under) {
  under.routines.emplace(block.routine, block.event);
  under.versions.insert(block.what == Block::What::routine ? block.id : block.of_routine);
}

}  // namespace

Result<std::map<std::int64_t, SwumUnder>> swum_by_edition(const Book& book, BookWish wish) {
  std::map<std::int64_t, SwumUnder> all;
  wish.all_versions = true;
  const auto found = book.find(wish);
  if (!found) return tl::unexpected(found.error());
  for (const KeptBlock& block : *found) count(block, all[block.edition]);
  // What counts is the latest words of a panel, and a run with the first version that had it.
  wish.all_versions = false;
  const auto counting = book.find(wish);
  if (!counting) return tl::unexpected(counting.error());
  for (const KeptBlock& block : *counting) {
    if (block.what == Block::What::run) ++all[block.edition].runs;
    if (block.what == Block::What::panel) ++all[block.edition].panels;
  }
  return all;
}

}  // namespace landdrill
