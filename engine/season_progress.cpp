#include "engine/season_progress.h"

#include <cmath>

namespace landdrill {
namespace {

struct Swum {
  const ProgressPoint* point = nullptr;
  int places = 4;
};

std::string two_places(double value) {
  return Decimal::from_units(std::llround(value * 100) * (Decimal::one / 100)).text(2);
}
std::string with_sign(std::string text) {
  return text.starts_with('-') ? text : "+" + text;
}

std::vector<Swum> panels_of(const SeasonProgress& season) {
  std::vector<Swum> panels;
  for (const ProgressVersion& version : season.versions) {
    for (const ProgressPoint& point : version.points) {
      if (point.panel) panels.push_back({&point, version.places});
    }
  }
  return panels;
}

std::string went(const std::string& what, const std::string& from, const std::string& to,
                 const std::string& change) {
  if (from == to) return what + " stayed at " + to;
  return what + " went from " + from + " to " + to + " (" + with_sign(change) + ")";
}

std::string mark_sentence(const ProgressPoint& first, const ProgressPoint& last) {
  const double from = *first.mark, to = *last.mark;
  const std::string before = two_places(from), after = two_places(to);
  const std::string change = (*Decimal::parse(after) - *Decimal::parse(before)).text(2);
  return "From the panel of " + first.date + " to that of " + last.date + " " +
         went("the mean mark of an element", before, after, change) + ".";
}

std::string total_sentence(const Swum& first, const Swum& last) {
  const Points from = *first.point->total, to = *last.point->total;
  return went("The total", from.text(first.places), to.text(last.places), (to - from).text(last.places)) +
         ".";
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

void add(std::string sentence, std::vector<std::string>& sentences) {
  if (!sentence.empty()) sentences.push_back(std::move(sentence));
}

void say_versions(const SeasonProgress& season, std::vector<std::string>& sentences) {
  for (std::size_t i = 1; i < season.versions.size(); ++i) {
    const ProgressVersion &before = season.versions[i - 1], &after = season.versions[i];
    const std::string which =
        "version " + std::to_string(before.number) + " to " + std::to_string(after.number);
    sentences.push_back(before.declared == after.declared
                            ? "The routine was changed, " + which + ": its difficulty stayed " +
                                  after.declared.text(2) + "."
                            : "The routine was changed, " + which + ": its difficulty went from " +
                                  before.declared.text(2) + " to " + after.declared.text(2) + " (" +
                                  with_sign((after.declared - before.declared).text(2)) + ").");
  }
}

void say_panels(const SeasonProgress& season, std::vector<std::string>& sentences) {
  const std::vector<Swum> panels = panels_of(season);
  if (panels.size() < 2) return;
  const Swum &first = panels.front(), &last = panels.back();
  if (first.point->mark && last.point->mark) sentences.push_back(mark_sentence(*first.point, *last.point));
  if (first.point->total && last.point->total) sentences.push_back(total_sentence(first, last));
  if (first.point->sync && last.point->sync && first.point->penalties && last.point->penalties)
    add(taken_sentence(*first.point, *last.point), sentences);
  add(base_sentence(*first.point, *last.point), sentences);
}

void warn(const SeasonProgress& season, std::vector<std::string>& warnings) {
  const std::size_t panels = panels_of(season).size();
  if (panels == 0) warnings.push_back("No panel has seen it yet: run-throughs are the coach's own view.");
  if (panels == 1) warnings.push_back("One panel only: there is no course to see yet.");
  for (const ProgressVersion& version : season.versions) {
    for (const ProgressPoint& point : version.points) {
      if (!point.panel || point.marked == point.of) continue;
      warnings.push_back("The panel of " + point.date + " marked " + std::to_string(point.marked) + " of " +
                         std::to_string(point.of) + " elements: it has no total.");
    }
  }
}

}  // namespace

SeasonProgress season_progress(std::string routine, std::string event,
                               std::vector<ProgressVersion> versions) {
  SeasonProgress season{std::move(routine), std::move(event), std::move(versions), {}, {}};
  say_panels(season, season.sentences);
  say_versions(season, season.sentences);
  warn(season, season.warnings);
  return season;
}

}  // namespace landdrill
