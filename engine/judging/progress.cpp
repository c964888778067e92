// How a routine went over time: a point for each run and each panel.
#include <algorithm>
#include <tuple>

#include "engine/judging/lessons.h"
#include "engine/routine/routine.h"
#include "engine/routine/wish.h"
#include "engine/score/score.h"
#include "tables/binary.h"
#include "tables/quantity.h"

namespace landdrill {
namespace {

// What a run showed and nothing else: no `expect` of the sheet fills its gaps.
Showing shown_in(const Routine& routine, const Run& run) {
  Showing showing = recorded(routine, {}, {});
  for (const RunElement& seen : run.elements) {
    ShownElement& shown = showing.elements[seen.element];
    const Element& element = routine.elements[seen.element];
    if (seen.base) {
      shown.base = true;
      shown.credited = *element.kind->base;
    }
    shown.marks = all_giving(*element.panel, run_mark(run, seen, *element.panel).mark);
  }
  for (ShownAspect& aspect : showing.aspects) {
    for (const AspectMark& seen : run.aspects) {
      if (seen.rule == aspect.rule) aspect.marks = all_giving(*aspect.rule, seen.mark);
    }
  }
  showing.sync = run.sync;
  showing.penalties = run.penalties;
  return showing;
}

std::optional<Points> points_of_elements(const Score& score, const ProgressPoint& point) {
  if (point.of == 0 || point.marked < point.of) return std::nullopt;
  Points sum;
  for (const std::optional<Points>& one : score.elements) {
    if (one) sum += *one;
  }
  for (const WeightedPoints& together : score.weighted) {
    if (!together.points) return std::nullopt;
    sum += *together.points;
  }
  return sum;
}

std::optional<Points> points_of_aspects(const Score& score) {
  if (score.aspects.empty()) return std::nullopt;
  Points sum;
  for (const std::optional<Points>& one : score.aspects) {
    if (!one) return std::nullopt;
    sum += *one;
  }
  return sum;
}

ProgressPoint point_of(const Routine& routine, const Showing& showing) {
  ProgressPoint point;
  double marks = 0;
  for (std::size_t i = 0; i < showing.elements.size(); ++i) {
    const ShownElement& shown = showing.elements[i];
    if (routine.elements[i].panel != nullptr) ++point.of;
    if (shown.base) ++point.base_marks;
    if (!shown.marks) continue;
    ++point.marked;
    marks += binary_mean(shown.marks->sum, shown.marks->count);
  }
  if (point.marked > 0) point.mark = marks / static_cast<double>(point.marked);
  const Score scored = score(routine, showing);
  point.declared = scored.declared;
  point.credited = scored.credited;
  point.elements = points_of_elements(scored, point);
  point.impression = points_of_aspects(scored);
  point.total = scored.total;
  point.sync = scored.sync;
  point.penalties = scored.penalties;
  return point;
}

ProgressPoint point_of(const Routine& routine, const Run& run) {
  ProgressPoint point = point_of(routine, shown_in(routine, run));
  point.panel = false;
  point.date = run.date;
  point.title = run.title;
  if (!run.has_sync) point.sync.reset();
  if (!run.has_penalties) point.penalties.reset();
  return point;
}

ProgressPoint point_of(const Routine& routine, const RecordedPanel& panel, const Wish& wish) {
  ProgressPoint point = point_of(routine, recorded(routine, panel, wish));
  point.date = panel.date;
  point.title = panel.title;
  point.announced = panel.result;
  return point;
}

}  // namespace

bool swum_before(const ProgressPoint& a, const ProgressPoint& b) {
  return std::tie(a.date, a.panel, a.title) < std::tie(b.date, b.panel, b.title);
}

std::vector<ProgressPoint> progress(const Routine& routine, const std::vector<std::size_t>& options) {
  std::vector<ProgressPoint> points;
  for (const Run& run : routine.runs) points.push_back(point_of(routine, run));
  for (const RecordedPanel& panel : routine.panels) points.push_back(point_of(routine, panel, {options, {}}));
  std::stable_sort(points.begin(), points.end(), swum_before);
  return points;
}

}  // namespace landdrill
