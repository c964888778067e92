#include "tables/store/find_cell.h"

#include <fmt/format.h>

#include <cassert>

#include "grammar/diagnostics.h"
#include "grammar/words.h"
#include "tables/csv.h"
#include "tables/read_table.h"
#include "tables/store/refusal.h"

namespace landdrill::store {
namespace {

constexpr std::string_view csv_ending = ".csv";

std::string_view without_ending(std::string_view file) {
  if (file.ends_with(csv_ending)) file.remove_suffix(csv_ending.size());
  return file;
}

// The nearest of `known`; when none is near, all of them, if they are few.
std::string hint_for(std::string_view word, const std::vector<std::string>& known) {
  const std::vector<std::string_view> views(known.begin(), known.end());
  std::string hint = words::nearest_hint(word, views);
  if (hint.empty() && !known.empty() && known.size() <= 20)
    hint = fmt::format("there are {}", fmt::join(known, ", "));
  return hint;
}

const TableFile& file_of(const std::vector<TableFile>& files, const Edit& wish) {
  const std::string_view name = without_ending(wish.table);
  std::vector<std::string> known;
  for (const TableFile& file : files) {
    const std::string_view table = without_ending(file.file);
    if (find_table(table) == nullptr) continue;
    if (table == name) return file;
    known.emplace_back(table);
  }
  throw Refused({wish.set, fmt::format("it has no table \"{}\"", wish.table), hint_for(name, known)});
}

std::size_t column_of(const ReadTable& table, const Edit& wish) {
  const std::vector<CsvCell>& header = table.csv.header.cells;
  std::vector<std::string> known;
  for (std::size_t column = 0; column < header.size(); ++column) {
    const std::string name = normal_name(header[column].text);
    if (name.empty()) continue;
    if (name == normal_name(wish.column)) return column;
    known.push_back(name);
  }
  throw Refused({fmt::format("{} {}", wish.set, table.table->name),
                 fmt::format("it has no column \"{}\"", wish.column), hint_for(wish.column, known)});
}

std::string key_with_dashes(const ReadTable& table, const CsvRow& row) {
  std::string key;
  for (std::size_t i = 0; i < table.table->key_columns; ++i) {
    const std::string_view part = table.text(row, table.table->columns[i].name);
    if (i > 0) key += ' ';
    key += part.empty() ? "-" : part;
  }
  return key;
}

std::string known_keys_hint(const ReadTable& table, std::string_view key) {
  std::vector<std::string> known;
  for (const CsvRow& row : table.csv.rows) {
    if (!is_blank(row)) known.push_back(table.key(row));
  }
  return hint_for(key, known);
}

// The place of the row in table.csv.rows.
std::size_t named_row(const ReadTable& table, const Edit& wish) {
  std::vector<std::size_t> found;
  std::string choices;
  for (std::size_t i = 0; i < table.csv.rows.size(); ++i) {
    const CsvRow& row = table.csv.rows[i];
    if (is_blank(row)) continue;
    const std::string exact = key_with_dashes(table, row);
    if (exact == wish.key && !exact.empty()) return i;
    if (table.key(row) != wish.key) continue;
    found.push_back(i);
    choices += fmt::format("{}\"{}\"", choices.empty() ? "" : " or ", exact);
  }
  if (found.size() == 1) return found.front();
  const std::string what = fmt::format("{} {}", wish.set, table.table->name);
  if (found.size() > 1) {
    throw Refused({what, fmt::format("\"{}\" names {} rows", wish.key, found.size()), "write " + choices});
  }
  throw Refused({what, fmt::format("it has no row \"{}\"", wish.key), known_keys_hint(table, wish.key)});
}

}  // namespace

FoundCell find_cell(const std::vector<TableFile>& files, const Edit& wish) {
  const TableFile& file = file_of(files, wish);
  Diagnostics ignored;  // a set in the season file was loaded before it got there
  const ReadTable table = read_table(*find_table(without_ending(file.file)), {file.file, file.text}, ignored);
  const std::size_t row = named_row(table, wish);
  const std::size_t column = column_of(table, wish);
  const CsvRow& cells = table.csv.rows[row];
  assert(column < cells.cells.size());  // the loader wants a cell for each column that has a name
  const CsvCell& cell = cells.cells[column];
  return {{file.file, row + 1, column},
          std::string(table.table->name),
          table.key(cells),
          normal_name(table.csv.header.cells[column].text),
          cell.text,
          cell.raw,
          table.csv.separator};
}

}  // namespace landdrill::store
