#include "engine/season/as_swum.h"

#include <algorithm>

#include "grammar/diagnostics.h"
#include "tables/folder.h"
#include "tables/store/book.h"

namespace landdrill {
namespace {

constexpr std::size_t panels_worth_a_thread = 64 * 1024;  // bytes of panels

bool same_routine(const KeptBlock& a, const KeptBlock& b) {
  return a.routine == b.routine && a.event == b.event;
}

std::vector<bool> flags(const std::vector<Run>& runs,
                        const std::vector<std::pair<std::string, std::string>>& counting) {
  using Name = std::pair<std::string_view, std::string_view>;
  const auto counts = [&](const Run& run) {
    return std::binary_search(counting.begin(), counting.end(), Name(run.date, run.title),
                              [](const auto& a, const auto& b) { return Name(a) < Name(b); });
  };
  std::vector<bool> all;
  for (const Run& run : runs) all.push_back(counts(run));
  return all;
}

}  // namespace

Result<void> AsSwum::find_versions() {
  BookWish every;
  every.what = Block::What::routine;
  every.event = wish_.event;
  every.all_versions = true;
  auto routines = book_.find(every);
  if (!routines) return tl::unexpected(routines.error());
  for (KeptBlock& routine : *routines) versions_.push_back({std::move(routine), {}});
  return go_to_next();
}

// What counts with the versions of the next routine, which follow each other.
Result<void> AsSwum::find_swum() {
  std::vector<std::int64_t> entries;
  const KeptBlock& first = versions_[known_].routine;
  for (std::size_t i = known_; i < versions_.size() && same_routine(versions_[i].routine, first); ++i)
    entries.push_back(versions_[i].routine.id);
  auto swum = book_.swum(entries, wish_);
  if (!swum) return tl::unexpected(swum.error());
  for (SwumWith& with : *swum) versions_[known_++].swum = std::move(with);
  return {};
}

// To the next version that something was swum of.
Result<void> AsSwum::go_to_next() {
  for (; version_ < versions_.size(); ++version_) {
    if (version_ == known_) {
      if (auto found = find_swum(); !found) return found;
    }
    const SwumWith& swum = versions_[version_].swum;
    if (swum.runs.empty() && swum.panels.empty()) continue;
    found_ = true;
    return start_version();
  }
  return {};
}

std::optional<std::size_t> AsSwum::next(Part& part) {
  if (version_ == versions_.size()) return std::nullopt;
  part.trouble.reset();
  if (const auto cut_one = cut(part); !cut_one) {
    part.trouble = cut_one.error();
    version_ = versions_.size();
  }
  std::size_t bytes = part.head.size();
  for (const StoredText& panel : part.panels) bytes += panel.text.size();
  return bytes;
}

Result<void> AsSwum::cut(Part& part) {
  const Version& version = versions_[version_];
  part.of = &version;
  part.set = set_;
  part.first = panel_ == 0;
  part.damaged.reset();
  part.head = head_;
  part.panels.clear();
  if (panel_ < version.swum.panels.size()) {
    // The routine is read with each part: that shall be little beside the panels.
    auto panels = book_.stored(std::span(version.swum.panels).subspan(panel_),
                               std::max(panels_worth_a_thread, 8 * head_.size()));
    if (!panels) return tl::unexpected(panels.error());
    part.panels = std::move(*panels);
    panel_ += part.panels.size();
  }
  part.last = panel_ == version.swum.panels.size();
  if (!part.last) return {};
  ++version_;
  return go_to_next();
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
void AsSwum::read(Part& part) {
  std::string text = part.head;
  for (const StoredText& panel : part.panels) {
    if (!panel.sound()) {
      part.damaged = panel.id;
      return;
    }
    text.append("\n").append(panel.text);
  }
  Swum& swum = part.swum;
  swum.kept = kept_sheet(part.of->routine, std::move(text), *part.set);
  const std::optional<Routine>& routine = swum.kept.sheet.routine();
  if (!routine) return;
  swum.runs = part.first ? flags(routine->runs, part.of->swum.runs) : std::vector<bool>(routine->runs.size());
}

// Told of the whole sheet, as it would be exported.
Result<Diagnostics> AsSwum::wrong_with(const KeptBlock& routine) {
  auto text = book_.sheet(routine.id);
  if (!text) return tl::unexpected(text.error());
  auto kept = sheets_.understood(routine, std::move(*text));
  if (!kept) return tl::unexpected(kept.error());
  return (*kept)->sheet.messages();
}

}  // namespace landdrill
