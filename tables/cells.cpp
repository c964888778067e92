#include <algorithm>
#include <tuple>

#include "grammar/characters.h"
#include "grammar/diagnostics.h"
#include "grammar/problem_code.h"
#include "grammar/words.h"
#include "tables/columns.h"
#include "tables/csv.h"
#include "tables/decimal.h"
#include "tables/problems.h"
#include "tables/read_table.h"

namespace landdrill {
namespace {

bool has(std::string_view text, std::string_view any_of) {
  return text.find_first_of(any_of) != std::string_view::npos;
}
std::string in_column(const Column& column) {
  return " in the column " + in_quotes(column.name);
}

std::string whole_of(const Column& column) {
  if (column.most == Column().most) {
    return column.least == 0 ? "a whole number" : "a whole number above " + std::to_string(column.least - 1);
  }
  return "a whole number from " + std::to_string(column.least) + " to " + std::to_string(column.most);
}

// Goes through the rows of one table and collects the complaints.
class CellCheck {
 public:
  CellCheck(ReadTable& read, Diagnostics& diagnostics) : read_(read), diagnostics_(diagnostics) {}

  void run() {
    for (std::size_t i = 0; i < read_.csv.rows.size(); ++i) {
      CsvRow& row = read_.csv.rows[i];
      if (row.broken || is_blank(row)) continue;
      const std::size_t before = diagnostics_.errors();
      if (!counts_right(row)) {
        row.broken = true;
        continue;
      }
      check_row(row);
      read_.in_error[i] = diagnostics_.errors() > before;
    }
  }

 private:
  std::size_t columns() const { return read_.csv.header.cells.size(); }

  bool counts_right(const CsvRow& row) {
    const auto& cells = row.cells;
    const auto filled = [](const CsvCell& cell) { return !trimmed(cell.text).empty(); };
    if (cells.size() > columns()) {
      const auto extra =
          std::find_if(cells.begin() + static_cast<std::ptrdiff_t>(columns()), cells.end(), filled);
      if (extra == cells.end()) return true;
      complain_of_long(row, *extra);
      return false;
    }
    const auto& names = read_.csv.header.cells;
    const auto absent =
        std::find_if(names.begin() + static_cast<std::ptrdiff_t>(cells.size()), names.end(), filled);
    if (absent == names.end()) return true;
    complain(read_.piece(cells.back()),
             {Problem::cell_count, cells_of(row), expected_count(),
              "the first cell that is missing is " + in_quotes(trimmed(absent->text))});
    return false;
  }

  static std::string cells_of(const CsvRow& row) {
    return "a row of " + std::to_string(row.cells.size()) + (row.cells.size() == 1 ? " cell" : " cells");
  }
  std::string expected_count() const { return std::to_string(columns()) + ", one for each column"; }

  void complain_of_long(const CsvRow& row, const CsvCell& extra) {
    std::string_view piece = read_.piece(extra);
    std::string hint;
    if (read_.csv.separator == ',') std::tie(piece, hint) = split_cell(row, piece);
    complain(piece, {Problem::cell_count, cells_of(row), expected_count(), std::move(hint)});
  }

  // The two cells that a comma has probably made of one, or the extra cell, and what to do.
  std::pair<std::string_view, std::string> split_cell(const CsvRow& row, std::string_view extra) const {
    for (std::size_t i = 0; i + 1 < row.cells.size(); ++i) {
      const std::string_view first = trimmed(row.cells[i].text), second = row.cells[i + 1].text;
      if (holds_number(i) && characters::all_digits(first) && characters::all_digits(second)) {
        return {both(row, i), "a decimal comma splits the cell here: write " + std::string(first) + "." +
                                  std::string(second) + ", or put it in quotation marks"};
      }
      if (!first.empty() && second.starts_with(' ') && !trimmed(second).empty()) {
        return {both(row, i), "a comma splits the cell here: put \"" + std::string(first) + "," +
                                  std::string(second) + "\" in quotation marks"};
      }
    }
    return {extra, "a cell with a comma in it needs quotation marks around it"};
  }

  std::string_view both(const CsvRow& row, std::size_t i) const {
    const CsvCell& last = row.cells[i + 1];
    return read_.source.text.substr(row.cells[i].offset, last.offset + last.raw.size() - row.cells[i].offset);
  }

  bool holds_number(std::size_t place) const {
    const auto at = std::find(read_.cell_of.begin(), read_.cell_of.end(), place);
    return at != read_.cell_of.end() &&
           read_.table->columns[static_cast<std::size_t>(at - read_.cell_of.begin())].holds == Cell::number;
  }

  void check_row(const CsvRow& row) {
    for (std::size_t i = 0; i < read_.cell_of.size(); ++i) {
      if (read_.cell_of[i] != ReadTable::no_cell) check_cell(row, read_.table->columns[i], read_.cell_of[i]);
    }
    for (std::size_t i = 0; i < std::min(columns(), row.cells.size()); ++i) {
      if (trimmed(read_.csv.header.cells[i].text).empty()) check_nameless(row.cells[i]);
    }
  }

