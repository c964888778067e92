#include <algorithm>
#include <map>

#include "grammar/diagnostics.h"
#include "tables/columns.h"
#include "tables/csv.h"
#include "tables/decimal.h"
#include "tables/edit_cell.h"
#include "tables/load.h"
#include "tables/read_table.h"

namespace landdrill {
namespace {

using What = RowChange::What;

std::optional<ReadTable> table_of(const TableFiles& files, const Table& table) {
  const TableFile* file = files.find(file_of(table));
  if (file == nullptr) return std::nullopt;
  Diagnostics ignored;
  return read_table(table, {file->file, file->text}, ignored);
}

// In the order of the file. A key that stands in a table several times is met several times.
using RowKey = std::pair<std::string, int>;
using KeyedRows = std::vector<std::pair<RowKey, const CsvRow*>>;

KeyedRows keyed(const std::optional<ReadTable>& read) {
  KeyedRows rows;
  if (!read) return rows;
  std::map<std::string, int> times;
  for (const CsvRow& row : read->csv.rows) {
    if (is_blank(row)) continue;
    const std::string key = read->exact_key(row);
    rows.push_back({{key, times[key]++}, &row});
  }
  return rows;
}

bool means_number(const Table& table, std::string_view column) {
  const Column* known = find_column(table, column);
  return known && (known->holds == Cell::number || known->holds == Cell::whole);
}

bool same(const Table& table, std::string_view column, std::string_view before, std::string_view after) {
  if (before == after) return true;
  if (!means_number(table, column)) return false;
  const auto first = Decimal::parse(before), second = Decimal::parse(after);
  return first && second && *first == *second;
}

// A column of either file: its name and where it stands in a row before and after.
struct ComparedColumn {
  std::string name;
  std::size_t before, after;
};

std::size_t place_of(const ReadTable& read, std::string_view column) {
  const auto& cells = read.csv.header.cells;
  const auto at = std::find_if(cells.begin(), cells.end(),
                               [&](const CsvCell& cell) { return normal_name(cell.text) == column; });
  return at == cells.end() ? ReadTable::no_cell : static_cast<std::size_t>(at - cells.begin());
}

// The columns that the table knows, then those that the two files have besides.
std::vector<ComparedColumn> columns_of(const ReadTable& before, const ReadTable& after) {
  std::vector<ComparedColumn> columns;
  const auto add = [&](std::string name) {
    const auto known = [&](const ComparedColumn& column) { return column.name == name; };
    if (name.empty() || std::any_of(columns.begin(), columns.end(), known)) return;
    columns.push_back({name, place_of(before, name), place_of(after, name)});
  };
  for (const Column& column : before.table->columns) add(std::string(column.name));
  for (const ReadTable* read : {&before, &after}) {
    for (const CsvCell& cell : read->csv.header.cells) add(normal_name(cell.text));
  }
  return columns;
}

class TableComparison {
 public:
  TableComparison(const Table& table, const TableFiles& before, const TableFiles& after)
      : table_(table), before_(table_of(before, table)), after_(table_of(after, table)) {
    if (before_ && after_) columns_ = columns_of(*before_, *after_);
  }

  void add_to(std::vector<RowChange>& changes) const {
    const KeyedRows before = keyed(before_), after = keyed(after_);
    const std::map<RowKey, const CsvRow*> old_rows(before.begin(), before.end()),
        new_rows(after.begin(), after.end());
    for (const auto& [key, row] : before) {
      const auto other = new_rows.find(key);
      if (other == new_rows.end()) {
        changes.push_back(change(*before_, *row, What::gone));
      } else if (auto cells = changed_cells(*row, *other->second); !cells.empty()) {
        changes.push_back(change(*before_, *row, What::changed));
        changes.back().cells = std::move(cells);
      }
    }
    for (const auto& [key, row] : after)
      if (!old_rows.contains(key)) changes.push_back(change(*after_, *row, What::added));
  }

 private:
  RowChange change(const ReadTable& read, const CsvRow& row, What what) const {
    return {std::string(table_.name), read.key(row), what, {}};
  }

  std::vector<CellChange> changed_cells(const CsvRow& before, const CsvRow& after) const {
    std::vector<CellChange> cells;
    for (const ComparedColumn& column : columns_) {
      const std::string_view first = text_at(before, column.before), second = text_at(after, column.after);
      if (!same(table_, column.name, first, second))
        cells.push_back({column.name, std::string(first), std::string(second)});
    }
    return cells;
  }

  const Table& table_;
  std::optional<ReadTable> before_, after_;
  std::vector<ComparedColumn> columns_;
};

}  // namespace

SetComparison compare_sets(const TableFiles& before, const TableFiles& after) {
  SetComparison comparison;
  for (const Table& table : value_tables()) TableComparison(table, before, after).add_to(comparison.rows);
  return comparison;
}

}  // namespace landdrill
