#include "engine/season/swum_versions.h"

#include <algorithm>
#include <map>
#include <optional>

#include "engine/judging/lessons.h"
#include "engine/routine/routine.h"
#include "engine/routine/wish.h"
#include "engine/score/account.h"
#include "engine/score/score.h"
#include "engine/season/kept_sheets.h"
#include "grammar/diagnostics.h"
#include "tables/folder.h"
#include "tables/store/book.h"
#include "tables/store/refusal.h"

namespace landdrill {

using store::attempt;
using store::must;

namespace {

std::vector<bool> flags(const std::vector<Run>& runs,
                        const std::vector<std::pair<std::string, std::string>>& counting) {
  std::vector<bool> all;
  for (const Run& run : runs) {
    const std::pair name(std::string(run.date), std::string(run.title));
    all.push_back(std::find(counting.begin(), counting.end(), name) != counting.end());
  }
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

std::string AsSwum::text_of(const Version& version) const {
  std::string text = must(book_.sheet_without_panels(version.routine.id));
  for (const std::int64_t panel : version.panels) text.append("\n").append(must(book_.text(panel)));
  return text;
}

Swum AsSwum::swum(const Version& version, std::string text, const ReadSet& set) {
  Swum swum{kept_sheet(version.routine, std::move(text), set), {}};
  if (const auto& routine = swum.kept.sheet.routine()) swum.runs = flags(routine->runs, version.runs);
  return swum;
}

// Told of the whole sheet, as it would be exported.
Diagnostics AsSwum::wrong_with(const KeptBlock& routine) {
  return sheets_.understood(routine, must(book_.sheet(routine.id))).sheet.messages();
}

namespace {

// With the routine as it was known before the day of the panel: a run of that day may have come after it.
PanelScore score_of(const Routine& routine, std::size_t index) {
  const RecordedPanel& panel = routine.panels[index];
  Wish wish;
  wish.runs.before = panel.date;
  PanelScore score{std::string(panel.date), std::string(panel.title), totals(routine, wish, index), {}, {}};
  if (!score.totals.recorded) score.without_total = unmarked(routine, recorded(routine, panel, {}));
  if (!score.totals.estimate) score.without_estimate = unmarked(routine, expected(routine, wish));
  return score;
}

}  // namespace

std::vector<PanelScore> panel_scores(const Swum& swum) {
  const Routine& routine = *swum.kept.sheet.routine();
  std::vector<PanelScore> scores;
  for (std::size_t i = 0; i < routine.panels.size(); ++i) scores.push_back(score_of(routine, i));
  return scores;
}

Result<std::map<std::int64_t, SwumUnder>> swum_by_edition(const Book& book, BookWish wish) {
  return attempt([&] {
    std::map<std::int64_t, SwumUnder> all;
    wish.all_versions = true;
    for (const KeptBlock& block : must(book.find(wish))) {
      all[block.edition].routines.emplace(block.routine, block.event);
      all[block.edition].versions.insert(block.what == Block::What::routine ? block.id : block.of_routine);
    }
    // What counts is the latest words of a panel, and a run with the first version that had it.
    wish.all_versions = false;
    for (const KeptBlock& block : must(book.find(wish))) {
      if (block.what == Block::What::run) ++all[block.edition].runs;
      if (block.what == Block::What::panel) ++all[block.edition].panels;
    }
    return all;
  });
}

namespace {

// Whether the run or panel that the point is of counts: of panels, only those that do are here.
bool counts(const Swum& swum, const ProgressPoint& point) {
  if (point.panel) return true;
  const std::vector<Run>& runs = swum.kept.sheet.routine()->runs;
  for (std::size_t i = 0; i < runs.size(); ++i)
    if (runs[i].date == point.date && runs[i].title == point.title) return swum.runs[i];
  return false;
}

// The version itself, without what came of it.
ProgressVersion version_of(const KeptSheet& kept) {
  const Routine& routine = *kept.sheet.routine();
  const KeptBlock& block = kept.routine;
  // Only beside another version there is something to tell from.
  const bool alone = block.routine_versions == 1;
  return {block.version,
          block.routine_versions,
          block.kept_at,
          block.set,
          routine.elements.size(),
          score(routine, expected(routine, {})).declared,
          places_of(routine),
          {},
          alone ? std::string() : typed_blocks(kept.sheet).front().block.text,
          block.edition};
}

// The latest version of a routine when nothing was swum of it.
std::optional<ProgressVersion> not_swum_yet(const Book& book, const KeptBlock& routine) {
  BookWish wish;
  wish.event = routine.event;
  std::int64_t latest = 0;
  for (const KeptBlock& one : must(book.find(wish))) {
    if (one.routine != routine.routine) continue;
    if (one.what == Block::What::routine)
      latest = one.id;
    else if (one.of_routine == latest)
      return std::nullopt;
  }
  KeptSheets sheets(book);
  const KeptSheet& sheet = *sheets.read({latest}).front();
  return sheet.sheet.routine() ? std::optional(version_of(sheet)) : std::nullopt;
}

}  // namespace

SwumVersion version_swum(const Swum& swum) {
  const Routine& routine = *swum.kept.sheet.routine();
  SwumVersion swam{routine.event->title, version_of(swum.kept)};
  for (ProgressPoint& point : progress(routine))
    if (counts(swum, point)) swam.version.points.push_back(std::move(point));
  return swam;
}

void SwumVersions::add(const KeptBlock& version, SwumVersion swum) {
  if (routines_.empty() || routines_.back().last.routine != version.routine ||
      routines_.back().last.event != version.event)
    routines_.push_back({version, std::move(swum.event_title), {}});
  routines_.back().last = version;
  routines_.back().versions.push_back(std::move(swum.version));
}

Result<void> SwumVersions::add_latest(const Book& book) {
  return attempt([&] {
    for (OfRoutine& of : routines_) {
      if (of.last.version == of.last.routine_versions) continue;
      if (auto latest = not_swum_yet(book, of.last)) of.versions.push_back(std::move(*latest));
    }
  });
}

std::vector<SeasonProgress> SwumVersions::all() {
  std::vector<SeasonProgress> all;
  for (OfRoutine& of : routines_)
    all.push_back(season_progress({of.last.routine, of.last.event, of.event_title}, std::move(of.versions)));
  return all;
}

}  // namespace landdrill
