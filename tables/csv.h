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

// Without the blanks around it, also the no-break kind.
std::string_view trimmed(std::string_view text);

// A cell where it stands in the source, without the blanks around it.
std::string_view piece_of(const Source& source, const CsvCell& cell);

// The same of a cell of a row; empty past its end.
std::string_view text_at(const CsvRow& row, std::size_t place);

// The bytes that stand for `text` in a file with this separator: quoted when it must be.
std::string csv_cell(std::string_view text, char separator);

// The rows of a CSV text, one at a time, as views: nothing is kept, so a million rows take no memory.
//
//   CsvRows rows({"marks.csv", "date;mark\n2026-05-09;7,25\n"});
//   while (rows.next()) rows.cell(1)      // "mark", then "7,25"

class CsvRows {
 public:
  // A quoted cell of a list ends on its line; a table has no more cells than any set needs.
  enum class Of { list, table };
  // `source` outlives the rows and every view.
  explicit CsvRows(const Source& source, Of what = Of::list);

  // False at the end. Lines without any text are passed over.
  bool next();
  // The same, also with such lines; false as well when the table has too many cells.
  bool next_line();
  std::size_t line() const { return line_; }  // 1 is the first of the source
  std::size_t cells() const { return cells_.size(); }
  // Without quotation marks and the blanks around it; empty past the end of the row. A view into the source,
  // or, for a cell with doubled quotation marks, into text that lives until the next row.
  std::string_view cell(std::size_t place) const;
  // The same place in the source, for a message.
  std::string_view piece(std::size_t place) const;
  char separator() const { return separator_; }

  // The bytes of a cell, and its text with the blanks that are in it.
  struct Cell {
    std::string_view raw, text;
  };
  const std::vector<Cell>& all_cells() const { return cells_; }
  std::string_view ending() const { return ending_; }
  // What is wrong with the quotation marks of this row: the mark itself, or what follows the closing one.
  struct Broken {
    std::string_view piece;
    bool never_closed;
  };
  const std::vector<Broken>& broken() const { return broken_; }
  // What is not read yet.
  std::string_view rest() const { return text_.substr(at_); }

 private:
  void split();
  std::size_t cell_end(std::size_t at) const;
  Cell next_cell();
  Cell quoted_cell(std::size_t open);
  Cell unclosed_cell(std::size_t open);

  std::string_view text_;
  bool over_lines_;
  std::size_t room_;  // for so many cells
  std::size_t next_line_;
  std::size_t at_ = 0, line_ = 0;
  char separator_ = ',';
  std::string_view ending_;
  std::vector<Broken> broken_;
  std::vector<Cell> cells_;
  std::deque<std::string> unescaped_;
};

}  // namespace landdrill