  void check_nameless(const CsvCell& cell) {
    if (trimmed(cell.text).empty() || nameless_reported_) return;
    nameless_reported_ = true;
    complain(read_.piece(cell),
             {Problem::unnamed_column, in_quotes(trimmed(cell.text)) + " in a column without a name",
              "a name in the header line, or an empty cell"});
  }

  void check_cell(const CsvRow& row, const Column& column, std::size_t place) {
    const std::string_view text = text_at(row, place);
    const std::string_view piece = read_.piece(row.cells[std::min(place, row.cells.size() - 1)]);
    if (text.empty()) {
      if (column.required) {
        complain(piece, {Problem::missing_cell, "an empty cell", what(column) + in_column(column),
                         std::string(column.meaning)});
      }
      return;
    }
    switch (column.holds) {
      case Cell::number:
        return check_number(column, text, piece);
      case Cell::whole:
        return check_whole(column, text, piece);
      case Cell::choice:
        return check_choice(column, text, piece);
      case Cell::code:
        return check_code(column, text, piece);
      case Cell::text:
      case Cell::codes:
      case Cell::formula:
        return;
    }
  }

  static std::string what(const Column& column) {
    switch (column.holds) {
      case Cell::number:
        return column.above_zero ? "a number above 0" : "a number";
      case Cell::whole:
        return whole_of(column);
      case Cell::choice:
        return words::alternatives(column.choices);
      case Cell::code:
        return "a code";
      default:
        return "a text";
    }
  }

  void check_number(const Column& column, std::string_view text, std::string_view piece) {
    if (number_from(column, text)) return;
    if (Decimal::parse(text)) {
      return complain(piece, {Problem::out_of_range, in_quotes(text),
                              std::string("a number ") + (column.above_zero ? "above 0" : "not below 0") +
                                  in_column(column)});
    }
    complain(piece,
             {Problem::bad_number, in_quotes(text), "a number" + in_column(column), number_hint(text)});
  }

  void check_whole(const Column& column, std::string_view text, std::string_view piece) {
    if (whole_from(column, text)) return;
    const auto number = Decimal::parse(text);
    const ProblemCode problem =
        number && number->places_used() == 0 ? Problem::out_of_range : Problem::bad_number;
    complain(piece, {problem, in_quotes(text), whole_of(column) + in_column(column),
                     number ? "" : number_hint(text)});
  }

  void check_choice(const Column& column, std::string_view text, std::string_view piece) {
    const std::string word = normal_choice(text);
    const auto& known = column.choices;
    if (std::find(known.begin(), known.end(), word) != known.end()) return;
    complain(piece, {Problem::bad_choice, in_quotes(text), words::alternatives(known) + in_column(column),
                     words::nearest_hint(word, known)});
  }

  void check_code(const Column& column, std::string_view text, std::string_view piece) {
    if (may_be_code(text)) return;
    complain(piece, {Problem::bad_code, "a code with a quotation mark, a tab or a line break in it",
                     "a code in one line" + in_column(column)});
  }

  void complain(std::string_view piece, Complaint complaint) {
    diagnostics_.complain(read_.source, piece, std::move(complaint));
  }

  ReadTable& read_;
  Diagnostics& diagnostics_;
  bool nameless_reported_ = false;
};

}  // namespace

bool may_be_code(std::string_view text) {
  return std::none_of(text.begin(), text.end(),
                      [](unsigned char c) { return c < ' ' || c == '"' || c == 0x7F; });
}

void check_cells(ReadTable& table, Diagnostics& diagnostics) {
  CellCheck(table, diagnostics).run();
}

std::optional<int> whole_from(const Column& column, std::string_view text) {
  const auto number = Decimal::parse(text);
  if (!number || number->places_used() > 0) return std::nullopt;
  if (*number < Decimal::whole(column.least) || *number > Decimal::whole(column.most)) return std::nullopt;
  return static_cast<int>(number->units() / Decimal::one);
}

std::optional<Decimal> number_from(const Column& column, std::string_view text) {
  const auto number = Decimal::parse(text);
  if (!number || *number < Decimal() || (column.above_zero && *number == Decimal())) return std::nullopt;
  return number;
}

std::string number_hint(std::string_view text) {
  if (std::none_of(text.begin(), text.end(), characters::is_digit))
    return "leave the cell empty while the number is not known";
  const std::size_t number_ends = text.find_first_not_of("0123456789.,");
  if (text.ends_with('%')) return "write a share as a number: 0.3 for 30 %";
  if (has(text, ".") && has(text, ","))
    return "write it without a sign between the thousands, such as 1234.5";
  if (number_ends != std::string_view::npos && Decimal::parse(text.substr(0, number_ends)) &&
      !has(text.substr(number_ends), "0123456789")) {
    return "write the number alone: " + std::string(text.substr(0, number_ends));
  }
  if (has(text, " ")) return "write it without blanks";
  if (text.find_first_not_of("0123456789.,+-") == std::string_view::npos && !has(text.substr(1), "+-")) {
    return "at most six decimal places, and below 9,000,000,000,000";
  }
  if (text.find_first_not_of("0123456789.,oO") == std::string_view::npos)
    return "is that the letter O in place of a 0?";
  return "write digits, and a point or a comma for the decimals";
}

}  // namespace landdrill
