// How the routines of the season book went over time.
#include <algorithm>
#include <iterator>
#include <optional>

#include "engine/cli/as_swum.h"
#include "engine/cli/book_blocks.h"
#include "engine/cli/book_file.h"
#include "engine/cli/call.h"
#include "engine/cli/exit.h"
#include "engine/cli/kept_sheets.h"
#include "engine/cli/messages.h"
#include "engine/cli/page.h"
#include "engine/judging/lessons.h"
#include "engine/judging/season_progress.h"
#include "engine/report/pages/progress.h"
#include "tables/folder.h"
#include "tables/store/book.h"

namespace landdrill::cli {
namespace {

// Whether the run or panel that the point is of counts: of panels, only those that do are here.
bool counts(const Swum& swum, const ProgressPoint& point) {
  if (point.panel) return true;
  const std::vector<Run>& runs = swum.kept.sheet.routine()->runs;
  for (std::size_t i = 0; i < runs.size(); ++i)
    if (runs[i].date == point.date && runs[i].title == point.title) return swum.runs[i];
  return false;
}

struct SwumVersion {
  std::string event_title;
  ProgressVersion version;
};

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

SwumVersion version_swum(const Swum& swum) {
  const Routine& routine = *swum.kept.sheet.routine();
  SwumVersion swam{routine.event->title, version_of(swum.kept)};
  for (ProgressPoint& point : progress(routine))
    if (counts(swum, point)) swam.version.points.push_back(std::move(point));
  return swam;
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

// The versions of one routine, one after the other, and what came of them.
class Seasons {
 public:
  void add(const KeptBlock& version, SwumVersion swam) {
    if (all_.empty() || all_.back().last.routine != version.routine ||
        all_.back().last.event != version.event)
      all_.push_back({version, std::move(swam.event_title), {}});
    all_.back().last = version;
    all_.back().versions.push_back(std::move(swam.version));
  }
  Result<void> add_latest(const Book& book) {
    for (Season& season : all_) {
      if (season.last.version == season.last.routine_versions) continue;
      auto latest = not_swum_yet(book, season.last);
      if (!latest) return tl::unexpected(latest.error());
      if (*latest) season.versions.push_back(std::move(**latest));
    }
    return {};
  }
  std::vector<SeasonProgress> all() {
    std::vector<SeasonProgress> all;
    for (Season& season : all_)
      all.push_back(season_progress({season.last.routine, season.last.event, season.event_title},
                                    std::move(season.versions)));
    return all;
  }

 private:
  struct Season {
    KeptBlock last;
    std::string event_title;
    std::vector<ProgressVersion> versions;
  };
  std::vector<Season> all_;
};

}  // namespace

Exit book_progress(Call& call) {
  Seasons seasons;
  const auto take = [&](const KeptBlock& version, std::vector<SwumVersion> parts) {
    seasons.add(version, together(std::move(parts)));
  };
  return with_swum(call, version_swum, take, [&](const Book& book, const BookWish& wish, Exit worst) {
    // What came after the days that are asked for is not.
    if (wish.until.empty()) {
      if (const auto added = seasons.add_latest(book); !added) return refuse(call, added.error());
    }
    print_page(call, report::progress_page(seasons.all()));
    return worst;
  });
}

}  // namespace landdrill::cli
