#include <algorithm>

#include "engine/report/page.h"
#include "engine/report/render.h"
#include "engine/report/width.h"
#include "tables/csv.h"
#include "tables/decimal.h"

namespace landdrill::report {
namespace {

// A spreadsheet would work these out instead of showing them.
bool looks_like_formula(std::string_view text) {
  return !text.empty() && std::string_view("=+-@\t\r").find(text.front()) != std::string_view::npos &&
         !Decimal::parse(text);
}

std::string entry_text(const Datum& datum);

struct EntryText {
  std::string operator()(std::monostate) const { return ""; }
  std::string operator()(bool truth) const { return truth ? "yes" : ""; }
  std::string operator()(std::int64_t number) const { return std::to_string(number); }
  std::string operator()(const std::string& text) const { return text; }
  std::string operator()(const Record&) const { return ""; }
  std::string operator()(const Data& list) const {
    std::string text;
    for (const Datum& one : list) text += (text.empty() ? "" : "; ") + entry_text(one);
    return text;
  }
};

std::string entry_text(const Datum& datum) {
  return std::visit(EntryText{}, datum.is);
}

const std::string& csv_name(const PageColumn& column) {
  return column.csv.empty() ? column.key : column.csv;
}

// The rows of all tables below one another; `around`: the facts of the sections that a table stands in.
class CsvRows {
 public:
  explicit CsvRows(std::vector<std::string> columns) : columns_(std::move(columns)) {}

  void add(const PageParts& parts, Facts around) {
    for (const PagePart& part : parts.all())
      if (const auto* fact = std::get_if<Fact>(&part.what)) around.emplace_back(fact->key, fact->cell);
    for (const PagePart& part : parts.all()) {
      if (const auto* section = std::get_if<Section>(&part.what)) add(section->inside, around);
      if (const auto* table = std::get_if<PageTable>(&part.what); table != nullptr && table->in_csv)
        for (const PageRow& row : table->rows)
          if (is_for_programs(row.seen)) add(*table, row, around);
    }
  }
  std::string text() && { return std::move(text_); }

 private:
  void add(const PageTable& table, const PageRow& row, const Facts& around) {
    std::vector<std::string> cells(columns_.size());
    const auto put = [&](std::string_view key, const Entry& cell) {
      const auto at = std::find(columns_.begin(), columns_.end(), key);
      if (at != columns_.end())
        cells[static_cast<std::size_t>(at - columns_.begin())] = entry_text(cell.data());
    };
    for (const auto& [key, cell] : around) put(key, cell);
    for (const auto& [key, cell] : table.given) put(key, cell);
    for (std::size_t i = 0; i < table.columns.size(); ++i)
      if (is_for_programs(table.columns[i].seen)) put(csv_name(table.columns[i]), row.cells[i]);
    text_ += csv_row({cells.begin(), cells.end()});
  }

  std::vector<std::string> columns_;
  std::string text_;
};

const PageTable* only_table(const PageParts& parts) {
  for (const PagePart& part : parts.all()) {
    if (const auto* table = std::get_if<PageTable>(&part.what); table != nullptr && table->in_csv)
      return table;
    if (const auto* section = std::get_if<Section>(&part.what))
      if (const PageTable* table = only_table(section->inside)) return table;
  }
  return nullptr;
}

std::vector<std::string> columns_of(const Page& page) {
  if (!page.csv.empty()) return page.csv;
  std::vector<std::string> columns;
  if (const PageTable* table = only_table(page))
    for (const PageColumn& column : table->columns)
      if (!csv_name(column).empty() && is_for_programs(column.seen)) columns.push_back(csv_name(column));
  return columns;
}

}  // namespace

std::string csv_row(const std::vector<std::string_view>& texts) {
  std::string result;
  for (std::size_t i = 0; i < texts.size(); ++i) {
    const std::string guard = looks_like_formula(texts[i]) ? "'" : "";
    result += (i > 0 ? "," : "") + csv_cell(plain(guard + std::string(texts[i])), ',');
  }
  return result + "\n";
}

std::string csv_header(const Page& page) {
  const std::vector<std::string> columns = columns_of(page);
  return csv_row({columns.begin(), columns.end()});
}

std::string csv_rows(const Page& page) {
  CsvRows rows(columns_of(page));
  rows.add(page, {});
  return std::move(rows).text();
}

std::string render_csv(const Page& page) {
  return csv_header(page) + csv_rows(page);
}

}  // namespace landdrill::report
