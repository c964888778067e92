// CSV text <-> cells, byte for byte: what was read is written back exactly, whatever program wrote it.
//
//   CsvTable table = read_csv({"parts.csv", "code;value\nspin-360;0,9\n"}).table;
//   table.rows[0].cells[1].text       // "0,9"
//   write_csv(table)                  // the same bytes again
//
// Comma, semicolon or tab between cells (seen from the header line), quotes doubled inside quotes, BOM, LF or
// CRLF. Law: write_csv(read_csv(x).table) == x for any bytes x.
#pragma once

#include <deque>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "grammar/diagnostics.h"
#include "grammar/span.h"

namespace landdrill {

struct CsvCell {
  std::string text;        // without quotation marks, `""` read as `"`
  std::string raw;         // the bytes between separators, as in the file
  std::size_t offset = 0;  // of `raw` in the source
};

struct CsvRow {
  std::vector<CsvCell> cells;  // empty for an empty line
  std::string ending;          // "\n", "\r\n", "\r", or "" for a last line without one
  std::size_t line = 0;        // 1 is the first line of the file
  bool broken =
      false;  // there is a diagnostic about its quotation marks, its length or the number of its cells
};

struct CsvTable {
  std::string file;    // "parts.csv"
  std::string before;  // a BOM, or nothing
  char separator = ',';
  CsvRow header;
  std::vector<CsvRow> rows;
};

struct CsvRead {
  CsvTable table;
  Diagnostics diagnostics;  // unclosed quote, text after a closing quote, NUL, not UTF-8, too long
};

// Given any bytes, never throws; linear in the text. A row with an error is kept, so that nothing is lost.
CsvRead read_csv(const Source& source);
std::string write_csv(const CsvTable& table);

// Why the bytes are no CSV text in UTF-8 at all, if they are none: a workbook, UTF-16, a NUL byte.
std::optional<Diagnostic> no_csv_text(const Source& source);

// What some programs write before the first line.
inline constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";
// Comma, semicolon or tab: what stands between the cells of a first line, or of a text, up to its first line
// ending.
char separator_of(std::string_view text);
// `a ""b""` -> `a "b"`
std::string without_doubled_quotes(std::string_view inside);
// Without the blanks around it, also the no-break kind.
std::string_view trimmed(std::string_view text);

// The same of a cell of a row; empty past its end.
std::string_view text_at(const CsvRow& row, std::size_t place);

// The bytes that stand for `text` in a file with this separator: quoted when it must be.
std::string csv_cell(std::string_view text, char separator);

// The rows of a long CSV text, one at a time, as views: nothing is kept, so a million rows take no memory.
//
//   CsvRows rows({"marks.csv", "date;mark\n2026-05-09;7,25\n"});
//   while (rows.next()) rows.cell(1)      // "mark", then "7,25"
//
// The same dialects as csv.h (separator seen from the first line, quotes doubled inside quotes, BOM, LF, CRLF
// or CR), but nothing can be written back. A quoted cell ends on its line.

class CsvRows {
 public:
  // `source` outlives the rows and every view.
  explicit CsvRows(const Source& source);

  // False at the end. Lines without any text are passed over.
  bool next();
  std::size_t line() const { return line_; }  // 1 is the first of the source
  std::size_t cells() const { return cells_.size(); }
  // Without quotation marks and the blanks around it; empty past the end of the row. A view into the source,
  // or, for a cell with doubled quotation marks, into text that lives until the next row.
  std::string_view cell(std::size_t place) const;
  // The same place in the source, for a message.
  std::string_view piece(std::size_t place) const;
  char separator() const { return separator_; }
  // What is wrong with the quotation marks of this row: a view into the source, or empty.
  std::string_view broken() const { return broken_; }

 private:
  struct Cell {
    std::string_view raw, text;
  };
  std::size_t line_end();
  void split(std::string_view line);
  Cell quoted_cell(std::string_view line, std::size_t& at);

  std::string_view text_;
  std::size_t at_ = 0, line_ = 0;
  std::size_t newline_ = 0, return_ = 0;  // the next ones, or the end
  char separator_ = ',';
  std::string_view broken_;
  std::vector<Cell> cells_;
  std::deque<std::string> unescaped_;
};

}  // namespace landdrill
