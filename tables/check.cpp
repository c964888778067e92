#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <unordered_map>

#include "grammar/diagnostics.h"
#include "grammar/words.h"
#include "tables/columns.h"
#include "tables/csv.h"
#include "tables/decimal.h"
#include "tables/problems.h"
#include "tables/read_table.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

using Codes = std::vector<std::string_view>;

Codes codes_of(const ReadTable& read) {
  Codes codes;
  for (const CsvRow& row : read.csv.rows) {
    std::string_view code = read.text(row, "code");
    // An unclosed quotation mark takes the rest of the line into the cell.
    if (row.broken) code = code.substr(0, code.find(read.csv.separator));
    if (!code.empty()) codes.push_back(code);
  }
  std::sort(codes.begin(), codes.end());
  return codes;
}

// ---- keys ----

void check_keys(const ReadTable& read, Complaints& complaints) {
  std::unordered_map<std::string, std::size_t> lines;
  for (const CsvRow& row : read.csv.rows) {
    if (is_blank(row) || row.broken || read.text(row, read.table->columns[0].name).empty()) continue;
    const auto [first, is_new] = lines.emplace(read.exact_key(row), row.line);
    if (is_new) continue;
    complaints.at_piece(read, read.piece(row, read.table->columns[0].name),
                        {Problem::repeated_row, in_quotes(read.key(row)) + " a second time",
                         "one row for each in " + std::string(read.table->name) + ".csv",
                         "the first is in line " + std::to_string(first->second)});
  }
}

void check_row_count(const ReadTable& set, Complaints& complaints) {
  const CsvRow* first = nullptr;
  for (const CsvRow& row : set.csv.rows) {
    if (is_blank(row)) continue;
    if (first) {
      return complaints.at_piece(set, set.piece(row, "title"),
                                 {Problem::row_count, "a second row", "one row: a set has one title"});
    }
    first = &row;
  }
  if (!first) complaints.about_file(set, {Problem::row_count, "no row", "one row with the title of the set"});
}

void check_has_rows(const ReadTable& read, Complaints& complaints) {
  const auto& rows = read.csv.rows;
  if (!std::all_of(rows.begin(), rows.end(), is_blank)) return;
  complaints.about_file(read,
                        {Problem::row_count, "no row", "at least one: " + std::string(read.table->meaning)});
}

// ---- names of rows in other tables ----

class NameCheck {
 public:
  NameCheck(const Table& table, Complaints& complaints)
      : table_(table), file_(std::string(table.name) + ".csv"), complaints_(complaints) {
    if (const ReadTable* read = complaints.table(table.name)) {
      usable_ = read->usable;
      codes_ = codes_of(*read);
    }
  }

  void check(const ReadTable& read, const Column& column) {
    if (!usable_) return;
    for (const CsvRow& row : read.csv.rows) {
      if (row.broken || read.text(row, column.name).empty()) continue;
      if (codes_.empty()) return complain_of_no_row(read, row, column);
      check_row(read, row, column);
    }
  }

 private:
  // Once for the column: there is nothing that its other rows could name either.
  void complain_of_no_row(const ReadTable& read, const CsvRow& row, const Column& column) {
    if (table_.required) return;  // there was a complaint about the table
    complaints_.at_piece(read, read.piece(row, column.name),
                         {Problem::unknown_name, in_quotes(read.text(row, column.name)), "a code of " + file_,
                          complaints_.table(table_.name) ? file_ + " has no row" : "there is no " + file_});
  }

  void check_row(const ReadTable& read, const CsvRow& row, const Column& column) {
    const std::string_view piece = read.piece(row, column.name);
    std::string_view rest = read.text(row, column.name);
    if (column.holds != Cell::codes) return check_one(read, piece, rest);
    while (!rest.empty()) {
      const std::string_view word = rest.substr(0, rest.find_first_of(" \t\r\n"));
      const std::size_t place = piece.find(word);
      check_one(read, place == std::string_view::npos ? piece : piece.substr(place, word.size()), word);
      rest = trimmed(rest.substr(word.size()));
    }
  }

  void check_one(const ReadTable& read, std::string_view piece, std::string_view word) {
    if (std::binary_search(codes_.begin(), codes_.end(), word)) return;
    complaints_.at_piece(read, piece,
                         {Problem::unknown_name, in_quotes(word), "a code of " + file_, hint_for(word)});
  }

  std::string hint_for(std::string_view word) const {
    // Of so many codes hardly one is near, and looking for it takes its time.
    if (codes_.size() > 20'000 || !complaints_.wants_more()) return {};
    const std::string nearest = words::nearest_hint(word, codes_);
    return nearest.empty() && codes_.size() <= 12 ? fmt::format("{} has {}", file_, fmt::join(codes_, ", "))
                                                  : nearest;
  }

  const Table& table_;
  const std::string file_;
  Complaints& complaints_;
  bool usable_ = true;
  Codes codes_;
};

void check_names(Complaints& complaints) {
  for (std::string_view target : {"families", "kinds", "events"}) {
    NameCheck names(*find_table(target), complaints);
    for (const ReadTable& read : complaints.tables()) {
      if (!read.usable) continue;
      for (const Column& column : read.table->columns) {
        if (column.refers_to == target) names.check(read, column);
      }
    }
  }
}

}  // namespace

void check(const ValueSet& set, const std::vector<ReadTable>& tables, Diagnostics& diagnostics) {
  Complaints complaints(tables, diagnostics);
  for (const ReadTable& read : tables) {
    if (!read.usable) continue;
    if (read.table->key_columns == 0) {
      check_row_count(read, complaints);
    } else {
      if (read.table->required) check_has_rows(read, complaints);
      check_keys(read, complaints);
    }
  }
  check_names(complaints);
  check_rows(set, complaints);
  check_formulas(set, complaints);
  check_panels(set, complaints);
  check_quotas(set, complaints);
  check_spreads(set, complaints);
}

