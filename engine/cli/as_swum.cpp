#include "engine/cli/as_swum.h"

#include <algorithm>
#include <tuple>
#include <unordered_map>

namespace landdrill::cli {
namespace {

constexpr std::size_t worth_a_thread = 64 * 1024;  // bytes of panels

bool same_name(const KeptBlock& a, const KeptBlock& b) {
  return std::tie(a.what, a.routine, a.event, a.date, a.title) ==
         std::tie(b.what, b.routine, b.event, b.date, b.title);
}

template <class Names>
std::vector<bool> flags(const std::vector<Run>& runs, const Names& names) {
  std::vector<bool> counts;
  for (const Run& run : runs)
    counts.push_back(
        std::binary_search(names.begin(), names.end(), typename Names::value_type{run.date, run.title}));
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
    if (block.what == Block::What::panel && last) by_id.at(block.of_routine)->panels.push_back(block.id);
  }
}

std::optional<std::size_t> AsSwum::next(Part& part) {
  if (version_ == versions_.size()) return std::nullopt;
  part.trouble.reset();
  if (const auto cut_one = cut(part); !cut_one) {
    part.trouble = cut_one.error();
    version_ = versions_.size();
  }
  std::size_t bytes = part.swum.kept.text.size();
  for (const StoredText& panel : part.panels) bytes += panel.text.size();
  return bytes;
}

Result<void> AsSwum::cut(Part& part) {
  part.first = !started_;
  if (!std::exchange(started_, true)) {
    if (auto started = start_version(); !started) return started;
  }
  const Version& version = versions_[version_];
  part.of = &version;
  part.set = set_;
  part.damaged.reset();
  part.swum.kept.text = head_;
  part.panels.clear();
  if (panel_ < version.panels.size()) {
    // The routine is read with each part: that shall be little beside the panels.
    auto panels =
        book_.stored(std::span(version.panels).subspan(panel_), std::max(worth_a_thread, 8 * head_.size()));
    if (!panels) return tl::unexpected(panels.error());
    part.panels = std::move(*panels);
    panel_ += part.panels.size();
  }
  part.last = panel_ == version.panels.size();
  if (!part.last) return {};
  ++version_;
  started_ = false;
  return {};
}

Result<void> AsSwum::start_version() {
  const KeptBlock& routine = versions_[version_].routine;
  const auto set = sheets_.set_of(routine.edition);
  if (!set) return tl::unexpected(set.error());
  set_ = *set;
  auto head = book_.sheet_without_panels(routine.id);
  if (!head) return tl::unexpected(head.error());
  head_ = std::move(*head);
  panel_ = 0;
  return {};
}

// The panels' texts behind the routine's, when they are what was kept.
void AsSwum::put_in(Part& part) {
  std::string& text = part.swum.kept.text;
  for (const StoredText& panel : part.panels) {
    if (!panel.sound()) {
      part.damaged = panel.id;
      return;
    }
    text.append("\n").append(panel.text);
  }
}

void AsSwum::understand(Part& part) {
  Swum& swum = part.swum;
  swum.kept.routine = part.of->routine;
  cli::understand(swum.kept, *part.set);
  const std::optional<Routine>& routine = swum.kept.sheet.routine();
  if (!routine) return;
  swum.runs = part.first ? flags(routine->runs, part.of->runs) : std::vector<bool>(routine->runs.size());
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
