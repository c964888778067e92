#include "engine/cli/as_swum.h"

#include <algorithm>
#include <tuple>
#include <unordered_map>

namespace landdrill::cli {
namespace {

constexpr std::size_t worth_a_thread = 32 * 1024;  // bytes of panels

bool same_name(const KeptBlock& a, const KeptBlock& b) {
  return std::tie(a.what, a.routine, a.event, a.date, a.title) ==
         std::tie(b.what, b.routine, b.event, b.date, b.title);
}

template <class Names>
std::vector<bool> flags(const auto& runs_or_panels, const Names& names) {
  std::vector<bool> counts;
  for (const auto& one : runs_or_panels)
    counts.push_back(
        std::binary_search(names.begin(), names.end(), typename Names::value_type{one.date, one.title}));
  return counts;
}

}  // namespace

Result<bool> AsSwum::find(BookWish wish) {
  wish.all_versions = true;
  auto found = book_.find(wish);
  if (!found) return tl::unexpected(found.error());
  found_ = std::move(*found);
  BookWish every;
  every.what = Block::What::routine;
  every.all_versions = true;
  const auto routines = book_.find(every);
  if (!routines) return tl::unexpected(routines.error());
  for (const KeptBlock& routine : *routines) versions_.push_back({routine, {}, {}});
  count(found_);
  std::erase_if(versions_, [](const Version& one) { return one.runs.empty() && one.panels.empty(); });
  return !versions_.empty();
}

// Which runs and panels count with which version. Versions of one name follow each other.
void AsSwum::count(const std::vector<KeptBlock>& found) {
  std::unordered_map<std::int64_t, Version*> by_id;
  for (Version& version : versions_) by_id[version.routine.id] = &version;
  for (std::size_t i = 0; i < found.size(); ++i) {
    const KeptBlock& block = found[i];
    const bool first = i == 0 || !same_name(found[i - 1], block);
    const bool last = i + 1 == found.size() || !same_name(found[i + 1], block);
    if (block.what == Block::What::run && first)
      by_id.at(block.of_routine)->runs.emplace_back(block.date, block.title);
    if (block.what == Block::What::panel && last)
      by_id.at(block.of_routine)->panels.emplace_back(block.date, block.title);
  }
}

std::optional<std::size_t> AsSwum::next(Part& part) {
  if (version_ == versions_.size()) return std::nullopt;
  part.trouble.reset();
  if (const auto cut_one = cut(part); !cut_one) {
    part.trouble = cut_one.error();
    version_ = versions_.size();
  }
  return part.swum.kept.text.size();
}

Result<void> AsSwum::cut(Part& part) {
  part.first = !started_;
  if (!std::exchange(started_, true)) {
    if (auto started = start_version(); !started) return started;
  }
  part.of = &versions_[version_];
  part.set = set_;
  std::string& text = part.swum.kept.text;
  text = head_;
  // The routine is read with each part: that shall be little beside the panels.
  const std::size_t enough = head_.size() + std::max(worth_a_thread, 8 * head_.size());
  while (panel_ < panels_.size() && text.size() < enough) text.append("\n").append(panels_[panel_++]);
  part.last = panel_ == panels_.size();
  if (!part.last) return {};
  ++version_;
  started_ = false;
  return {};
}

Result<void> AsSwum::start_version() {
  const KeptBlock& routine = versions_[version_].routine;
  auto texts = book_.texts(routine.id);
  if (!texts) return tl::unexpected(texts.error());
  const auto set = sheets_.set_of(routine.edition);
  if (!set) return tl::unexpected(set.error());
  set_ = *set;
  head_ = std::move(texts->routine);
  for (const std::string& run : texts->runs) head_.append("\n").append(run);
  panels_ = std::move(texts->panels);
  panel_ = 0;
  return {};
}

void AsSwum::understand(Part& part) {
  Swum& swum = part.swum;
  swum.kept.routine = part.of->routine;
  cli::understand(swum.kept, *part.set);
  const std::optional<Routine>& routine = swum.kept.sheet.routine();
  if (!routine) return;
  swum.runs = part.first ? flags(routine->runs, part.of->runs) : std::vector<bool>(routine->runs.size());
  swum.panels = flags(routine->panels, part.of->panels);
}

// Told of the whole sheet, as it would be exported.
Result<Diagnostics> AsSwum::wrong_with(const KeptBlock& routine) {
  auto text = book_.sheet(routine.id);
  if (!text) return tl::unexpected(text.error());
  auto kept = sheets_.understood(routine, std::move(*text));
  if (!kept) return tl::unexpected(kept.error());
  return (*kept)->sheet.diagnostics;
}

}  // namespace landdrill::cli
