#include "engine/report/pages/shown_table.h"

#include <algorithm>
#include <set>

#include "grammar/diagnostics.h"
#include "tables/columns.h"
#include "tables/csv.h"

namespace landdrill::report {

ShownTable::ShownTable(const Table& table, const TableFile& file) : table_(table) {
  Diagnostics ignored;  // a set that is shown has been loaded, or its mistakes have been reported
  read_ = read_table(table, {file.file, file.text}, ignored);
}

PageColumn ShownTable::page_column(std::size_t i) const {
  const landdrill::Column* known = column(i);
  const bool number = known != nullptr && (known->holds == Cell::number || known->holds == Cell::whole);
  const bool wraps = known == nullptr || known->holds == Cell::text || known->holds == Cell::codes ||
                     known->holds == Cell::formula;
  std::string heading = column_name(i);
  std::replace(heading.begin(), heading.end(), '_', ' ');
  return {column_name(i), std::move(heading), number ? Align::amount : Align::words,
          wraps ? Wraps::yes : Wraps::no};
}

PageTable ShownTable::empty_table() const {
  PageTable table(std::string(table_.name), {});
  for (std::size_t i = 0; i < column_count(); ++i) table.columns.push_back(page_column(i));
  table.keys = std::min(std::max<std::size_t>(1, table_.key_columns), column_count());
  return table;
}

bool ShownTable::is_gap(const CsvRow& row, std::size_t i) const {
  const landdrill::Column* known = column(i);
  return known != nullptr && known->gap && cell(row, i).find_first_not_of(" \t") == std::string::npos;
}

std::vector<std::string> ShownTable::keys() const {
  std::vector<std::string> result;
  each_row([&](const CsvRow& row) { result.push_back(read_.key(row)); });
  return result;
}

std::size_t ShownTable::gaps() const {
  std::size_t count = 0;
  each_row([&](const CsvRow& row) {
    for (std::size_t i = 0; i < column_count(); ++i) count += is_gap(row, i);
  });
  return count;
}

void ShownTable::add(PageTable& table, const CsvRow& row) const {
  std::vector<Entry> cells;
  for (std::size_t i = 0; i < column_count(); ++i) cells.push_back({shown(row, i), cell(row, i)});
  table.add(std::move(cells));
}

// What is the same in every row is said once, what is empty in every row not at all: so that wide tables fit
// a page. Leaves these columns to programs.
std::string ShownTable::told_once(PageTable& table) const {
  std::string everywhere;
  if (table.rows.size() < 2) return everywhere;
  for (std::size_t i = 0; i < column_count(); ++i) {
    std::set<std::string> values;
    for (const PageRow& row : table.rows) values.insert(row.cells[i].text);
    if (values.size() > 1) continue;
    if (!values.begin()->empty())
      everywhere += (everywhere.empty() ? "" : "; ") + column_name(i) + " " + *values.begin();
    table.columns[i].seen = Seen::by_programs;
    if (i < table.keys && table.keys > 1) --table.keys;
  }
  return everywhere;
}

void ShownTable::put(PageParts& page, bool in_csv) const {
  PageTable table = empty_table();
  table.in_csv = in_csv;
  each_row([&](const CsvRow& row) { add(table, row); });
  if (table_.key_columns == 0) {
    each_row([&](const CsvRow& row) { put_as_list(page, row); });
    return page.add(std::move(table), Seen::by_programs);
  }
  page.apart();
  page.say(std::string(table_.name) + ".csv: " + std::string(table_.meaning));
  if (table.rows.empty()) page.say("no rows");
  if (const std::string everywhere = told_once(table); !everywhere.empty())
    page.say("in every row: ", everywhere);
  page.apart();
  page.add(std::move(table));
}

// From top to bottom, with what each column means.
void ShownTable::put_as_list(PageParts& page, const CsvRow& row) const {
  std::string place = std::string(table_.name) + ".csv line " + std::to_string(row.line);
  if (table_.key_columns > 0) place += ": " + read_.key(row);
  page.apart();
  page.say(place);
  PageTable list(
      "",
      {{"", "column"}, {"", "value", Align::words, Wraps::yes}, {"", "meaning", Align::words, Wraps::yes}});
  for (std::size_t i = 0; i < column_count(); ++i) {
    const std::string value = shown(row, i);
    list.add({column_name(i), value.empty() ? "-" : value,
              column(i) == nullptr ? std::string_view() : column(i)->meaning});
  }
  page.apart();
  page.add(std::move(list), Seen::by_people);
}

bool ShownTable::put_row(PageParts& page, std::string_view row_key) const {
  PageTable table = empty_table();
  table.in_csv = true;
  each_row([&](const CsvRow& row) {
    if (read_.key(row) != row_key) return;
    add(table, row);
    put_as_list(page, row);
  });
  const bool there = !table.rows.empty();
  page.add(std::move(table), Seen::by_programs);
  return there;
}

}  // namespace landdrill::report
