// One table of a value set as it is written, and what its columns are about.
//
//   ShownTable parts(*find_table("parts"), files.files[0]);   parts.put(page, in_csv);
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/report/page.h"
#include "tables/columns.h"
#include "tables/csv.h"
#include "tables/load.h"
#include "tables/read_table.h"

namespace landdrill::report {

class ShownTable {
 public:
  ShownTable(const Table& table, const TableFile& file);
  std::vector<std::string> keys() const;
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
  template <class Use>
  void each_row(const Use& use) const {
    for (const CsvRow& row : read_.csv.rows) {
      if (!is_blank(row)) use(row);
    }
  }

  const Table& table_;
  ReadTable read_;
};

}  // namespace landdrill::report
