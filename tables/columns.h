// The one description of the CSV files of a value set: which tables, which columns, what goes into each.
//
//   find_table("parts")->columns[0]
//   // {"code", Cell::code, required, "what the sheet writes for the part"}
//
// The loader, the checks, the store and the reference for coaches are all made from it.
#pragma once

#include <cstddef>
#include <span>
#include <string>
#include <string_view>

namespace landdrill {

// What a cell of a column may hold.
enum class Cell {
  code,     // a word of the sheet language
  text,     // anything
  number,   // an exact decimal
  whole,    // a whole number, 0 or more
  codes,    // codes separated by blanks
  formula,  // see formula.h
  choice,   // one of Column::choices
};

struct Column {
  std::string_view name;
  Cell holds;
  bool required;                                   // an empty cell is an error
  std::string_view meaning;                        // one line for the coach
  std::span<const std::string_view> choices = {};  // for Cell::choice, in the order of their enum
  std::string_view refers_to = {};                 // the table whose code the cell names, or empty
  int least = 0, most = 1'000'000;                 // for Cell::whole
  bool above_zero = false;                         // for Cell::number, which is never below 0
  bool gap = false;                                // an empty cell is a gap to fill in, as its meaning says
};

struct Table {
  std::string_view name;  // the file is name + ".csv"
  std::string_view meaning;
  std::span<const Column> columns;
  std::size_t key_columns;  // the first so many columns together name a row; 0: the table has one row
  bool required;            // a set without this file is refused
};

// In the order in which a coach would read them: set, families, parts, kinds, events, quotas, panels, faults,
// sync, penalties, spreads, cautions.
std::span<const Table> value_tables();
const Table* find_table(std::string_view name);  // nullptr when there is none
std::string file_of(const Table& table);         // "parts.csv"
const Column* find_column(const Table& table, std::string_view name);

}  // namespace landdrill
