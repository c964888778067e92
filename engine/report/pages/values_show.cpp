#include "engine/report/pages/values_show.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "engine/report/page.h"
#include "engine/report/pages/shown_table.h"
#include "grammar/words.h"
#include "tables/columns.h"

namespace landdrill::report {
namespace {

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
  page.say("Still to fill in: " + std::to_string(gaps) + (gaps == 1 ? " gap." : " gaps."));
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
  for (const ShownTable& shown : shown_tables(files, table)) {
    for (std::string& key : shown.keys()) result.push_back(std::move(key));
  }
  return result;
}

}  // namespace landdrill::report
