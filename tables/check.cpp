#include "tables/check.h"

#include <algorithm>
#include <unordered_map>

#include "grammar/words.h"
#include "tables/cells.h"
#include "tables/columns.h"
#include "tables/complaints.h"
#include "tables/csv.h"
#include "tables/problems.h"

namespace landdrill {
namespace {

using Codes = std::vector<std::string_view>;

Codes codes_of(const ReadTable& read) {
  Codes codes;
  for (const CsvRow& row : read.csv.rows) {
    std::string_view code = read.text(row, "code");
    // An unclosed quotation mark takes the rest of the line into the cell.
    if (row.broken) code = code.substr(0, code.find(read.csv.separator));
    if (!code.empty()) codes.push_back(code);
  }
  std::sort(codes.begin(), codes.end());
  return codes;
}

// ---- keys ----

// Keeps the cells of a key apart, whatever is in them.
std::string exact_key(const ReadTable& read, const CsvRow& row) {
  std::string key;
  for (std::size_t i = 0; i < read.table->key_columns; ++i) {
    const Column& column = read.table->columns[i];
    const std::string_view text = read.text(row, column.name);
    key += column.holds == Cell::choice ? normal_choice(text) : std::string(text);
    key += '\n';
  }
  return key;
}

void check_keys(const ReadTable& read, Complaints& complaints) {
  std::unordered_map<std::string, std::size_t> lines;
  for (const CsvRow& row : read.csv.rows) {
    if (is_blank(row) || row.broken || read.text(row, read.table->columns[0].name).empty()) continue;
    const auto [first, is_new] = lines.emplace(exact_key(read, row), row.line);
    if (is_new) continue;
    complaints.at_piece(read, read.piece(row, read.table->columns[0].name),
                        {Problem::repeated_row, in_quotes(read.key(row)) + " a second time",
                         "one row for each in " + std::string(read.table->name) + ".csv",
                         "the first is in line " + std::to_string(first->second)});
  }
}

void check_row_count(const ReadTable& set, Complaints& complaints) {
  const CsvRow* first = nullptr;
  for (const CsvRow& row : set.csv.rows) {
    if (is_blank(row)) continue;
    if (first) {
      return complaints.at_piece(set, set.piece(row, "title"),
                                 {Problem::row_count, "a second row", "one row: a set has one title"});
    }
    first = &row;
  }
  if (!first) complaints.about_file(set, {Problem::row_count, "no row", "one row with the title of the set"});
}

void check_has_rows(const ReadTable& read, Complaints& complaints) {
  const auto& rows = read.csv.rows;
  if (!std::all_of(rows.begin(), rows.end(), is_blank)) return;
  complaints.about_file(read,
                        {Problem::row_count, "no row", "at least one: " + std::string(read.table->meaning)});
}

// ---- names of rows in other tables ----

class NameCheck {
 public:
  NameCheck(const Table& table, Complaints& complaints)
      : table_(table), file_(std::string(table.name) + ".csv"), complaints_(complaints) {
    if (const ReadTable* read = complaints.table(table.name)) {
      usable_ = read->usable;
      codes_ = codes_of(*read);
    }
  }

  void check(const ReadTable& read, const Column& column) {
    if (!usable_) return;
    for (const CsvRow& row : read.csv.rows) {
      if (row.broken || read.text(row, column.name).empty()) continue;
      if (codes_.empty()) return complain_of_no_row(read, row, column);
      check_row(read, row, column);
    }
  }

 private:
  // Once for the column: there is nothing that its other rows could name either.
  void complain_of_no_row(const ReadTable& read, const CsvRow& row, const Column& column) {
    if (table_.required) return;  // there was a complaint about the table
    complaints_.at_piece(read, read.piece(row, column.name),
                         {Problem::unknown_name, in_quotes(read.text(row, column.name)), "a code of " + file_,
                          complaints_.table(table_.name) ? file_ + " has no row" : "there is no " + file_});
  }

  void check_row(const ReadTable& read, const CsvRow& row, const Column& column) {
    const std::string_view piece = read.piece(row, column.name);
    std::string_view rest = read.text(row, column.name);
    if (column.holds != Cell::codes) return check_one(read, piece, rest);
    while (!rest.empty()) {
      const std::string_view word = rest.substr(0, rest.find_first_of(" \t\r\n"));
      const std::size_t place = piece.find(word);
      check_one(read, place == std::string_view::npos ? piece : piece.substr(place, word.size()), word);
      rest = trimmed(rest.substr(word.size()));
    }
  }

  void check_one(const ReadTable& read, std::string_view piece, std::string_view word) {
    if (std::binary_search(codes_.begin(), codes_.end(), word)) return;
    complaints_.at_piece(read, piece,
                         {Problem::unknown_name, in_quotes(word), "a code of " + file_, hint_for(word)});
  }

  std::string hint_for(std::string_view word) const {
    // Of so many codes hardly one is near, and looking for it takes its time.
    if (codes_.size() > 20'000 || !complaints_.wants_more()) return {};
    const std::string nearest = words::nearest_hint(word, codes_);
    return nearest.empty() && codes_.size() <= 12 ? all_codes() : nearest;
  }

  std::string all_codes() const {
    std::string list;
    for (std::string_view code : codes_) list += (list.empty() ? "" : ", ") + std::string(code);
    return file_ + " has " + list;
  }

  const Table& table_;
  const std::string file_;
  Complaints& complaints_;
  bool usable_ = true;
  Codes codes_;
};

void check_names(Complaints& complaints) {
  for (std::string_view target : {"families", "kinds", "events"}) {
    NameCheck names(*find_table(target), complaints);
    for (const ReadTable& read : complaints.tables()) {
      if (!read.usable) continue;
      for (const Column& column : read.table->columns) {
        if (column.refers_to == target) names.check(read, column);
      }
    }
  }
}

}  // namespace

void check(const ValueSet& set, const std::vector<ReadTable>& tables, Diagnostics& diagnostics) {
  Complaints complaints(tables, diagnostics);
  for (const ReadTable& read : tables) {
    if (!read.usable) continue;
    if (read.table->key_columns == 0) {
      check_row_count(read, complaints);
    } else {
      if (read.table->required) check_has_rows(read, complaints);
      check_keys(read, complaints);
    }
  }
  check_names(complaints);
  check_rows(set, complaints);
  check_formulas(set, complaints);
  check_panels(set, complaints);
  check_quotas(set, complaints);
  check_spreads(set, complaints);
}

}  // namespace landdrill
