#include "tables/headed_rows.h"

#include <algorithm>
#include <array>

#include "grammar/diagnostics.h"
#include "grammar/problems.h"
#include "grammar/span.h"
#include "grammar/words.h"
#include "tables/csv.h"
#include "tables/decimal.h"
#include "tables/problems.h"
#include "tables/read_table.h"

namespace landdrill {
HeadedRows::HeadedRows(const Source& list, const ListShape& shape, Diagnostics& diagnostics)
    : list_(list),
      shape_(shape),
      diagnostics_(diagnostics),
      rows_(list),
      place_(shape.columns.size(), nowhere) {}

bool HeadedRows::read_headings() {
  if (auto complaint = no_csv_text(list_)) {
    diagnostics_.add(std::move(*complaint));
    return false;
  }
  if (!rows_.next()) {
    diagnostics_.add(diagnostic_about(
        list_.name, {Problem::missing_column, "an empty list", "a heading and " + std::string(shape_.row),
                     std::string(shape_.heading_hint)}));
    return false;
  }
  columns_ = rows_.cells();
  for (std::size_t i = 0; i < columns_; ++i) read_heading(i);
  if (diagnostics_.ok()) tell_unread();
  for (std::size_t field = 0; field < place_.size(); ++field)
    if (shape_.columns[field].needed && !has(field)) miss(shape_.columns[field]);
  return diagnostics_.ok();
}

void HeadedRows::read_heading(std::size_t column) {
  const std::string name = normal_name(rows_.cell(column));
  if (name == shape_.foreign) {
    complain_at(rows_.piece(column), {Problem::contradiction, "a column for the " + name,
                                      std::string(shape_.instead), std::string(shape_.foreign_hint)});
  }
  for (std::size_t field = 0; field < place_.size(); ++field) {
    const auto& words = shape_.columns[field].words;
    if (std::find(words.begin(), words.end(), name) == words.end()) continue;
    if (!has(field)) {
      place_[field] = column;
    } else {
      complain_at(rows_.piece(column),
                  {Problem::repeated_column,
                   "a second column for the " + std::string(shape_.columns[field].name), "one"});
    }
    return;
  }
  if (name != shape_.foreign) leave_unread(column, name);
}

void HeadedRows::leave_unread(std::size_t column, std::string_view name) {
  if (std::find(shape_.refused.begin(), shape_.refused.end(), name) != shape_.refused.end())
    refused_.emplace_back(column, rows_.cell(column));
  else if (!name.empty())
    unread_.push_back(column);
}

void HeadedRows::tell_unread() {
  std::vector<std::string_view> known;
  for (const ListColumn& one : shape_.columns) known.push_back(one.name);
  for (const std::size_t column : unread_)
    complain_at(rows_.piece(column),
                {Problem::unread_column, "a column " + in_quotes(rows_.cell(column)) + ", which is not read",
                 words::alternatives(known), words::nearest_hint(normal_name(rows_.cell(column)), known)});
}

void HeadedRows::miss(const ListColumn& column) {
  complain_at(rows_.piece(0),
              {Problem::missing_column, "no column for the " + std::string(column.name),
               "one that is called " + std::string(column.name), std::string(shape_.heading_hint)});
}

bool HeadedRows::next() {
  while (rows_.next()) {
    any_row_ = true;
    if (!refused_.empty()) find_refused();
    if (complete()) return true;
  }
  if (!any_row_)
    diagnostics_.add(diagnostic_about(
        list_.name, {Problem::no_rows, "a heading and nothing below it", std::string(shape_.row)}));
  return false;
}

// Said once of each column.
void HeadedRows::find_refused() {
  std::erase_if(refused_, [&](const auto& one) {
    const auto& [column, name] = one;
    const std::string_view text = rows_.cell(column);
    const auto number = Decimal::parse(text);
    if (is_no_mark(text) || (number && *number == Decimal())) return false;
    complain_at(
        rows_.piece(column),
        {Problem::not_in_lists, in_quotes(text) + " in the column " + in_quotes(name) + ", which no list has",
         "nothing there", std::string(shape_.refused_hint)});
    return true;
  });
}

// Whether the text ends here, without the end of a line.
bool HeadedRows::cut_off() const {
  const char* const end = list_.text.data() + list_.text.size();
  return rows_.cells() > 0 &&
         rows_.piece(rows_.cells() - 1).data() + rows_.piece(rows_.cells() - 1).size() == end &&
         !list_.text.ends_with('\n') && !list_.text.ends_with('\r');
}

bool HeadedRows::complete() {
  if (!rows_.broken().empty()) {
    complain_at(rows_.broken().back().piece,
                {Problem::unclosed_quote, "a quotation mark that does not close its cell",
                 "a closing one before the next cell"});
    return false;
  }
  if (rows_.cells() > columns_) {
    complain_at(
        rows_.piece(columns_),
        {Problem::cell_count, std::to_string(rows_.cells()) + " cells",
         std::to_string(columns_) + ", as the heading has",
         rows_.separator() == ',' ? "a decimal comma splits a cell: write 7.25, or put it in quotation marks"
                                  : ""});
    return false;
  }
  for (std::size_t field = 0; field < place_.size(); ++field) {
    const ListColumn& column = shape_.columns[field];
    if (!column.needed || !text(field).empty()) continue;
    if (column.may_be_empty) {
      if (place_[field] < rows_.cells() && !cut_off()) continue;
      complain_at(rows_.piece(0), {Problem::cut_off, "a row that ends before its " + std::string(column.name),
                                   std::to_string(columns_) + " cells, as the heading has",
                                   "write - where there is no " + std::string(column.name)});
      return false;
    }
    complain(field,
             {Problem::missing_cell, "an empty cell", "the " + std::string(column.name) + " in every row"});
    return false;
  }
  return true;
}

void HeadedRows::complain_at(std::string_view piece, Complaint complaint) {
  diagnostics_.complain(list_, piece, std::move(complaint));
}

void HeadedRows::complain_of_date(std::size_t field) {
  complain(field, {Problem::bad_date, "\"" + std::string(text(field)) + "\"",
                   "a day of the calendar written year-month-day, such as 2026-05-09"});
}

void HeadedRows::complain_of_mark(std::size_t field) {
  complain(field, {Problem::bad_number, "\"" + std::string(text(field)) + "\"", "a mark such as 7.25, or -"});
}

bool is_no_mark(std::string_view text) {
  return text.empty() || text == "-" || text == "–" || text == "—";
}

bool says_yes(std::string_view text) {
  if (text.empty()) return false;
  constexpr std::array<std::string_view, 8> yes = {"yes", "y", "1", "x", "base", "ja", "oui", "si"};
  const std::string word = normal_name(text);
  return std::find(yes.begin(), yes.end(), word) != yes.end();
}

bool says_no(std::string_view text) {
  if (is_no_mark(text)) return true;
  constexpr std::array<std::string_view, 6> no = {"no", "n", "0", "nein", "non", "nej"};
  const std::string word = normal_name(text);
  return std::find(no.begin(), no.end(), word) != no.end();
}

}  // namespace landdrill
