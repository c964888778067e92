// A CSV file seen as one of the tables of a set: which cell of a row holds which column.
//
//   const Source source{"parts.csv", "Code;Value\nspin-360; 0,9\n"};
//   ReadTable parts = read_table(*find_table("parts"), source, diagnostics);
//   parts.text(parts.csv.rows[0], "value")    // "0,9", without the blanks around it
//
// Header names may differ from columns.h in case and in blanks or hyphens for `_`.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "grammar/diagnostics.h"
#include "grammar/span.h"
#include "tables/columns.h"
#include "tables/csv.h"
#include "tables/decimal.h"
#include "tables/value_set.h"

namespace landdrill {

struct ReadTable {
  static constexpr std::size_t no_cell = static_cast<std::size_t>(-1);

  const Table* table = nullptr;
  Source source;  // does not own the text
  CsvTable csv;
  std::vector<std::size_t> cell_of;  // for each column of `table` its place in a row, or no_cell
  bool usable = true;                // false: a column is missing, so the rows cannot be understood
  std::vector<bool> in_error;        // for each row: a cell is not what its column says (see check_cells)

  // Every row is understood, so that a row that is not there is not there.
  bool complete() const;
  // Its place in a row, or no_cell.
  std::size_t place_of(std::string_view column) const;
  // nullptr when the file has no such column or the row is too short.
  const CsvCell* cell(const CsvRow& row, std::string_view column) const;
  // The text of the cell without blanks around it; "" when there is none.
  std::string_view text(const CsvRow& row, std::string_view column) const;
  // The piece of the source to point at: the cell, or the first cell of the row when there is none.
  std::string_view piece(const CsvRow& row, std::string_view column) const;
  std::string_view piece(const CsvCell& cell) const;
  // The key cells, joined by blanks: "duet-free execution"; with a word for empty ones: "duet-free execution -".
  std::string key(const CsvRow& row, std::string_view empty = {}) const;
  // They kept apart, whatever is in them: for telling rows apart.
  std::string exact_key(const CsvRow& row) const;
};

// Reads the text and its header; complaints go to `diagnostics`. `source.text` must outlive the result.
ReadTable read_table(const Table& table, const Source& source, Diagnostics& diagnostics);

// A line without any text, such as ",,,": no row.
bool is_blank(const CsvRow& row);
// "Most parts" -> "most_parts"
std::string normal_name(std::string_view header);
// "Half up" -> "half-up": the words of a Cell::choice are read forgivingly.
std::string normal_choice(std::string_view text);
// A word of a table as messages show it: "\"spins\"".
std::string in_quotes(std::string_view text);

// Are the cells of a table what their columns say they are? Complains of every one that is not.
//
//   parts.csv:12:14: error: found "0.9x"; expected a number in the column "value" [bad-number]
//
// Marks the rows that have a complaint: `broken` for a wrong number of cells, else `in_error`.
void check_cells(ReadTable& table, Diagnostics& diagnostics);

// Whether the text can be a code: one line without quotation marks.
bool may_be_code(std::string_view text);
// A whole number, also typed "2.0"; empty when it is none or outside least..most of the column.
std::optional<int> whole_from(const Column& column, std::string_view text);
// A number that is not below 0 (above 0 where the column says so).
std::optional<Decimal> number_from(const Column& column, std::string_view text);
// Why `text` is no number, for somebody who typed it: "leave the cell empty while the value is not known".
std::string number_hint(std::string_view text);

// Complaints about rows of a set that has been read, at the cell that is to blame.
//
//   complaints.at(kind.from, "most_parts", {Problem::contradiction, "...", "..."});

class Complaints {
 public:
  Complaints(const std::vector<ReadTable>& tables, Diagnostics& diagnostics)
      : tables_(tables), diagnostics_(diagnostics) {}

  const std::vector<ReadTable>& tables() const { return tables_; }
  // nullptr when the set does not have the table.
  const ReadTable* table(std::string_view name) const;
  // The table is there, but not all of its rows are known: that a row is not in the set means nothing.
  bool is_incomplete(std::string_view name) const;

  bool wants_more() const { return diagnostics_.wants_more(); }
  // About the cell of `column` in the row that `from` names.
  void at(const Provenance& from, std::string_view column, Complaint complaint);
  // About the words `part` in that cell; about the cell when they are not in it.
  void at_part(const Provenance& from, std::string_view column, std::string_view part, Complaint complaint);
  void at_piece(const ReadTable& table, std::string_view piece, Complaint complaint);
  void about_file(const ReadTable& table, Complaint complaint);

 private:
  const CsvRow* row_of(const Provenance& from) const;

  const std::vector<ReadTable>& tables_;
  Diagnostics& diagnostics_;
};

// What a value set promises that no single cell can show: names that exist, limits that can be met.
//
// Duplicate code; a formula that names an unknown family; least over most; a quota nobody can meet (more
// required than the event allows in all, or no part of that family); a panel that drops all its judges; a
// step that does not divide the scale; a fault without any size; an event without a panel; two element panels
// for one kind; a kind or event that is named but not there; invented rows without a source ...
//
// Adds what is wrong with `set` to `diagnostics`; `tables` are the texts it was read from, for places in
// messages.
void check(const ValueSet& set, const std::vector<ReadTable>& tables, Diagnostics& diagnostics);
// The parts of it.
void check_rows(const ValueSet& set, Complaints& complaints);
void check_formulas(const ValueSet& set, Complaints& complaints);
void check_panels(const ValueSet& set, Complaints& complaints);
void check_quotas(const ValueSet& set, Complaints& complaints);
void check_spreads(const ValueSet& set, Complaints& complaints);

}  // namespace landdrill
