#include "tables/read_table.h"

#include <algorithm>
#include <utility>

#include "grammar/diagnostics.h"
#include "grammar/problems.h"
#include "grammar/span.h"
#include "grammar/words.h"
#include "tables/csv.h"
#include "tables/problems.h"

namespace landdrill {
namespace {

std::string column_names(const Table& table) {
  std::string names;
  for (const Column& column : table.columns) names += (names.empty() ? "" : ", ") + std::string(column.name);
  return names;
}

// The header cells, matched to the columns of the table.
class Header {
 public:
  Header(ReadTable& read, Diagnostics& diagnostics) : read_(read), diagnostics_(diagnostics) {
    for (const CsvCell& cell : read.csv.header.cells) names_.push_back(normal_name(cell.text));
    used_.resize(names_.size());
  }

  void match() {
    for (const Column& column : read_.table->columns) read_.cell_of.push_back(find(column));
    for (std::size_t i = 0; i < read_.cell_of.size(); ++i) {
      if (read_.cell_of[i] == ReadTable::no_cell) complain_of_absent(read_.table->columns[i]);
    }
  }

 private:
  std::size_t find(const Column& column) {
    std::size_t found = ReadTable::no_cell;
    for (std::size_t i = 0; i < names_.size(); ++i) {
      if (names_[i] != column.name) continue;
      used_[i] = true;
      if (found == ReadTable::no_cell) {
        found = i;
      } else {
        complain(read_.piece(read_.csv.header.cells[i]),
                 {Problem::repeated_column, "the column " + in_quotes(column.name) + " a second time",
                  "each column once"});
      }
    }
    return found;
  }

  void complain_of_absent(const Column& column) {
    const std::size_t near = nearest_unused(column.name);
    if (column.required) read_.usable = false;
    if (near != ReadTable::no_cell) return complain_of_misnamed(column, read_.csv.header.cells[near]);
    if (!column.required) return;
    complain(read_.piece(read_.csv.header.cells.front()),
             {Problem::missing_column, "no column " + in_quotes(column.name),
              "the columns " + column_names(*read_.table)});
  }

  void complain_of_misnamed(const Column& column, const CsvCell& cell) {
    const std::string name(column.name);
    complain(read_.piece(cell), {column.required ? Problem::missing_column : Problem::misnamed_column,
                                 "the column " + in_quotes(cell.text), "a column " + in_quotes(name),
                                 "it is not read as long as it is not called " + name});
  }

  std::size_t nearest_unused(std::string_view column) const {
    std::vector<std::string_view> unused;
    for (std::size_t i = 0; i < names_.size(); ++i) {
      if (!used_[i] && !names_[i].empty()) unused.push_back(names_[i]);
    }
    const auto near = words::nearest(column, unused, 1);
    if (near.empty()) return ReadTable::no_cell;
    return static_cast<std::size_t>(std::find(names_.begin(), names_.end(), near.front()) - names_.begin());
  }

  void complain(std::string_view piece, Complaint complaint) {
    diagnostics_.complain(read_.source, piece, std::move(complaint));
  }

