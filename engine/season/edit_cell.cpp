#include "engine/season/edit_cell.h"

#include <fmt/format.h>

#include <algorithm>

#include "tables/columns.h"
#include "tables/csv.h"
#include "tables/decimal.h"
#include "tables/load.h"
#include "tables/store/find_cell.h"
#include "tables/store/refusal.h"

namespace landdrill {
namespace {

constexpr std::string_view with_another = "goes with the change of ";

Result<store::FoundCell> found(const std::vector<TableFile>& files, const Edit& wish) {
  try {
    return store::find_cell(files, wish);
  } catch (const store::Refused& refused) {
    return tl::unexpected(refused.trouble);
  }
}

const Column* column_of(const store::FoundCell& cell) {
  const Table* table = find_table(cell.table);
  return table == nullptr ? nullptr : find_column(*table, cell.column);
}

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

}  // namespace

Result<std::vector<Edit>> change_of(const Edit& wish, const TableFiles& files, const Origin& origin) {
  const auto cell = found(files.files, wish);
  if (!cell) return tl::unexpected(cell.error());
  const Column* column = column_of(*cell);
  Edit main = wish;
  main.value = tidy_value(column, wish.value);
  std::vector<Edit> edits;
  if (main.value == cell->text) return edits;
  Edit beside = wish;
  beside.why = std::string(with_another) + cell->column;
  const auto add = [&](std::string_view name, std::string value) {
    beside.column = name;
    beside.value = std::move(value);
    edits.push_back(beside);
  };
  const std::string before = cell->text.empty() ? "nothing" : cell->text;
  const std::string reason = wish.why.empty() ? "" : ": " + wish.why;
  if (!origin.source.empty() || states_fact(column))
    add("source", origin.source.empty()
                      ? fmt::format("typed in, {} was {} before{}", cell->column, before, reason)
                      : origin.source);
  if (!origin.status.empty() || states_fact(column))
    add("status", origin.status.empty() ? "memory" : origin.status);
  edits.push_back(std::move(main));
  return edits;
}

bool goes_with_another(const EditRecord& record) {
  return record.why.starts_with(with_another);
}

Result<std::string> change_cell(TableFiles& files, const Edit& edit) {
  const auto cell = found(files.files, edit);
  if (!cell) return tl::unexpected(cell.error());
  for (TableFile& file : files.files) {
    if (file.file != cell->place.file) continue;
    CsvTable csv = read_csv({file.file, file.text}).table;
    CsvRow& row = csv.rows[cell->place.row - 1];
    if (row.cells.size() <= cell->place.column) row.cells.resize(cell->place.column + 1);
    row.cells[cell->place.column] = {edit.value, csv_cell(edit.value, csv.separator), 0};
    file.text = write_csv(csv);
  }
  return cell->text;
}

}  // namespace landdrill
