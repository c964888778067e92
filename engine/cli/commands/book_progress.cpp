// How the routines of the season book went over time.
#include <algorithm>
#include <iterator>
#include <utility>

#include "engine/cli/as_swum.h"
#include "engine/cli/book_file.h"
#include "engine/cli/messages.h"
#include "engine/cli/page.h"
#include "engine/report/progress.h"

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

struct Swam {
  std::string event;
  ProgressVersion version;
};

Swam swam(const Swum& swum) {
  const Routine& routine = *swum.kept.sheet.routine();
  const KeptBlock& kept = swum.kept.routine;
  ProgressVersion version{kept.version,
                          kept.kept_at,
                          kept.set,
                          routine.elements.size(),
                          score(routine, expected(routine, {})).declared,
                          places_of(routine),
                          {}};
  for (ProgressPoint& point : progress(routine))
    if (counts(swum, point)) version.points.push_back(std::move(point));
  return {routine.event->title, std::move(version)};
}

Swam together(std::vector<Swam> parts) {
  Swam whole = std::move(parts.front());
  std::vector<ProgressPoint>& points = whole.version.points;
  for (std::size_t i = 1; i < parts.size(); ++i)
    std::move(parts[i].version.points.begin(), parts[i].version.points.end(), std::back_inserter(points));
  std::stable_sort(points.begin(), points.end(),
                   [](const ProgressPoint& a, const ProgressPoint& b) { return a.date < b.date; });
  return whole;
}

// The versions of one routine, one after the other, and what came of them.
class Seasons {
 public:
  void add(const KeptBlock& version, Swam swam) {
    if (!of_ || of_->routine != version.routine || of_->event != version.event) finish();
    of_ = version;
    event_ = std::move(swam.event);
    versions_.push_back(std::move(swam.version));
  }
  const std::vector<SeasonProgress>& all() {
    finish();
    return all_;
  }

 private:
  void finish() {
    if (!versions_.empty())
      all_.push_back(season_progress(of_->routine, event_, std::exchange(versions_, {})));
  }

  std::optional<KeptBlock> of_;
  std::string event_;
  std::vector<ProgressVersion> versions_;
  std::vector<SeasonProgress> all_;
};

}  // namespace

Exit book_progress(Call& call) {
  Seasons seasons;
  const auto take = [&](const KeptBlock& version, std::vector<Swam> parts) {
    seasons.add(version, together(std::move(parts)));
  };
  return with_swum(call, swam, take, [&](Exit worst) {
    report::TextWish page = page_wish(call);
    page.full = call.given.has("--full");
    call.streams.out.write(report::progress(seasons.all(), format_of(call), page));
    return worst;
  });
}

}  // namespace landdrill::cli
