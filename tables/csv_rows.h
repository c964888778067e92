// The rows of a long CSV text, one at a time, as views: nothing is kept, so a million rows take no memory.
//
//   CsvRows rows({"marks.csv", "date;mark\n2026-05-09;7,25\n"});
//   while (rows.next()) rows.cell(1)      // "mark", then "7,25"
//
// The same dialects as csv.h (separator seen from the first line, quotes doubled inside quotes, BOM, LF, CRLF
// or CR), but nothing can be written back. A quoted cell ends on its line.
#pragma once

#include <deque>
#include <string>
#include <string_view>
#include <vector>

#include "grammar/diagnostics.h"
#include "grammar/span.h"

namespace landdrill {

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
