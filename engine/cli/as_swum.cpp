#include "engine/cli/as_swum.h"

#include <algorithm>

namespace landdrill::cli {

// A run or a panel that goes into the sheet of one version of the routine.
struct AsSwum::Chosen {
  const KeptBlock *first = nullptr, *latest = nullptr;  // its wordings
  bool counts = false;
};

AsSwum::Name AsSwum::name_of(const KeptBlock& block) {
  return {block.routine, block.event, block.what, block.date, block.title};
}

Result<void> AsSwum::know_blocks(const BookWish& wish) {
  BookWish every;
  every.all_versions = true;
  const auto all = book_.find(every);
  if (!all) return tl::unexpected(all.error());
  const auto found = book_.find(wish);
  if (!found) return tl::unexpected(found.error());
  for (const KeptBlock& block : *found) found_[name_of(block)] = true;
  for (const KeptBlock& block : *all) {
    if (block.what == Block::What::routine) {
      routines_.push_back(block);
      continue;
    }
    const Name name = name_of(block);
    versions_[name].push_back(block);
    std::vector<Name>& names = of_routine_[block.of_routine];
    if (names.empty() || names.back() != name) names.push_back(name);  // versions follow each other
  }
  return {};
}

Result<Swum> AsSwum::read_version(const KeptBlock& routine, const std::vector<Chosen>& chosen,
                                  bool first_wording) {
  auto text = book_.text(routine.id);
  if (!text) return tl::unexpected(text.error());
  Swum swum;
  for (const Chosen& one : chosen) {
    const auto block = book_.text((first_wording ? one.first : one.latest)->id);
    if (!block) return tl::unexpected(block.error());
    *text += "\n" + *block;
    (one.latest->what == Block::What::run ? swum.runs : swum.panels).push_back(one.counts);
  }
  const auto kept = sheets_.understood(routine, std::move(*text));
  if (!kept) return tl::unexpected(kept.error());
  swum.kept = *kept;
  return swum;
}

Result<std::optional<Swum>> AsSwum::of_version(const KeptBlock& routine) {
  std::vector<Chosen> chosen;
  for (const Name& name : of_routine_[routine.id]) {
    const std::vector<KeptBlock>& versions = versions_[name];
    const bool first = versions.front().of_routine == routine.id;
    const bool run = versions.front().what == Block::What::run;
    if (!run && !first) continue;
    Chosen one{&versions.front(), &versions.back(), first && found_.count(name) > 0};
    if (run) {
      const auto of_this = [&](const KeptBlock& block) { return block.of_routine == routine.id; };
      one.first = &*std::find_if(versions.begin(), versions.end(), of_this);
      one.latest = &*std::find_if(versions.rbegin(), versions.rend(), of_this);
    }
    chosen.push_back(one);
  }
  std::stable_partition(chosen.begin(), chosen.end(),
                        [](const Chosen& one) { return one.latest->what == Block::What::run; });
  if (std::none_of(chosen.begin(), chosen.end(), [](const Chosen& one) { return one.counts; }))
    return std::optional<Swum>();
  auto swum = read_version(routine, chosen, false);
  if (!swum) return tl::unexpected(swum.error());
  // A panel corrected together with the routine may speak of elements that this version does not have.
  if (!swum->kept->sheet.routine()) {
    auto first = read_version(routine, chosen, true);
    if (!first) return tl::unexpected(first.error());
    if (first->kept->sheet.routine()) swum = std::move(first);
  }
  return std::optional(std::move(*swum));
}

Result<std::vector<Swum>> AsSwum::read(const BookWish& wish) {
  if (const auto known = know_blocks(wish); !known) return tl::unexpected(known.error());
  std::vector<Swum> all;
  for (const KeptBlock& routine : routines_) {
    auto swum = of_version(routine);
    if (!swum) return tl::unexpected(swum.error());
    if (*swum) all.push_back(std::move(**swum));
  }
  return all;
}

}  // namespace landdrill::cli
