#include "tables/fill.h"

#include <algorithm>
#include <map>

#include "tables/cells.h"
#include "tables/read_table.h"
#include "tables/value_list.h"

namespace landdrill {
namespace {

constexpr std::string_view parts_file = "parts.csv";

// parts.csv while it is being filled.
class PartsTable {
 public:
  PartsTable(const TableFiles& files, const TableFile& file, Diagnostics& diagnostics)
      : read_(read_table(*find_table("parts"), {files.place + file.file, file.text}, diagnostics)) {
    if (read_.usable) check_cells(read_, diagnostics);
    if (read_.usable && read_.place_of("value") == ReadTable::no_cell) complain_of_absent_values(diagnostics);
    if (!diagnostics.ok()) return;
    writes_decimal_comma_ = uses_decimal_comma();
    for (CsvRow& row : read_.csv.rows) {
      if (!is_blank(row)) rows_.emplace(read_.text(row, "code"), &row);
    }
  }
  PartsTable(const PartsTable&) = delete;
  PartsTable& operator=(const PartsTable&) = delete;

  std::vector<std::string_view> codes() const {
    std::vector<std::string_view> codes;
    for (const auto& [code, row] : rows_) codes.push_back(code);
    return codes;
  }
  std::string_view value_of(std::string_view code) const { return read_.text(row(code), "value"); }
  std::size_t line_of(std::string_view code) const { return row(code).line; }

  void put(std::string_view code, Decimal value, const FillWish& wish) {
    CsvRow& changed = row(code);
    std::string text = value.text();
    if (writes_decimal_comma_) std::replace(text.begin(), text.end(), '.', ',');
    put(changed, "value", text);
    put(changed, "source", wish.source);
    put(changed, "status", word_of(wish.status));
  }

  std::vector<std::string> without_value() const {
    std::vector<std::string> codes;
    for (const CsvRow& row : read_.csv.rows) {
      if (!is_blank(row) && read_.text(row, "value").empty()) codes.emplace_back(read_.text(row, "code"));
    }
    return codes;
  }

  std::string text() const { return write_csv(read_.csv); }

 private:
  CsvRow& row(std::string_view code) const { return *rows_.find(code)->second; }

  void put(CsvRow& row, std::string_view column, std::string_view text) {
    CsvCell& cell = *read_.cell(row, column);
    cell.text = text;
    cell.raw = csv_cell(text, read_.csv.separator);
  }

  bool uses_decimal_comma() const {
    const auto has_comma = [&](const CsvRow& row) {
      return read_.text(row, "value").find(',') != std::string_view::npos;
    };
    return read_.csv.separator != ',' && std::any_of(read_.csv.rows.begin(), read_.csv.rows.end(), has_comma);
  }

  void complain_of_absent_values(Diagnostics& diagnostics) {
    diagnostics.add(
        diagnostic_at(read_.source, read_.piece(read_.csv.header.cells.front()),
                      {Problem::missing_column, "no column \"value\"", "a column \"value\" to fill"}));
  }

  ReadTable read_;
  bool writes_decimal_comma_ = false;
  std::map<std::string, CsvRow*, std::less<>> rows_;
};

class Filling {
 public:
  Filling(PartsTable& parts, const Source& list, const FillWish& wish, Filled& filled)
      : parts_(parts), list_(list), wish_(wish), filled_(filled) {}

  void put(const ListedValue& listed) {
    const std::string_view before = parts_.value_of(listed.code);
    const auto number = Decimal::parse(before);
    if (number && *number == listed.value) return filled_.unchanged.emplace_back(listed.code), void();
    if (!before.empty() && !wish_.overwrite) return complain_of_other(listed, before);
    parts_.put(listed.code, listed.value, wish_);
    filled_.filled.emplace_back(listed.code);
  }

 private:
  void complain_of_other(const ListedValue& listed, std::string_view before) {
    if (!filled_.diagnostics.wants_more()) return filled_.diagnostics.count_only(Severity::error);
    const std::string code(listed.code);
    filled_.diagnostics.add(diagnostic_at(list_, listed.piece,
                                          {Problem::has_value, listed.value.text() + " for \"" + code + "\"",
                                           "its value " + std::string(before) + ", as in line " +
                                               std::to_string(parts_.line_of(code)) + " of parts.csv",
                                           "ask for overwriting if the list is right"}));
  }

  PartsTable& parts_;
  const Source& list_;
  const FillWish& wish_;
  Filled& filled_;
};

}  // namespace

Filled fill(const TableFiles& files, const Source& list, const FillWish& wish) {
  Filled filled;
  filled.files = files;
  const auto file = std::find_if(filled.files.files.begin(), filled.files.files.end(),
                                 [](const TableFile& candidate) { return candidate.file == parts_file; });
  if (file == filled.files.files.end()) {
    filled.diagnostics.add(diagnostic_about(
        files.place + std::string(parts_file),
        {Problem::missing_table, "no such file", "the parts whose values are to be filled in"}));
    return filled;
  }
  PartsTable parts(files, *file, filled.diagnostics);
  if (!filled.diagnostics.ok()) return filled;
  const auto missing_before = parts.without_value();
  const std::vector<std::string_view> codes = parts.codes();
  const std::vector<ListedValue> listed = read_value_list(list, codes, filled.diagnostics);
  Filling filling(parts, list, wish, filled);
  for (const ListedValue& value : listed) filling.put(value);
  if (filled.diagnostics.ok()) {
    file->text = parts.text();
    filled.still_missing = parts.without_value();
  } else {
    filled.filled.clear();
    filled.still_missing = missing_before;
  }
  return filled;
}

}  // namespace landdrill
