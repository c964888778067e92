// How the routines of the season book went over time.
#include <algorithm>

#include "engine/cli/as_swum.h"
#include "engine/cli/book_file.h"
#include "engine/cli/messages.h"
#include "engine/cli/page.h"
#include "engine/report/progress.h"

namespace landdrill::cli {
namespace {

// Whether the run or panel that the point is of counts.
bool counts(const Swum& swum, const ProgressPoint& point) {
  const Routine& routine = *swum.kept->sheet.routine();
  const auto here = [&](const auto& all, const std::vector<bool>& wanted) {
    for (std::size_t i = 0; i < all.size(); ++i)
      if (all[i].date == point.date && all[i].title == point.title) return static_cast<bool>(wanted[i]);
    return false;
  };
  return point.panel ? here(routine.panels, swum.panels) : here(routine.runs, swum.runs);
}

ProgressVersion version_of(const Swum& swum) {
  const Routine& routine = *swum.kept->sheet.routine();
  const KeptBlock& kept = swum.kept->routine;
  ProgressVersion version{kept.version,
                          kept.kept_at,
                          kept.set,
                          routine.elements.size(),
                          score(routine, expected(routine, {})).declared,
                          places_of(routine),
                          {}};
  for (ProgressPoint& point : progress(routine))
    if (counts(swum, point)) version.points.push_back(std::move(point));
  return version;
}

}  // namespace

Exit book_progress(Call& call) {
  return with_swum(call, [&](const std::vector<Swum>& swum) {
    Messages messages(call.streams);
    Exit worst = Exit::ok;
    std::vector<SeasonProgress> seasons;
    for (std::size_t i = 0; i < swum.size();) {
      const KeptBlock& first = swum[i].kept->routine;
      std::string event = first.event;
      std::vector<ProgressVersion> versions;
      for (; i < swum.size(); ++i) {
        const KeptSheet& one = *swum[i].kept;
        if (one.routine.routine != first.routine || one.routine.event != first.event) break;
        if (one.sheet.routine()) {
          event = one.sheet.routine()->event->title;
          versions.push_back(version_of(swum[i]));
        } else {
          messages.add(one.sheet.diagnostics);
          worst = Exit::errors;
        }
      }
      if (!versions.empty()) seasons.push_back(season_progress(first.routine, event, std::move(versions)));
    }
    messages.finish();
    report::TextWish page = page_wish(call);
    page.full = call.given.has("--full");
    call.streams.out.write(report::progress(seasons, format_of(call), page));
    return worst;
  });
}

}  // namespace landdrill::cli
