// CSV text <-> cells, byte for byte: what was read is written back exactly, whatever program wrote it.
//
//   CsvTable table = read_csv({"parts.csv", "code;value\nspin-360;0,9\n"}).table;
//   table.rows[0].cells[1].text       // "0,9"
//   write_csv(table)                  // the same bytes again
//
// Comma, semicolon or tab between cells (seen from the header line), quotes doubled inside quotes, BOM, LF or
// CRLF. Law: write_csv(read_csv(x).table) == x for any bytes x.
#pragma once

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

}  // namespace landdrill
