// Value sets as text, CSV or JSON: which there are, what is in one, what changed between two, its history.
//
//   show_set(files, {"parts", "spin-360"}, Format::text, {})
//
// Works on the tables as they are written, so nothing that stands in a file is left out.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/report/text.h"
#include "engine/routine/resolve.h"
#include "tables/compare_sets.h"
#include "tables/fill.h"
#include "tables/load.h"

namespace landdrill::report {

enum class Format { text, csv, json };

// A set that can be named, wherever it is kept. Texts that are empty, and numbers that nobody asked for, are
// left out.
struct SetLine {
  std::string name, title, edition, place;  // place: the folder or the season file
  std::optional<std::size_t> rows, edits;
};
std::string set_list(const std::vector<SetLine>& sets, Format format, const TextWish& wish);

// What to show of a set: all of it, one table, or one row of a table by its key ("spin-360", "duet-free
// execution").
struct ShowWish {
  std::string_view table, row;
};
// Empty when the set has no such table or row. CSV of a whole set is not offered: its files are that already;
// it is then the first table only.
std::string show_set(const TableFiles& files, const ShowWish& show, Format format, const TextWish& wish);
// The keys of the rows of a table: for "no such row" messages.
std::vector<std::string> row_keys(const TableFiles& files, std::string_view table);

// What a change of values does to one line of a sheet: "2 Undertow", 5.25, 5.35, +0.1.
struct SheetMove {
  std::string line, before, after, change;
};
struct ComparedSets {
  std::string_view before, after;  // names
  const SetComparison* changes = nullptr;
  std::string_view sheet;  // may be empty
  std::vector<SheetMove> moves;
};
std::string comparison(const ComparedSets& compared, Format format, const TextWish& wish);

// One edit of a set kept in a season file.
struct HistoryLine {
  std::string number, at, table, key, column, before, after, why;
  bool undone = false;
};
std::string history(std::string_view set, const std::vector<HistoryLine>& edits, Format format,
                    const TextWish& wish);

// What a list of values filled in, and what is missing still.
std::string filled(const Filled& outcome, Format format, const TextWish& wish);
// The values a sheet needs and the set does not have.
std::string gaps(const std::vector<Gap>& missing, std::string_view set, Format format, const TextWish& wish);

}  // namespace landdrill::report
