// A list of rows of texts, told by its fields: as CSV, JSON, or columns of text.
//
//   constexpr Field<BookScore> fields[] = {{"routine", "routine", &BookScore::routine, Shown::wrapped}, ...};
//   field_list("scores", scores, fields, Format::csv, {})      // "routine,...\nReed Song,...\n"
//
// Computes nothing.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/report/csv.h"
#include "engine/report/grid.h"
#include "engine/report/json_text.h"
#include "engine/report/values.h"

namespace landdrill::report {

// A column of a list: its name in CSV and JSON, its heading, and its text in a row. Titles give way on a
// narrow page; what few people ask for is not on the page at all, and what other programs have in another
// field is on the page alone.
enum class Shown { whole, wrapped, amount, never, page };
template <class Row>
struct Field {
  std::string_view name, heading;
  std::string Row::*text;
  Shown shown = Shown::whole;
};

template <class Row, std::size_t count>
std::string as_csv(const std::vector<Row>& rows, const Field<Row> (&fields)[count]) {
  std::vector<std::string_view> cells;
  for (const Field<Row>& field : fields)
    if (field.shown != Shown::page) cells.push_back(field.name);
  std::string text = csv_row(cells);
  for (const Row& row : rows) {
    cells.clear();
    for (const Field<Row>& field : fields)
      if (field.shown != Shown::page) cells.push_back(row.*field.text);
    text += csv_row(cells);
  }
  return text;
}

template <class Row, std::size_t count>
std::string as_json(std::string_view name, const std::vector<Row>& rows, const Field<Row> (&fields)[count]) {
  json::array list;
  for (const Row& row : rows) {
    json::object one;
    for (const Field<Row>& field : fields)
      if (field.shown != Shown::page) one[field.name] = text_or_null(row.*field.text);
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
    cells.reserve(shown.size());
    for (const Field<Row>* field : shown) cells.push_back(row.*field->text);
    grid.add(std::move(cells));
  }
  return grid.text(wish.width, wish.colour);
}

template <class Row, std::size_t count>
std::string field_list(std::string_view name, const std::vector<Row>& rows, const Field<Row> (&fields)[count],
                       Format format, const TextWish& wish) {
  if (format == Format::csv) return as_csv(rows, fields);
  if (format == Format::json) return as_json(name, rows, fields);
  return as_text(rows, fields, wish);
}

}  // namespace landdrill::report
