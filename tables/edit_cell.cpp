#include "tables/edit_cell.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cassert>

#include "grammar/diagnostics.h"
#include "grammar/words.h"
#include "tables/columns.h"
#include "tables/csv.h"
#include "tables/decimal.h"
#include "tables/read_table.h"

namespace landdrill {
namespace {

constexpr std::string_view csv_ending = ".csv";

std::string_view without_ending(std::string_view file) {
  if (file.ends_with(csv_ending)) file.remove_suffix(csv_ending.size());
  return file;
}

// The nearest of `known`; when none is near, all of them, if they are few.
std::string nearest_or_all(std::string_view word, const std::vector<std::string>& known) {
  const std::vector<std::string_view> views(known.begin(), known.end());
  std::string hint = words::nearest_hint(word, views);
  if (hint.empty() && !known.empty() && known.size() <= 20)
    hint = fmt::format("there are {}", fmt::join(known, ", "));
  return hint;
}

Result<const TableFile*> named_file(const std::vector<TableFile>& files, const Edit& wish) {
  const std::string_view name = without_ending(wish.table);
  std::vector<std::string> known;
  for (const TableFile& file : files) {
    const std::string_view table = without_ending(file.file);
    if (find_table(table) == nullptr) continue;
    if (table == name) return &file;
    known.emplace_back(table);
  }
  return tl::unexpected(
      Trouble{wish.set, fmt::format("it has no table \"{}\"", wish.table), nearest_or_all(name, known)});
}

Result<std::size_t> place_of_column(const ReadTable& table, const Edit& wish) {
  const std::vector<CsvCell>& header = table.csv.header.cells;
  std::vector<std::string> known;
  for (std::size_t column = 0; column < header.size(); ++column) {
    const std::string name = normal_name(header[column].text);
    if (name.empty()) continue;
    if (name == normal_name(wish.column)) return column;
    known.push_back(name);
  }
  return tl::unexpected(Trouble{fmt::format("{} {}", wish.set, table.table->name),
                                fmt::format("it has no column \"{}\"", wish.column),
                                nearest_or_all(wish.column, known)});
}

std::string known_keys_hint(const ReadTable& table, std::string_view key) {
  std::vector<std::string> known;
  for (const CsvRow& row : table.csv.rows) {
    if (!is_blank(row)) known.push_back(table.key(row));
  }
  return nearest_or_all(key, known);
}

// The place of the row in table.csv.rows.
Result<std::size_t> named_row(const ReadTable& table, const Edit& wish) {
  std::vector<std::size_t> found;
  std::string choices;
  for (std::size_t i = 0; i < table.csv.rows.size(); ++i) {
    const CsvRow& row = table.csv.rows[i];
    if (is_blank(row)) continue;
    const std::string exact = table.key(row, "-");
    if (exact == wish.key && !exact.empty()) return i;
    if (table.key(row) != wish.key) continue;
    found.push_back(i);
    choices += fmt::format("{}\"{}\"", choices.empty() ? "" : " or ", exact);
  }
  if (found.size() == 1) return found.front();
  const std::string what = fmt::format("{} {}", wish.set, table.table->name);
  if (found.size() > 1) {
    return tl::unexpected(
        Trouble{what, fmt::format("\"{}\" names {} rows", wish.key, found.size()), "write " + choices});
  }
  return tl::unexpected(
      Trouble{what, fmt::format("it has no row \"{}\"", wish.key), known_keys_hint(table, wish.key)});
}

}  // namespace

Result<FoundCell> find_cell(const std::vector<TableFile>& files, const Edit& wish) {
  const auto found = named_file(files, wish);
  if (!found) return tl::unexpected(found.error());
  const TableFile& file = **found;
  Diagnostics ignored;  // the set was loaded before
  const ReadTable table = read_table(*find_table(without_ending(file.file)), {file.file, file.text}, ignored);
  const auto row = named_row(table, wish);
  if (!row) return tl::unexpected(row.error());
  const auto column = place_of_column(table, wish);
  if (!column) return tl::unexpected(column.error());
  const CsvRow& cells = table.csv.rows[*row];
  assert(*column < cells.cells.size());  // the loader wants a cell for each column that has a name
  const CsvCell& cell = cells.cells[*column];
  return FoundCell{{file.file, *row + 1, *column},
                   std::string(table.table->name),
                   table.key(cells),
                   normal_name(table.csv.header.cells[*column].text),
                   cell.text,
                   cell.raw,
                   table.csv.separator};
}

namespace {

constexpr std::string_view with_another = "goes with the change of ";

// Whether the cell states a fact that a source vouches for.
bool states_fact(const Column* column) {
  if (column == nullptr || column->name == "status") return false;
  return column->holds == Cell::number || column->holds == Cell::whole || column->holds == Cell::formula ||
         column->holds == Cell::choice;
}

// A decimal comma is written as a point, as everywhere else in the tables.
std::string tidy_value(const Column* column, std::string value) {
  if (column != nullptr && column->holds == Cell::number && Decimal::parse(value))
    std::replace(value.begin(), value.end(), ',', '.');
  return value;
}

// The edits that belong together, the wished one last.
std::vector<Edit> change_of(const FoundCell& cell, const Edit& wish, const Origin& origin) {
  const Column* column = find_column(*find_table(cell.table), cell.column);
  Edit main = wish;
  main.value = tidy_value(column, wish.value);
  std::vector<Edit> edits;
  if (main.value == cell.text) return edits;
  const auto add = [&](std::string_view name, std::string value) {
    edits.push_back({wish.set, wish.table, wish.key, std::string(name), std::move(value),
                     std::string(with_another) + cell.column});
  };
  const std::string before = cell.text.empty() ? "nothing" : cell.text;
  const std::string reason = wish.why.empty() ? "" : ": " + wish.why;
  if (!origin.source.empty() || states_fact(column))
    add("source", origin.source.empty()
                      ? fmt::format("typed in, {} was {} before{}", cell.column, before, reason)
                      : origin.source);
  if (!origin.status.empty() || states_fact(column))
    add("status", origin.status.empty() ? "memory" : origin.status);
  edits.push_back(std::move(main));
  return edits;
}

// Every other byte stays.
void put_value(std::vector<TableFile>& files, const FoundCell& cell, const std::string& value) {
  for (TableFile& file : files) {
    if (file.file != cell.place.file) continue;
    CsvTable csv = read_csv({file.file, file.text}).table;
    csv.rows[cell.place.row - 1].cells[cell.place.column] = {value, csv_cell(value, csv.separator), 0};
    file.text = write_csv(csv);
  }
}

}  // namespace

Result<EditedSet> edit_cell(TableFiles files, const Edit& wish, const Origin& origin) {
  const auto wished = find_cell(files.files, wish);
  if (!wished) return tl::unexpected(wished.error());
  EditedSet edited{std::move(files), {wished->table, wish.key, RowChange::What::changed, {}}, {}};
  edited.edits = change_of(*wished, wish, origin);
  std::vector<CellChange>& cells = edited.change.cells;
  if (edited.edits.empty()) cells.push_back({wished->column, wished->text, wished->text});
  for (const Edit& edit : edited.edits) {
    const auto cell = find_cell(edited.files.files, edit);
    if (!cell) return tl::unexpected(cell.error());
    put_value(edited.files.files, *cell, edit.value);
    cells.push_back({cell->column, cell->text, edit.value});
  }
  std::rotate(cells.begin(), cells.end() - 1, cells.end());
  return edited;
}

bool goes_with_another(std::string_view why) {
  return why.starts_with(with_another);
}

}  // namespace landdrill
