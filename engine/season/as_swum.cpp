#include "engine/season/as_swum.h"

#include <algorithm>
#include <map>

#include "grammar/diagnostics.h"
#include "tables/folder.h"
#include "tables/store/book.h"

namespace landdrill {

using store::must;

namespace {

constexpr std::size_t panels_worth_a_thread = 64 * 1024;  // bytes of panels

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

void AsSwum::find_versions() {
  BookWish every;
  every.what = Block::What::routine;
  every.event = wish_.event;
  every.all_versions = true;
  std::map<std::int64_t, std::size_t> places;
  for (KeptBlock& routine : must(book_.find(every))) {
    places[routine.id] = versions_.size();
    versions_.push_back({std::move(routine), {}, {}});
  }
  BookWish counting = wish_;
  counting.all_versions = false;
  for (const KeptBlock& one : must(book_.find(counting))) {
    if (one.what == Block::What::routine) continue;
    Version& version = versions_[places.at(one.of_routine)];
    if (one.what == Block::What::panel)
      version.panels.push_back(one.id);
    else
      version.runs.emplace_back(one.date, one.title);
  }
  std::erase_if(versions_, [](const Version& one) { return one.runs.empty() && one.panels.empty(); });
}

std::size_t AsSwum::next(Part& part) {
  const Version& version = versions_[version_];
  part.of = &version;
  part.first = panel_ == 0;
  if (part.first) {
    set_ = must(sheets_.set_of(version.routine.edition));
    head_ = must(book_.sheet_without_panels(version.routine.id));
  }
  part.set = set_;
  part.text = head_;
  // The routine is read with each part: that shall be little beside the panels.
  const std::size_t enough = head_.size() + std::max(panels_worth_a_thread, 8 * head_.size());
  while (panel_ < version.panels.size() && part.text.size() < enough)
    part.text.append("\n").append(must(book_.text(version.panels[panel_++])));
  part.last = panel_ == version.panels.size();
  if (part.last) {
    ++version_;
    panel_ = 0;
  }
  return part.text.size();
}

void AsSwum::read(Part& part) {
  Swum& swum = part.swum;
  swum.kept = kept_sheet(part.of->routine, std::move(part.text), *part.set);
  const std::optional<Routine>& routine = swum.kept.sheet.routine();
  if (!routine) return;
  swum.runs = part.first ? flags(routine->runs, part.of->runs) : std::vector<bool>(routine->runs.size());
}

// Told of the whole sheet, as it would be exported.
Diagnostics AsSwum::wrong_with(const KeptBlock& routine) {
  return must(sheets_.understood(routine, must(book_.sheet(routine.id))))->sheet.messages();
}

}  // namespace landdrill
