// A page as text for people, as JSON for other programs, as CSV for a spreadsheet.
//
//   render(page, Format::csv, {})
//
// Text is what a coach reads in a terminal and pins on the wall: no line is wider than the wish, and nothing rests on
// colour alone. JSON has the first form, "format": 1; keys are only added to it:
//
//   {"format": 1, "report": "score", "routine": "Harbour Lights", ..., "elements": [{"number": 1, ...
//
// A key is that of the fact, the column, the list, the tree or the section; sections with one key stand in one list, in
// their order, and so do the rows of tables with one key. Amounts are texts, so that they stay exact: "17.2500". Chances
// and statistics are texts to 12 significant digits. Only numbers of things (counts, lines) are JSON numbers. What is not
// there is null.
//
// CSV has the tables of a page below one header, a row for each row of a table that is in it. A row fills the columns it
// has, with what its table gives every row and the facts around it; the others stay empty. Comma, LF, quotes where needed.
// A text that a spreadsheet would take for a formula gets a `'` in front of it.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/report/page.h"

namespace landdrill::report {

// How a page is wanted as text.
struct TextWish {
  bool colour = false;
  int width = 80;     // columns of the page; below 60 is taken as 60
  bool full = false;  // everything: the whole build-up, and every invented or remembered value by name
};
inline constexpr std::string_view bullet = "  - ";  // before one of several sentences

std::string render_text(const Page& page, const TextWish& wish);

// indented: for people's eyes too. one_line: one text a line, for streams of many sheets. Both end in a newline, have
// their keys in the order in which they were put in, and spell out bytes that are no UTF-8.
enum class JsonLayout { indented, one_line };
std::string render_json(const Page& page, JsonLayout layout = JsonLayout::indented);

std::string render_csv(const Page& page);
// The same in two pieces, for several pages of one question below one header.
std::string csv_header(const Page& page);
std::string csv_rows(const Page& page);
// `texts` as one row, each made safe and quoted where needed; ends in "\n".
std::string csv_row(const std::vector<std::string_view>& texts);

enum class Format { text, csv, json };
// `wish` is for text alone, `layout` for JSON.
std::string render(const Page& page, Format format, const TextWish& wish,
                   JsonLayout layout = JsonLayout::indented);

}  // namespace landdrill::report