  ReadTable& read_;
  Diagnostics& diagnostics_;
  std::vector<std::string> names_;
  std::vector<bool> used_;
};

// A workbook has no header line that would be worth complaining of.
bool is_text(const Diagnostics& diagnostics) {
  return std::none_of(diagnostics.list().begin(), diagnostics.list().end(), [](const Diagnostic& diagnostic) {
    return diagnostic.problem == Problem::not_csv || diagnostic.problem == Problem::nul_byte;
  });
}

}  // namespace

bool ReadTable::complete() const {
  const auto is_broken = [](const CsvRow& row) { return row.broken; };
  return usable && std::find(in_error.begin(), in_error.end(), true) == in_error.end() &&
         std::none_of(csv.rows.begin(), csv.rows.end(), is_broken);
}

std::size_t ReadTable::place_of(std::string_view column) const {
  for (std::size_t i = 0; i < cell_of.size(); ++i) {
    if (table->columns[i].name == column) return cell_of[i];
  }
  return no_cell;
}

const CsvCell* ReadTable::cell(const CsvRow& row, std::string_view column) const {
  const std::size_t place = place_of(column);
  return place < row.cells.size() ? &row.cells[place] : nullptr;
}

std::string_view ReadTable::text(const CsvRow& row, std::string_view column) const {
  const CsvCell* found = cell(row, column);
  return found ? trimmed(found->text) : std::string_view();
}

std::string_view ReadTable::piece(const CsvCell& cell) const {
  return piece_of(source, cell);
}

std::string_view ReadTable::piece(const CsvRow& row, std::string_view column) const {
  if (const CsvCell* found = cell(row, column)) return piece(*found);
  return row.cells.empty() ? source.text.substr(0, 0) : piece(row.cells.front());
}

std::string ReadTable::key(const CsvRow& row, std::string_view empty) const {
  std::string key;
  for (std::size_t i = 0; i < table->key_columns; ++i) {
    const std::string_view cell = text(row, table->columns[i].name), part = cell.empty() ? empty : cell;
    if (!key.empty() && !part.empty()) key += ' ';
    key += part;
  }
  return key;
}

std::string ReadTable::exact_key(const CsvRow& row) const {
  std::string key;
  for (std::size_t i = 0; i < table->key_columns; ++i) {
    const Column& column = table->columns[i];
    const std::string_view part = text(row, column.name);
    key += (column.holds == Cell::choice ? normal_choice(part) : std::string(part)) + '\n';
  }
  return key;
}

ReadTable read_table(const Table& table, const Source& source, Diagnostics& diagnostics) {
  ReadTable read;
  read.table = &table;
  read.source = source;
  CsvRead csv = read_csv(source);
  read.csv = std::move(csv.table);
  read.in_error.resize(read.csv.rows.size());
  read.usable = is_text(csv.diagnostics) && !read.csv.header.broken;
  diagnostics.append(std::move(csv.diagnostics));
  if (read.usable && is_blank(read.csv.header)) {
    read.usable = false;
    diagnostics.add(diagnostic_about(
        source.name, {Problem::missing_column, "an empty first line", "the columns " + column_names(table)}));
  }
  if (read.usable) Header(read, diagnostics).match();
  return read;
}

bool is_blank(const CsvRow& row) {
  return std::all_of(row.cells.begin(), row.cells.end(),
                     [](const CsvCell& cell) { return trimmed(cell.text).empty(); });
}

std::string in_quotes(std::string_view text) {
  return "\"" + std::string(text) + "\"";
}

std::string normal_name(std::string_view header) {
  std::string name(trimmed(header));
  for (char& c : name) {
    if (c == ' ' || c == '-') c = '_';
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  }
  return name;
}

std::string normal_choice(std::string_view text) {
  std::string word = normal_name(text);
  std::replace(word.begin(), word.end(), '_', '-');
  return word;
}

const ReadTable* Complaints::table(std::string_view name) const {
  const auto at = std::find_if(tables_.begin(), tables_.end(),
                               [&](const ReadTable& read) { return read.table->name == name; });
  return at == tables_.end() ? nullptr : &*at;
}

bool Complaints::is_incomplete(std::string_view name) const {
  const ReadTable* read = table(name);
  return read && !read->complete();
}

const CsvRow* Complaints::row_of(const Provenance& from) const {
  const ReadTable* read = table(from.table);
  if (!read) return nullptr;
  const auto& rows = read->csv.rows;
  const auto row =
      std::lower_bound(rows.begin(), rows.end(), from.line,
                       [](const CsvRow& candidate, std::size_t line) { return candidate.line < line; });
  return row != rows.end() && row->line == from.line ? &*row : nullptr;
}

void Complaints::at(const Provenance& from, std::string_view column, Complaint complaint) {
  at_part(from, column, {}, std::move(complaint));
}

void Complaints::at_part(const Provenance& from, std::string_view column, std::string_view part,
                         Complaint complaint) {
  const CsvRow* row = row_of(from);
  if (!row) return;
  const ReadTable& read = *table(from.table);
  const std::string_view cell = read.piece(*row, column);
  const std::size_t place = part.empty() ? std::string_view::npos : cell.find(part);
  at_piece(read, place == std::string_view::npos ? cell : cell.substr(place, part.size()),
           std::move(complaint));
}

void Complaints::about_file(const ReadTable& table, Complaint complaint) {
  diagnostics_.add(diagnostic_about(table.source.name, std::move(complaint)));
}

void Complaints::at_piece(const ReadTable& table, std::string_view piece, Complaint complaint) {
  diagnostics_.complain(table.source, piece, std::move(complaint));
}

}  // namespace landdrill
