#include "engine/report/progress.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/report/amount_text.h"
#include "engine/report/csv.h"
#include "engine/report/figures.h"
#include "engine/report/grid.h"
#include "engine/report/json_text.h"
#include "engine/report/sections.h"
#include "engine/report/width.h"

namespace landdrill::report {
namespace {

// What was taken off has its sign; nothing taken off is 0.
std::string taken_text(const std::optional<Points>& points) {
  if (!points) return "";
  return *points == Points() ? "0" : "-" + points->text();
}

std::string_view what_of(const ProgressPoint& point) {
  return point.panel ? "panel" : "run";
}

std::string version_title(const ProgressVersion& version) {
  const std::string size =
      fmt::format("{} {}, difficulty {}", version.elements, version.elements == 1 ? "element" : "elements",
                  version.declared.text(2));
  return version.of == 1 ? size : fmt::format("Version {} of {}: {}", version.number, version.of, size);
}

// A narrow page has no room for what was taken off.
bool is_narrow(const TextWish& wish) {
  return wish.width < 76;
}

std::string course_table(const ProgressVersion& version, const TextWish& wish) {
  std::vector<GridColumn> columns = {{"day"},
                                     {""},
                                     {"", Align::words, true},
                                     {"credited", Align::amount},
                                     {"mark", Align::amount},
                                     {"base", Align::amount},
                                     {"total", Align::amount}};
  if (!is_narrow(wish))
    columns.insert(columns.end() - 1, {{"sync", Align::amount}, {"penalties", Align::amount}});
  Grid grid(std::move(columns));
  for (const ProgressPoint& point : version.points) {
    std::vector<std::string> cells = {point.date,
                                      std::string(what_of(point)),
                                      point.title,
                                      point.credited.text(2),
                                      figure(point.mark),
                                      std::to_string(point.base_marks),
                                      text_of(point.total, version.places)};
    if (!is_narrow(wish))
      cells.insert(cells.end() - 1, {taken_text(point.sync), taken_text(point.penalties)});
    grid.add(std::move(cells), point.panel ? Look::total : Look::usual);
  }
  return grid.text(wish.width, wish.colour);
}

std::string parts_table(const ProgressVersion& version, const TextWish& wish) {
  if (!wish.full) return "";
  Grid grid({{"day"},
             {""},
             {"marked", Align::words, true},
             {"elements", Align::amount},
             {"impression", Align::amount},
             {"announced", Align::amount}});
  for (const ProgressPoint& point : version.points)
    grid.add({point.date, std::string(what_of(point)), fmt::format("{} of {}", point.marked, point.of),
              text_of(point.elements, version.places), text_of(point.impression, version.places),
              text_of(point.announced, version.places)});
  return "\n" + grid.text(wish.width, wish.colour);
}

std::string season_text(const SeasonProgress& season, const TextWish& wish) {
  std::string text =
      paragraph("", plain(season.of.routine) + ": " + plain(season.of.event_title), wish.width);
  text += bullets(season.sentences, wish) + bullets(season.warnings, wish);
  for (const ProgressVersion& version : season.versions)
    text += heading(version_title(version), wish) +
            (version.points.empty() ? std::string("not swum yet\n")
                                    : course_table(version, wish) + parts_table(version, wish));
  return text;
}

std::string progress_legend(const TextWish& wish) {
  return "\n" + paragraph("",
                          "mark: the mean of the elements' marks, of a run-through what your deductions "
                          "leave; credited: the difficulty that counted; base: how many elements got "
                          "their base mark; sync and penalties: points taken off.",
                          wish.width);
}

constexpr std::string_view csv_columns[] = {
    "routine",  "event",     "version", "routine_versions", "set", "date",       "what",     "title",
    "declared", "credited",  "mark",    "marked",           "of",  "base_marks", "elements", "impression",
    "sync",     "penalties", "total",   "announced"};

std::vector<std::string> point_cells(const SeasonProgress& season, const ProgressVersion& version,
                                     const ProgressPoint& point) {
  const int places = version.places;
  return {season.of.routine,
          season.of.event,
          std::to_string(version.number),
          std::to_string(version.of),
          version.set,
          point.date,
          std::string(what_of(point)),
          point.title,
          point.declared.text(),
          point.credited.text(),
          exact_figure(point.mark),
          std::to_string(point.marked),
          std::to_string(point.of),
          std::to_string(point.base_marks),
          text_of(point.elements, places),
          text_of(point.impression, places),
          text_of(point.sync),
          text_of(point.penalties),
          text_of(point.total, places),
          text_of(point.announced, places)};
}

std::string progress_csv(const std::vector<SeasonProgress>& seasons) {
  std::string text = csv_row({std::begin(csv_columns), std::end(csv_columns)});
  for (const SeasonProgress& season : seasons) {
    for (const ProgressVersion& version : season.versions) {
      for (const ProgressPoint& point : version.points) {
        const std::vector<std::string> cells = point_cells(season, version, point);
        text += csv_row({cells.begin(), cells.end()});
      }
    }
  }
  return text;
}

json::object point_object(const ProgressPoint& point, int places) {
  return {{"date", text_or_null(point.date)},
          {"what", what_of(point)},
          {"title", text_or_null(point.title)},
          {"declared", point.declared.text()},
          {"credited", point.credited.text()},
          {"mark", figure_or_null(point.mark)},
          {"marked", point.marked},
          {"of", point.of},
          {"base_marks", point.base_marks},
          {"elements", text_or_null(text_of(point.elements, places))},
          {"impression", text_or_null(text_of(point.impression, places))},
          {"sync", text_or_null(text_of(point.sync))},
          {"penalties", text_or_null(text_of(point.penalties))},
          {"total", text_or_null(text_of(point.total, places))},
          {"announced", text_or_null(text_of(point.announced, places))}};
}

std::string progress_json(const std::vector<SeasonProgress>& seasons) {
  json::array routines;
  for (const SeasonProgress& season : seasons) {
    json::array versions;
    for (const ProgressVersion& version : season.versions) {
      json::array points;
      for (const ProgressPoint& point : version.points) points.push_back(point_object(point, version.places));
      versions.push_back(json::object{{"version", version.number},
                                      {"routine_versions", version.of},
                                      {"kept_at", text_or_null(version.kept_at)},
                                      {"set", text_or_null(version.set)},
                                      {"elements", version.elements},
                                      {"declared", version.declared.text()},
                                      {"points", std::move(points)}});
    }
    routines.push_back(json::object{{"routine", text_or_null(season.of.routine)},
                                    {"event", text_or_null(season.of.event)},
                                    {"event_title", text_or_null(season.of.event_title)},
                                    {"sentences", list_of(season.sentences)},
                                    {"warnings", list_of(season.warnings)},
                                    {"versions", std::move(versions)}});
  }
  return json_text(json::object{{"routines", std::move(routines)}}, JsonLayout::indented);
}

}  // namespace

std::string progress(const std::vector<SeasonProgress>& seasons, Format format, const TextWish& asked) {
  if (format == Format::csv) return progress_csv(seasons);
  if (format == Format::json) return progress_json(seasons);
  TextWish wish = asked;
  wish.width = std::max(60, wish.width);
  std::string text;
  for (const SeasonProgress& season : seasons) text += (text.empty() ? "" : "\n") + season_text(season, wish);
  return text.empty() ? text : text + progress_legend(wish);
}

}  // namespace landdrill::report
