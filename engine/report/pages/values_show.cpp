// What a value set says, table by table.
#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <set>

#include "engine/report/figures.h"
#include "engine/report/page.h"
#include "engine/report/pages/asked.h"
#include "engine/report/pages/values.h"
#include "grammar/diagnostics.h"
#include "grammar/words.h"
#include "tables/columns.h"
#include "tables/csv.h"
#include "tables/load.h"
#include "tables/read_table.h"

namespace landdrill::report {
namespace {

// One table of a value set as it is written, and what its columns are about.
class ShownTable {
 public:
  ShownTable(const Table& table, const TableFile& file) : table_(table) {
    Diagnostics ignored;  // a set that is shown has been loaded, or its mistakes have been reported
    read_ = read_table(table, {file.file, file.text}, ignored);
    std::erase_if(read_.csv.rows, is_blank);
  }

  void add_keys(std::vector<std::string>& keys) const {
    for (const CsvRow& row : read_.csv.rows) keys.push_back(read_.key(row));
  }
  std::size_t gaps() const;
  // The table for people, and all of it for programs; `in_csv`: in CSV too.
  void put(PageParts& page, bool in_csv) const;
  // Only the row of this key; whether there is one.
  bool put_row(PageParts& page, std::string_view row_key) const;

 private:
  std::size_t column_count() const { return read_.csv.header.cells.size(); }
  std::string column_name(std::size_t i) const { return normal_name(read_.csv.header.cells[i].text); }
  const landdrill::Column* column(std::size_t i) const { return find_column(table_, column_name(i)); }
  PageColumn page_column(std::size_t i) const;
  PageTable empty_table() const;
  bool is_gap(const CsvRow& row, std::size_t i) const;
  std::string cell(const CsvRow& row, std::size_t i) const {
    return i < row.cells.size() ? row.cells[i].text : std::string();
  }
  std::string shown(const CsvRow& row, std::size_t i) const { return is_gap(row, i) ? "gap" : cell(row, i); }
  void add(PageTable& table, const CsvRow& row) const;
  void put_as_list(PageParts& page, const CsvRow& row) const;
  std::string told_once(PageTable& table) const;

  const Table& table_;
  ReadTable read_;
};

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

std::size_t ShownTable::gaps() const {
  std::size_t count = 0;
  for (const CsvRow& row : read_.csv.rows)
    for (std::size_t i = 0; i < column_count(); ++i) count += is_gap(row, i);
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
  for (const CsvRow& row : read_.csv.rows) add(table, row);
  if (table_.key_columns == 0) {
    for (const CsvRow& row : read_.csv.rows) put_as_list(page, row);
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
  for (const CsvRow& row : read_.csv.rows) {
    if (read_.key(row) != row_key) continue;
    add(table, row);
    put_as_list(page, row);
  }
  const bool there = !table.rows.empty();
  page.add(std::move(table), Seen::by_programs);
  return there;
}

// The tables of the set in reading order; only `wanted` when it is not empty.
std::vector<ShownTable> shown_tables(const TableFiles& files, std::string_view wanted) {
  std::vector<ShownTable> result;
  for (const Table& table : value_tables()) {
    if (!wanted.empty() && table.name != wanted) continue;
    const std::string name = std::string(table.name) + ".csv";
    for (const TableFile& file : files.files) {
      if (file.file == name) result.emplace_back(table, file);
    }
  }
  return result;
}

void put_tables(PageParts& page, const std::vector<ShownTable>& tables) {
  std::size_t gaps = 0;
  for (const ShownTable& table : tables) {
    table.put(page, &table == &tables.front());
    gaps += table.gaps();
  }
  if (gaps == 0) return;
  page.apart();
  page.say("Still to fill in: " + counted(gaps, "gap") + ".");
}

std::string hint_for(std::string_view typed, const std::vector<std::string>& known) {
  const std::vector<std::string_view> views(known.begin(), known.end());
  const std::string hint = words::nearest_hint(typed, views);
  if (!hint.empty()) return hint;
  return known.size() > 30 ? "without ROW it shows them all"
                           : fmt::format("there is {}", fmt::join(known, ", "));
}

std::string no_such_table(std::string_view typed) {
  std::vector<std::string> known;
  for (const Table& table : value_tables()) known.emplace_back(table.name);
  return with_hint(fmt::format("found \"{}\"; expected a table", typed), hint_for(typed, known));
}

}  // namespace

Answer values_show_page(const TableFiles& files, std::string_view table, std::string_view row) {
  if (!table.empty() && find_table(table) == nullptr) return tl::unexpected(no_such_table(table));
  const std::vector<ShownTable> tables = shown_tables(files, table);
  if (tables.empty()) return tl::unexpected(fmt::format("{} has no table {}", files.name, table));
  Page page("values show");
  page.fact("name", files.name);
  // Where the table of that name is not shown.
  if (!table.empty() && table != "set") page.fact("set", files.name);
  if (row.empty()) {
    page.say(files.name);
    put_tables(page, tables);
    return page;
  }
  bool there = false;
  for (const ShownTable& one : tables) there = one.put_row(page, row) || there;
  if (there) return page;
  return tl::unexpected(
      with_hint(fmt::format("found \"{}\"; expected a row of {} in {}", row, table, files.name),
                hint_for(row, row_keys(files, table))));
}

std::vector<std::string> row_keys(const TableFiles& files, std::string_view table) {
  std::vector<std::string> result;
  for (const ShownTable& shown : shown_tables(files, table)) shown.add_keys(result);
  return result;
}

}  // namespace landdrill::report
