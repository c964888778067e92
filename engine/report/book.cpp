#include "engine/report/book.h"

#include <fmt/format.h>

#include <algorithm>
#include <span>

#include "engine/report/field_list.h"
#include "engine/report/sections.h"
#include "engine/report/width.h"

namespace landdrill::report {
namespace {

constexpr Field<BookLine> line_fields[] = {
    {"routine", "routine", &BookLine::routine, Shown::wrapped},
    {"event", "event", &BookLine::event},
    {"what", "what", &BookLine::what},
    {"date", "date", &BookLine::date},
    {"title", "title", &BookLine::title, Shown::wrapped},
    {"version", "version", &BookLine::version},
    {"of_version", "of routine", &BookLine::of_version},
    {"routine_versions", "", &BookLine::routine_versions, Shown::never},
    {"set", "value set", &BookLine::set, Shown::never},
    {"kept_at", "kept", &BookLine::kept_at, Shown::never},
    {"did", "", &BookLine::did}};

constexpr Field<BookScore> score_fields[] = {
    {"routine", "routine", &BookScore::routine, Shown::wrapped},
    {"event", "event", &BookScore::event, Shown::never},
    {"what", "what", &BookScore::what, Shown::never},
    {"date", "date", &BookScore::date},
    {"title", "panel", &BookScore::title, Shown::wrapped},
    {"set", "value set", &BookScore::set, Shown::never},
    {"estimate", "estimate", &BookScore::estimate, Shown::amount},
    {"recorded", "recorded", &BookScore::recorded, Shown::amount},
    {"difference", "difference", &BookScore::difference, Shown::amount},
    {"announced", "announced", &BookScore::announced, Shown::amount},
    {"note", "", &BookScore::note, Shown::never}};

constexpr Field<BookEdition> edition_fields[] = {
    {"number", "no.", &BookEdition::number, Shown::amount},
    {"set", "value set", &BookEdition::set},
    {"title", "title", &BookEdition::title, Shown::never},
    {"edition", "edition", &BookEdition::edition},
    {"kept_at", "kept", &BookEdition::kept_at, Shown::never},
    {"", "kept", &BookEdition::kept_on, Shown::page},
    {"first_for", "first for", &BookEdition::first_for, Shown::never},
    {"routines", "routines", &BookEdition::routines, Shown::amount},
    {"versions", "versions", &BookEdition::versions, Shown::amount},
    {"runs", "runs", &BookEdition::runs, Shown::amount},
    {"panels", "panels", &BookEdition::panels, Shown::amount}};

// The rows of one routine under its name. Where there are several versions of it, it is said to which of them
// a run or a panel belongs, and the value set only if there are several.
std::string routine_text(std::span<const BookLine> lines, const TextWish& wish) {
  const bool versions = std::any_of(lines.begin(), lines.end(),
                                    [](const BookLine& line) { return line.routine_versions != "1"; });
  const bool sets = !versions || std::any_of(lines.begin(), lines.end(), [&](const BookLine& line) {
    return line.set != lines.front().set;
  });
  std::vector<GridColumn> columns = {{""}, {""}, {""}, {"", Align::words, true}, {"version"}};
  if (versions) columns.push_back({"of routine"});
  if (sets) columns.push_back({"value set"});
  columns.push_back({""});
  Grid grid(std::move(columns));
  for (const BookLine& line : lines) {
    std::vector<std::string> cells = {"", line.what, line.date, line.title, line.version};
    if (versions)
      cells.push_back(line.of_version.empty() ? "" : line.of_version + " of " + line.routine_versions);
    if (sets) cells.push_back(line.set);
    cells.push_back(line.did);
    grid.add(std::move(cells));
  }
  return paragraph("", plain(lines.front().routine) + ", " + plain(lines.front().event), wish.width) +
         grid.text(wish.width, wish.colour);
}

std::string list_text(std::span<const BookLine> lines, const TextWish& wish) {
  std::string text;
  while (!lines.empty()) {
    std::size_t end = 1;
    while (end < lines.size() && lines[end].routine == lines[0].routine && lines[end].event == lines[0].event)
      ++end;
    text += (text.empty() ? "" : "\n") + routine_text(lines.first(end), wish);
    lines = lines.subspan(end);
  }
  return text;
}

// Below the table, where a sentence has room.
std::string notes_text(const std::vector<BookScore>& scores, const TextWish& wish) {
  constexpr std::size_t most = 10;
  std::vector<std::string> notes;
  std::size_t more = 0;
  for (const BookScore& one : scores) {
    if (one.note.empty()) continue;
    if (notes.size() == most) ++more;
    if (notes.size() < most)
      notes.push_back(plain(one.routine) + ", " + one.date +
                      (one.title.empty() ? "" : " " + plain(one.title)) + ", " + one.note);
  }
  if (more > 0) notes.push_back(fmt::format("and {} more, which CSV and JSON have", more));
  return notes.empty() ? std::string() : "\n" + bullets(notes, wish);
}

}  // namespace

std::string book_list(const std::vector<BookLine>& lines, Format format, const TextWish& wish) {
  if (format == Format::text) return list_text(lines, wish);
  return field_list("entries", lines, line_fields, format, wish);
}

std::string book_editions(const std::vector<BookEdition>& editions, Format format, const TextWish& wish) {
  return field_list("editions", editions, edition_fields, format, wish);
}

std::string book_scores(const std::vector<BookScore>& scores, Format format, const TextWish& wish) {
  std::string text = field_list("scores", scores, score_fields, format, wish);
  return format == Format::text ? text + notes_text(scores, wish) : text;
}

}  // namespace landdrill::report
