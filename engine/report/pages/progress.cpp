#include "engine/judging/progress.h"

#include <fmt/format.h>

#include "engine/judging/lessons.h"
#include "engine/report/figures.h"
#include "engine/report/page.h"
#include "engine/report/pages/book.h"
#include "tables/quantity.h"

namespace landdrill::report {
namespace {

// What was taken off has its sign; nothing taken off is 0.
Entry taken(const std::optional<Points>& points) {
  if (!points) return "";
  return {*points == Points() ? "0" : "-" + points->text(), points->text()};
}

std::string_view what_of(const ProgressPoint& point) {
  return point.panel ? "panel" : "run";
}

std::string version_title(const ProgressVersion& version) {
  const std::string size =
      fmt::format("{}, difficulty {}", counted(version.elements, "element"), version.declared.text(2));
  return version.of == 1 ? size : fmt::format("Version {} of {}: {}", version.number, version.of, size);
}

PageTable course_table(const ProgressVersion& version) {
  constexpr int roomy = 76;  // a narrower page has no room for what was taken off
  const auto taken_off = [](const char* key) {
    return PageColumn{key, key, Align::amount, Wraps::no, Seen::always, "", 2, roomy};
  };
  PageTable table("points", {{"date", "day"},
                             {"what", ""},
                             {"title", "", Align::words, Wraps::yes},
                             for_programs("declared"),
                             amount_column("credited", "credited"),
                             amount_column("mark", "mark"),
                             for_programs("marked"),
                             for_programs("of"),
                             amount_column("base_marks", "base"),
                             for_programs("elements"),
                             for_programs("impression"),
                             taken_off("sync"),
                             taken_off("penalties"),
                             amount_column("total", "total"),
                             for_programs("announced")});
  table.in_csv = true;
  const auto points = [&](const std::optional<Points>& amount) { return text_of(amount, version.places); };
  for (const ProgressPoint& point : version.points)
    table.add({point.date, what_of(point), point.title, point.declared.text(),
               Entry(point.credited.text(2), point.credited.text()), figure_entry(point.mark), point.marked,
               point.of, point.base_marks, points(point.elements), points(point.impression),
               taken(point.sync), taken(point.penalties), points(point.total), points(point.announced)},
              point.panel ? Look::total : Look::usual);
  return table;
}

PageTable version_parts(const ProgressVersion& version) {
  PageTable table("", {{"", "day"},
                       {"", ""},
                       {"", "marked", Align::words, Wraps::yes},
                       {"", "elements", Align::amount},
                       {"", "impression", Align::amount},
                       {"", "announced", Align::amount}});
  for (const ProgressPoint& point : version.points)
    table.add({point.date, what_of(point), fmt::format("{} of {}", point.marked, point.of),
               text_of(point.elements, version.places), text_of(point.impression, version.places),
               text_of(point.announced, version.places)});
  return table;
}

PageParts version_part(const ProgressVersion& version) {
  PageParts page;
  page.heading(version_title(version));
  page.fact("version", version.number);
  page.fact("routine_versions", version.of);
  page.fact("kept_at", version.kept_at);
  page.fact("set", version.set);
  page.fact("elements", version.elements);
  page.fact("declared", version.declared.text());
  if (version.points.empty()) page.say("not swum yet");
  page.add(course_table(version));
  page.apart();
  page.add(version_parts(version), Seen::in_full);
  return page;
}

PageParts season_part(const SeasonProgress& season) {
  PageParts page;
  page.heading(season.of.routine + ": " + season.of.event_title);
  page.fact("routine", season.of.routine);
  page.fact("event", season.of.event);
  page.fact("event_title", season.of.event_title);
  page.list("sentences", season.sentences);
  page.list("warnings", season.warnings);
  for (const ProgressVersion& version : season.versions) page.section("versions", version_part(version));
  return page;
}

}  // namespace

Page progress_page(const std::vector<SeasonProgress>& seasons) {
  Page page("book progress");
  page.csv = {"routine", "event",      "version",  "routine_versions", "set",  "date",
              "what",    "title",      "declared", "credited",         "mark", "marked",
              "of",      "base_marks", "elements", "impression",       "sync", "penalties",
              "total",   "announced"};
  page.no_sections("routines");
  for (const SeasonProgress& season : seasons) page.section("routines", season_part(season));
  if (seasons.empty()) return page;
  page.apart();
  page.say(
      "mark: the mean of the elements' marks, of a run-through what your deductions leave; credited: the "
      "difficulty that counted; base: how many elements got their base mark; sync and penalties: points "
      "taken "
      "off.");
  return page;
}

}  // namespace landdrill::report
