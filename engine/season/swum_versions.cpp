#include "engine/season/swum_versions.h"

#include <algorithm>
#include <iterator>
#include <optional>

#include "engine/judging/lessons.h"
#include "engine/routine/routine.h"
#include "engine/routine/wish.h"
#include "engine/score/account.h"
#include "engine/score/score.h"
#include "engine/season/kept_sheets.h"

namespace landdrill {
namespace {

// With the routine as it was known on the day of the panel: without later runs.
PanelScore score_of(const Routine& routine, std::size_t index) {
  const RecordedPanel& panel = routine.panels[index];
  Wish wish;
  wish.runs.until = panel.date;
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

SwumVersion together(std::vector<SwumVersion> parts) {
  SwumVersion whole = std::move(parts.front());
  std::vector<ProgressPoint>& points = whole.version.points;
  for (std::size_t i = 1; i < parts.size(); ++i)
    std::move(parts[i].version.points.begin(), parts[i].version.points.end(), std::back_inserter(points));
  std::stable_sort(points.begin(), points.end(), swum_before);
  return whole;
}

// The latest version of a routine when nothing was swum of it.
Result<std::optional<ProgressVersion>> not_swum_yet(const Book& book, const KeptBlock& routine) {
  BookWish wish;
  wish.what = Block::What::routine;
  wish.event = routine.event;
  const auto latest = book.find(wish);
  if (!latest) return tl::unexpected(latest.error());
  for (const KeptBlock& one : *latest) {
    if (one.routine != routine.routine || one.version == routine.version) continue;
    const auto swum = book.swum(std::vector{one.id}, {});
    if (!swum) return tl::unexpected(swum.error());
    if (!swum->front().runs.empty() || !swum->front().panels.empty()) continue;
    KeptSheets sheets(book);
    const auto sheet = sheets.read(Versions{one.id});
    if (!sheet) return tl::unexpected(sheet.error());
    if (sheet->front()->sheet.routine()) return version_of(*sheet->front());
  }
  return std::nullopt;
}

}  // namespace

SwumVersion version_swum(const Swum& swum) {
  const Routine& routine = *swum.kept.sheet.routine();
  SwumVersion swam{routine.event->title, version_of(swum.kept)};
  for (ProgressPoint& point : progress(routine))
    if (counts(swum, point)) swam.version.points.push_back(std::move(point));
  return swam;
}

void SwumVersions::add(const KeptBlock& version, std::vector<SwumVersion> parts) {
  SwumVersion swam = together(std::move(parts));
  if (routines_.empty() || routines_.back().last.routine != version.routine ||
      routines_.back().last.event != version.event)
    routines_.push_back({version, std::move(swam.event_title), {}});
  routines_.back().last = version;
  routines_.back().versions.push_back(std::move(swam.version));
}

Result<void> SwumVersions::add_latest(const Book& book) {
  for (OfRoutine& of : routines_) {
    if (of.last.version == of.last.routine_versions) continue;
    auto latest = not_swum_yet(book, of.last);
    if (!latest) return tl::unexpected(latest.error());
    if (*latest) of.versions.push_back(std::move(**latest));
  }
  return {};
}

std::vector<SeasonProgress> SwumVersions::all() {
  std::vector<SeasonProgress> all;
  for (OfRoutine& of : routines_)
    all.push_back(season_progress({of.last.routine, of.last.event, of.event_title}, std::move(of.versions)));
  return all;
}

}  // namespace landdrill
