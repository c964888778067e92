#include "engine/judging/progress.h"

#include <algorithm>
#include <tuple>

#include "engine/judging/lessons.h"
#include "engine/judging/statistics/figures.h"
#include "engine/routine/base_mark.h"
#include "engine/routine/routine.h"
#include "engine/routine/wish.h"
#include "engine/score/execution.h"
#include "engine/score/score.h"
#include "tables/binary.h"
#include "tables/quantity.h"

namespace landdrill {
namespace {

struct Swum {
  const ProgressPoint* point = nullptr;
  int places = 4;
};

std::string with_sign(std::string text) {
  return text.starts_with('-') ? text : "+" + text;
}

// By day, and by title within a day.
std::vector<Swum> panels_of(const SeasonProgress& season) {
  std::vector<Swum> panels;
  for (const ProgressVersion& version : season.versions) {
    for (const ProgressPoint& point : version.points) {
      if (point.panel) panels.push_back({&point, version.places});
    }
  }
  std::stable_sort(panels.begin(), panels.end(), [](const Swum& a, const Swum& b) {
    return std::tie(a.point->date, a.point->title) < std::tie(b.point->date, b.point->title);
  });
  return panels;
}

std::string called(const ProgressPoint& point) {
  return point.title.empty() ? point.date : point.date + " \"" + point.title + "\"";
}

std::string went(const std::string& what, const std::string& from, const std::string& to,
                 const std::string& change) {
  if (from == to) return what + " stayed at " + to;
  return what + " went from " + from + " to " + to + " (" + with_sign(change) + ")";
}

std::string mark_clause(const ProgressPoint& first, const ProgressPoint& last) {
  return went("the mean mark of an element", figure(*first.mark), figure(*last.mark),
              figure(*last.mark - *first.mark));
}

std::string total_clause(const Swum& first, const Swum& last) {
  const Points from = *first.point->total, to = *last.point->total;
  return went("the total", from.text(first.places), to.text(last.places), (to - from).text(last.places));
}

std::string taken_sentence(const ProgressPoint& first, const ProgressPoint& last) {
  const Points from = *first.sync + *first.penalties, to = *last.sync + *last.penalties;
  if (from == Points() && to == Points()) return "";
  if (from == to) return "Panels took " + to.text(2) + " for sync errors and penalties, first and last.";
  return "What panels took for sync errors and penalties went from " + from.text(2) + " to " + to.text(2) +
         ".";
}

std::string base_sentence(const ProgressPoint& first, const ProgressPoint& last) {
  if (first.base_marks == 0 && last.base_marks == 0) return "";
  return "Base marks: " + std::to_string(first.base_marks) + " at the first, " +
         std::to_string(last.base_marks) + " at the last.";
}

void say_unless_empty(std::string sentence, std::vector<std::string>& sentences) {
  if (!sentence.empty()) sentences.push_back(std::move(sentence));
}

std::string what_changed(const ProgressVersion& before, const ProgressVersion& after) {
  if (before.edition == after.edition) return "The routine was changed";
  return before.words == after.words ? "The value set was changed"
                                     : "The routine and its value set were changed";
}

void say_versions(const SeasonProgress& season, std::vector<std::string>& sentences) {
  for (std::size_t i = 1; i < season.versions.size(); ++i) {
    const ProgressVersion &before = season.versions[i - 1], &after = season.versions[i];
    sentences.push_back(what_changed(before, after) + ", version " + std::to_string(before.number) + " to " +
                        std::to_string(after.number) + ": " +
                        went("its difficulty", before.declared.text(2), after.declared.text(2),
                             (after.declared - before.declared).text(2)) +
                        ".");
  }
  for (const ProgressVersion& version : season.versions)
    if (version.points.empty())
      sentences.push_back("Version " + std::to_string(version.number) + " was not swum yet.");
}

void say_panels(const SeasonProgress& season, std::vector<std::string>& sentences) {
  const std::vector<Swum> panels = panels_of(season);
  if (panels.empty() || panels.front().point->date == panels.back().point->date) return;
  const Swum &first = panels.front(), &last = panels.back();
  std::string start =
      "From the panel of " + called(*first.point) + " to that of " + called(*last.point) + " ";
  if (first.point->mark && last.point->mark) {
    sentences.push_back(start + mark_clause(*first.point, *last.point) + ".");
    start.clear();
  }
  if (first.point->total && last.point->total) {
    std::string clause = start + total_clause(first, last) + ".";
    if (start.empty()) clause.front() = 'T';
    sentences.push_back(std::move(clause));
  }
  if (first.point->sync && last.point->sync && first.point->penalties && last.point->penalties)
    say_unless_empty(taken_sentence(*first.point, *last.point), sentences);
  say_unless_empty(base_sentence(*first.point, *last.point), sentences);
}

void warn(const SeasonProgress& season, std::vector<std::string>& warnings) {
  const std::vector<Swum> panels = panels_of(season);
  if (panels.empty()) warnings.push_back("No panel has seen it yet: run-throughs are the coach's own view.");
  if (panels.size() == 1) warnings.push_back("One panel only: there is no course to see yet.");
  if (panels.size() > 1 && panels.front().point->date == panels.back().point->date)
    warnings.push_back("All panels are of one day: there is no course to see yet.");
  for (const Swum& panel : panels) {
    const ProgressPoint& point = *panel.point;
    if (point.marked == point.of) continue;
    warnings.push_back("The panel of " + called(point) + " marked " + std::to_string(point.marked) + " of " +
                       std::to_string(point.of) + (point.of == 1 ? " element" : " elements") +
                       ": it has no total.");
  }
}

}  // namespace

SeasonProgress season_progress(SeasonOf of, std::vector<ProgressVersion> versions) {
  SeasonProgress season{std::move(of), std::move(versions), {}, {}};
  say_panels(season, season.sentences);
  say_versions(season, season.sentences);
  warn(season, season.warnings);
  return season;
}

// How a routine went over time: a point for each run and each panel.

namespace {

// What a run showed and nothing else: no `expect` of the sheet fills its gaps.
Showing shown_in(const Routine& routine, const Run& run) {
  Showing showing = recorded(routine, {}, {});
  for (const RunElement& seen : run.elements) {
    ShownElement& shown = showing.elements[seen.element];
    const Element& element = routine.elements[seen.element];
    if (seen.base) credit_base(shown, *element.kind);
    const RunMark told = run_mark(run, seen, *element.panel, element.options.front().best);
    if (told.mark) shown.marks = all_giving(*element.panel, *told.mark);
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
