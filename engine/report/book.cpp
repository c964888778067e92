#include "engine/report/book.h"

#include <span>

#include "engine/report/csv.h"
#include "engine/report/grid.h"
#include "engine/report/json_text.h"
#include "engine/report/width.h"

namespace landdrill::report {
namespace {

namespace json = boost::json;
using Align = GridColumn::Align;

// A column of a list: its name in CSV and JSON, its heading, and its text in a row. Titles give way on a
// narrow page; what few people ask for is not on the page at all.
enum class Shown { whole, wrapped, amount, never };
template <class Row>
struct Field {
  std::string_view name, heading;
  std::string Row::*text;
  Shown shown = Shown::whole;
};

constexpr Field<BookLine> line_fields[] = {{"routine", "routine", &BookLine::routine, Shown::wrapped},
                                           {"event", "event", &BookLine::event},
                                           {"what", "what", &BookLine::what},
                                           {"date", "date", &BookLine::date},
                                           {"title", "title", &BookLine::title, Shown::wrapped},
                                           {"version", "version", &BookLine::version},
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
    {"note", "", &BookScore::note, Shown::wrapped}};

template <class Row, std::size_t count>
std::string as_csv(const std::vector<Row>& rows, const Field<Row> (&fields)[count]) {
  std::vector<std::string_view> cells;
  for (const Field<Row>& field : fields) cells.push_back(field.name);
  std::string text = csv_row(cells);
  for (const Row& row : rows) {
    cells.clear();
    for (const Field<Row>& field : fields) cells.push_back(row.*field.text);
    text += csv_row(cells);
  }
  return text;
}

template <class Row, std::size_t count>
std::string as_json(std::string_view name, const std::vector<Row>& rows, const Field<Row> (&fields)[count]) {
  json::array list;
  for (const Row& row : rows) {
    json::object one;
    for (const Field<Row>& field : fields) one[field.name] = text_or_null(row.*field.text);
    list.push_back(std::move(one));
  }
  json::object all;
  all[name] = std::move(list);
  return json_text(all, JsonLayout::indented);
}

// Columns in which nothing stands are left out, and those that only other programs need.
template <class Row, std::size_t count>
std::string as_text(const std::vector<Row>& rows, const Field<Row> (&fields)[count], const TextWish& wish) {
  std::vector<const Field<Row>*> shown;
  std::vector<GridColumn> columns;
  for (const Field<Row>& field : fields) {
    bool empty = true;
    for (const Row& row : rows) empty = empty && (row.*field.text).empty();
    if (empty || field.shown == Shown::never) continue;
    shown.push_back(&field);
    columns.push_back({std::string(field.heading),
                       field.shown == Shown::amount ? Align::amount : Align::words,
                       field.shown == Shown::wrapped});
  }
  Grid grid(std::move(columns));
  for (const Row& row : rows) {
    std::vector<std::string> cells;
    for (const Field<Row>* field : shown) cells.push_back(row.*field->text);
    grid.add(std::move(cells));
  }
  return grid.text(wish.width, wish.colour);
}

template <class Row, std::size_t count>
std::string in_format(std::string_view name, const std::vector<Row>& rows, const Field<Row> (&fields)[count],
                      Format format, const TextWish& wish) {
  if (format == Format::csv) return as_csv(rows, fields);
  if (format == Format::json) return as_json(name, rows, fields);
  return as_text(rows, fields, wish);
}

// The rows of one routine under its name.
std::string routine_text(std::span<const BookLine> lines, const TextWish& wish) {
  Grid grid({{""}, {""}, {""}, {"", Align::words, true}, {"version"}, {"value set"}, {""}});
  for (const BookLine& line : lines)
    grid.add({"", line.what, line.date, line.title, line.version, line.set, line.did});
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

}  // namespace

std::string book_list(const std::vector<BookLine>& lines, Format format, const TextWish& wish) {
  if (format == Format::text) return list_text(lines, wish);
  return in_format("entries", lines, line_fields, format, wish);
}

std::string book_scores(const std::vector<BookScore>& scores, Format format, const TextWish& wish) {
  return in_format("scores", scores, score_fields, format, wish);
}

}  // namespace landdrill::report
