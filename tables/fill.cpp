#include "tables/fill.h"

#include <algorithm>
#include <map>

#include "grammar/problem_code.h"
#include "grammar/span.h"
#include "grammar/words.h"
#include "tables/csv.h"
#include "tables/decimal.h"
#include "tables/problems.h"
#include "tables/read_table.h"

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
    for (std::size_t i = 0; i < read_.csv.rows.size(); ++i) {
      const CsvRow& row = read_.csv.rows[i];
      if (!is_blank(row)) rows_.emplace(read_.text(row, "code"), i);
    }
  }
  PartsTable(const PartsTable&) = delete;
  PartsTable& operator=(const PartsTable&) = delete;

  std::vector<std::string_view> codes() const {
    std::vector<std::string_view> codes;
    for (const auto& [code, row] : rows_) codes.push_back(code);
    return codes;
  }
  // A row at the end of the table, still without a value.
  void add(const ListedValue& listed, std::string_view family) {
    CsvTable& csv = read_.csv;
    const std::string ending = csv.header.ending.empty() ? "\n" : csv.header.ending;
    CsvRow& last = csv.rows.empty() ? csv.header : csv.rows.back();
    if (last.ending.empty()) last.ending = ending;
    CsvRow& row = csv.rows.emplace_back();
    row.ending = ending;
    row.cells.resize(csv.header.cells.size());
    put(row, "code", listed.code);
    put(row, "family", family);
    put(row, "title", listed.title);
    rows_.emplace(listed.code, csv.rows.size() - 1);
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
  const CsvRow& row(std::string_view code) const { return read_.csv.rows[rows_.find(code)->second]; }
  CsvRow& row(std::string_view code) { return read_.csv.rows[rows_.find(code)->second]; }

  // A column that the file does not have, such as that of titles, takes nothing.
  void put(CsvRow& row, std::string_view column, std::string_view text) {
    const std::size_t place = read_.place_of(column);
    if (place >= row.cells.size()) return;
    row.cells[place].text = text;
    row.cells[place].raw = csv_cell(text, read_.csv.separator);
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
  std::map<std::string, std::size_t, std::less<>> rows_;  // code -> place of its row
};

class Filling {
 public:
  Filling(PartsTable& parts, const Source& list, const FillWish& wish, Filled& filled)
      : parts_(parts), list_(list), wish_(wish), filled_(filled) {}

  void put(const ListedValue& listed) {
    if (listed.is_new) return add(listed);
    const std::string_view before = parts_.value_of(listed.code);
    const auto number = Decimal::parse(before);
    if (number && *number == listed.value) return filled_.unchanged.emplace_back(listed.code), void();
    if (!before.empty() && !wish_.overwrite) return complain_of_other(listed, before);
    parts_.put(listed.code, listed.value, wish_);
    filled_.filled.emplace_back(listed.code);
  }

 private:
  void add(const ListedValue& listed) {
    parts_.add(listed, wish_.family);
    parts_.put(listed.code, listed.value, wish_);
    filled_.added.emplace_back(listed.code);
  }

  void complain_of_other(const ListedValue& listed, std::string_view before) {
    filled_.diagnostics.complain(list_, listed.piece,
                                 {Problem::has_value, listed.value.text() + " for \"" + listed.code + "\"",
                                  "its value " + std::string(before) + ", as in line " +
                                      std::to_string(parts_.line_of(listed.code)) + " of parts.csv",
                                  "ask for overwriting if the list is right"});
  }

  PartsTable& parts_;
  const Source& list_;
  const FillWish& wish_;
  Filled& filled_;
};

// Complains when not.
bool has_family(const TableFiles& files, const std::string& wanted, Diagnostics& diagnostics) {
  constexpr std::string_view name = "families.csv";
  std::vector<std::string> codes;
  if (const TableFile* file = files.find(name)) {
    Diagnostics ignored;
    const ReadTable families = read_table(*find_table("families"), {file->file, file->text}, ignored);
    for (const CsvRow& row : families.csv.rows)
      if (!is_blank(row)) codes.emplace_back(families.text(row, "code"));
  }
  if (std::find(codes.begin(), codes.end(), wanted) != codes.end()) return true;
  const std::vector<std::string_view> known(codes.begin(), codes.end());
  diagnostics.add(diagnostic_about(files.place + std::string(name),
                                   {Problem::unknown_name, "no family \"" + wanted + "\" for the new codes",
                                    "one of its codes", words::nearest_hint(wanted, known)}));
  return false;
}

}  // namespace

Filled fill(const TableFiles& files, const Source& list, const FillWish& wish) {
  Filled filled;
  filled.files = files;
  const TableFile* file = files.find(parts_file);
  if (file == nullptr) {
    filled.diagnostics.add(diagnostic_about(
        files.place + std::string(parts_file),
        {Problem::missing_table, "no such file", "the parts whose values are to be filled in"}));
    return filled;
  }
  PartsTable parts(files, *file, filled.diagnostics);
  if (!filled.diagnostics.ok()) return filled;
  filled.still_missing = parts.without_value();
  const bool takes_new = !wish.family.empty();
  if (takes_new && !has_family(files, wish.family, filled.diagnostics)) return filled;
  const std::vector<ListedValue> listed =
      read_value_list(list, {parts.codes(), takes_new}, filled.diagnostics);
  Filling filling(parts, list, wish, filled);
  for (const ListedValue& value : listed) filling.put(value);
  if (!filled.diagnostics.ok()) {
    filled.filled.clear();
    filled.added.clear();
    return filled;
  }
  for (TableFile& one : filled.files.files)
    if (one.file == parts_file) one.text = parts.text();
  filled.still_missing = parts.without_value();
  return filled;
}

}  // namespace landdrill
