#include <algorithm>
#include <set>

#include "engine/report/listing.h"
#include "engine/report/values.h"
#include "engine/report/width.h"
#include "tables/read_table.h"

namespace landdrill::report {
namespace {

// One table of the set as it is written, and what its columns are about.
class ShownTable {
 public:
  ShownTable(const Table& table, const TableFile& file) : table_(table) {
    Diagnostics ignored;  // a set that is shown has been loaded, or its mistakes have been reported
    read_ = read_table(table, {file.file, file.text}, ignored);
  }
  const Table& table() const { return table_; }
  std::vector<std::string> keys() const;
  Listing listing(std::string_view row_key) const;
  std::size_t gaps() const;
  std::string text(const TextWish& wish) const;
  std::string row_text(std::string_view row_key, const TextWish& wish) const;

 private:
  std::size_t column_count() const { return read_.csv.header.cells.size(); }
  std::string column_name(std::size_t i) const { return normal_name(read_.csv.header.cells[i].text); }
  const landdrill::Column* column(std::size_t i) const { return find_column(table_, column_name(i)); }
  GridColumn heading(std::size_t i) const;
  bool is_gap(const CsvRow& row, std::size_t i) const;
  std::string cell(const CsvRow& row, std::size_t i) const {
    return i < row.cells.size() ? row.cells[i].text : std::string();
  }
  std::string shown(const CsvRow& row, std::size_t i) const { return is_gap(row, i) ? "gap" : cell(row, i); }
  template <class Use>
  void each_row(const Use& use) const {
    for (const CsvRow& row : read_.csv.rows) {
      if (!is_blank(row)) use(row);
    }
  }

  const Table& table_;
  ReadTable read_;
};

GridColumn ShownTable::heading(std::size_t i) const {
  const landdrill::Column* known = column(i);
  const bool number = known != nullptr && (known->holds == Cell::number || known->holds == Cell::whole);
  const bool wraps = known == nullptr || known->holds == Cell::text || known->holds == Cell::codes ||
                     known->holds == Cell::formula;
  return {column_name(i), number ? Align::amount : Align::words, wraps};
}

bool ShownTable::is_gap(const CsvRow& row, std::size_t i) const {
  const landdrill::Column* known = column(i);
  return known != nullptr && known->meaning.ends_with("a gap to fill in") &&
         cell(row, i).find_first_not_of(" \t") == std::string::npos;
}

std::vector<std::string> ShownTable::keys() const {
  std::vector<std::string> result;
  each_row([&](const CsvRow& row) { result.push_back(read_.key(row)); });
  return result;
}

// For CSV and JSON: every column; `row_key` empty: every row.
Listing ShownTable::listing(std::string_view row_key) const {
  Listing result{std::string(table_.name), {}, {}, std::max<std::size_t>(1, table_.key_columns)};
  for (std::size_t i = 0; i < column_count(); ++i) result.columns.push_back(heading(i));
  each_row([&](const CsvRow& row) {
    if (!row_key.empty() && read_.key(row) != row_key) return;
    result.rows.emplace_back();
    for (std::size_t i = 0; i < column_count(); ++i) result.rows.back().push_back(cell(row, i));
  });
  return result;
}

std::size_t ShownTable::gaps() const {
  std::size_t count = 0;
  each_row([&](const CsvRow& row) {
    for (std::size_t i = 0; i < column_count(); ++i) count += is_gap(row, i);
  });
  return count;
}

// What is the same in every row is said once, what is empty in every row not at all: so that wide tables fit
// a page.
std::string ShownTable::text(const TextWish& wish) const {
  if (table_.key_columns == 0) return row_text("", wish);
  Listing listing{std::string(table_.name), {}, {}, std::max<std::size_t>(1, table_.key_columns)};
  std::string everywhere;
  std::vector<std::size_t> columns;
  for (std::size_t i = 0; i < column_count(); ++i) {
    std::set<std::string> values;
    each_row([&](const CsvRow& row) { values.insert(shown(row, i)); });
    const bool same = values.size() == 1 && keys().size() > 1;
    if (same && !values.begin()->empty())
      everywhere += (everywhere.empty() ? "" : "; ") + column_name(i) + " " + *values.begin();
    if (!same) columns.push_back(i);
    if (same && i < listing.keys && listing.keys > 1) --listing.keys;
  }
  for (const std::size_t i : columns) listing.columns.push_back(heading(i));
  each_row([&](const CsvRow& row) {
    listing.rows.emplace_back();
    for (const std::size_t i : columns) listing.rows.back().push_back(shown(row, i));
  });
  std::string result =
      paragraph("", std::string(table_.name) + ".csv: " + std::string(table_.meaning), wish.width);
  if (listing.rows.empty()) return result + "no rows\n";
  if (!everywhere.empty()) result += paragraph("in every row: ", plain(everywhere), wish.width);
  return result + "\n" + as_text(listing, wish);
}

// One row from top to bottom, with what each column means.
std::string ShownTable::row_text(std::string_view row_key, const TextWish& wish) const {
  std::string result;
  each_row([&](const CsvRow& row) {
    if (read_.key(row) != row_key) return;
    Grid grid({{"column"}, {"value", Align::words, true}, {"meaning", Align::words, true}});
    for (std::size_t i = 0; i < column_count(); ++i) {
      const std::string value = shown(row, i);
      grid.add({column_name(i), value.empty() ? "-" : value,
                column(i) == nullptr ? "" : std::string(column(i)->meaning)});
    }
    std::string place = std::string(table_.name) + ".csv line " + std::to_string(row.line);
    if (!row_key.empty()) place += ": " + std::string(row_key);
    result += (result.empty() ? "" : "\n") + paragraph("", plain(place), wish.width) + "\n" +
              grid.text(wish.width, wish.colour);
  });
  return result;
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

std::string set_text(const TableFiles& files, const std::vector<ShownTable>& tables, const TextWish& wish) {
  std::string result = paragraph("", plain(files.name), wish.width);
  std::size_t gaps = 0;
  for (const ShownTable& table : tables) {
    result += "\n" + table.text(wish);
    gaps += table.gaps();
  }
  if (gaps == 0) return result;
  return result + "\n" +
         paragraph("", "Still to fill in: " + std::to_string(gaps) + (gaps == 1 ? " gap." : " gaps."),
                   wish.width);
}

}  // namespace

std::string show_set(const TableFiles& files, const ShowWish& show, Format format, const TextWish& asked) {
  TextWish wish = asked;
  wish.width = std::max(60, wish.width);
  const std::vector<ShownTable> tables = shown_tables(files, show.table);
  if (tables.empty()) return "";
  std::vector<Listing> listings;
  for (const ShownTable& table : tables) listings.push_back(table.listing(show.row));
  const auto empty = [](const Listing& listing) { return listing.rows.empty(); };
  if (!show.row.empty() && std::all_of(listings.begin(), listings.end(), empty)) return "";
  if (format == Format::csv) return as_csv(listings.front());
  if (format == Format::json) return as_json({{"set", files.name}}, listings);
  if (show.row.empty()) return set_text(files, tables, wish);
  std::string result;
  for (const ShownTable& table : tables) result += table.row_text(show.row, wish);
  return result;
}

std::vector<std::string> row_keys(const TableFiles& files, std::string_view table) {
  std::vector<std::string> result;
  for (const ShownTable& shown : shown_tables(files, table)) {
    for (std::string& key : shown.keys()) result.push_back(std::move(key));
  }
  return result;
}

}  // namespace landdrill::report