namespace {

struct Limit {
  std::string_view column;
  std::optional<Decimal> value;
};

Limit limit(std::string_view column, std::optional<int> value) {
  return {column, value ? std::optional(Decimal::whole(*value)) : std::nullopt};
}
template <class Quantity>
Limit limit(std::string_view column, const std::optional<Quantity>& value) {
  return {column, value ? std::optional(value->value()) : std::nullopt};
}

// The complaint is made at the second of the two.
void check_order(const Provenance& from, const Limit& lower, const Limit& upper, Complaints& complaints) {
  if (!lower.value || !upper.value || *lower.value <= *upper.value) return;
  const std::string column(upper.column);
  complaints.at(
      from, upper.column,
      {Problem::contradiction, column + " " + upper.value->text(),
       "at least " + lower.value->text() + ", which stands in the column " + in_quotes(lower.column)});
}

// ---- words that would be taken for something else ----

void check_word(const Provenance& from, std::string_view column, std::string_view code,
                std::span<const std::string_view> taken, std::string_view means, Complaints& complaints) {
  if (std::find(taken.begin(), taken.end(), code) == taken.end()) return;
  complaints.at(from, column,
                {Problem::bad_code, in_quotes(code) + " as a code",
                 "another word, since " + std::string(code) + " " + std::string(means)});
}

constexpr std::array<std::string_view, 1> parts_word = {"parts"};
constexpr std::array<std::string_view, 2> fault_words = {"lost", "clean"};
constexpr std::array<std::string_view, 1> none_word = {"none"};

void check_spelling(const Provenance& from, std::string_view code, std::string_view bad,
                    std::string_view expected, Complaints& complaints) {
  if (code.find_first_of(bad) == std::string_view::npos) return;
  complaints.at(from, "code", {Problem::bad_code, in_quotes(code), std::string(expected)});
}

// ---- the tables ----

void check_family(const Family& family, Complaints& complaints) {
  check_order(family.from, limit("most_in_element", family.most_in_element),
              limit("most_in_routine", family.most_in_routine), complaints);
  check_word(family.from, "code", family.code, parts_word, "means every part of an element in a formula",
             complaints);
  check_spelling(family.from, family.code, "(), ",
                 "a code that a formula can name: without blanks, commas and brackets", complaints);
}

void check_kind(const Kind& kind, Complaints& complaints) {
  check_order(kind.from, limit("least_parts", kind.least_parts), limit("most_parts", kind.most_parts),
              complaints);
  check_order(kind.from, limit("most_same", kind.most_same), limit("most_parts", kind.most_parts),
              complaints);
  check_spelling(kind.from, kind.code, " ",
                 "a code without blanks, since lists of kinds have blanks between them", complaints);
  if (kind.slip && *kind.slip > Decimal::whole(100)) {
    complaints.at(kind.from, "slip",
                  {Problem::out_of_range, "a chance of " + kind.slip->text() + " per cent", "one from 0 to 100"});
  }
}

void check_event(const Event& event, Complaints& complaints) {
  check_order(event.from, limit("least_swimmers", event.least_swimmers),
              limit("most_swimmers", event.most_swimmers), complaints);
  const auto& [seconds, tolerance] = std::pair(event.seconds, event.tolerance);
  if (seconds && tolerance && *tolerance >= *seconds) {
    complaints.at(event.from, "tolerance",
                  {Problem::contradiction, "tolerance " + tolerance->text(),
                   "less than the " + seconds->text() + " seconds of the event"});
  }
  if (seconds && !tolerance) {
    complaints.at(
        event.from, "tolerance",
        {Problem::no_tolerance, "a time without a tolerance",
         "the seconds by which a routine may be longer or shorter", "write 0 if the rules allow none"});
  }
}

void check_fault(const FaultRule& fault, Complaints& complaints) {
  const std::array<Limit, 3> sizes = {limit("small", fault.small), limit("medium", fault.medium),
                                      limit("large", fault.large)};
  check_order(fault.from, sizes[0], sizes[1], complaints);
  check_order(fault.from, sizes[fault.medium ? 1 : 0], sizes[2], complaints);
  const auto least =
      std::find_if(sizes.begin(), sizes.end(), [](const Limit& size) { return size.value.has_value(); });
  if (least != sizes.end()) return check_order(fault.from, *least, limit("cap", fault.cap), complaints);
  complaints.at(fault.from, "code",
                {Problem::contradiction, "the fault " + in_quotes(fault.code) + " without any size",
                 "a number under small, medium or large"});
}

}  // namespace

void check_rows(const ValueSet& set, Complaints& complaints) {
  for (const Family& family : set.families) check_family(family, complaints);
  for (const Kind& kind : set.kinds) check_kind(kind, complaints);
  for (const Event& event : set.events) check_event(event, complaints);
  for (const Quota& quota : set.quotas)
    check_order(quota.from, limit("least", quota.least), limit("most", quota.most), complaints);
  for (const FaultRule& fault : set.faults) {
    check_fault(fault, complaints);
    check_word(fault.from, "code", fault.code, fault_words, "has its own meaning in a run", complaints);
  }
  for (const SyncClass& row : set.sync) {
    check_word(row.from, "code", row.code, none_word, "means that there was no sync error", complaints);
  }
  for (const Penalty& row : set.penalties) {
    check_word(row.from, "code", row.code, none_word, "means that there was no penalty", complaints);
  }
}

}  // namespace landdrill
