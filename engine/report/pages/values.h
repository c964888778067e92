// What is wrong with a value set, and how many of its values are still to fill in.
//
//   values_check_page("my-2026", load(files))     // my-2026: can be used, with 1 warning; 3 values still to fill in
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/report/page.h"
#include "engine/report/pages/asked.h"
#include "engine/routine/resolve.h"
#include "engine/score/totals.h"
#include "tables/edit_cell.h"
#include "tables/fill.h"
#include "tables/load.h"

namespace landdrill::report {

Page values_check_page(std::string_view set, const Loaded& loaded);

// What a list of values filled in, and what is missing still.
//
//   values_fill_page(fill(files, list, wish), "my-2026")      // "Filled in (2): solo-1, solo-2" ...

// `written_into`: empty when it was only to be looked at.
Page values_fill_page(const Filled& outcome, std::string_view written_into);

// How a set that is kept in a season file was changed.
//
//   values_history_page("club-2026", {{"4", "2026-04-14T18:03:11Z", "parts", "spin-360", "value", "0.9", "1.0"}})

struct HistoryLine {
  std::int64_t number = 0;
  std::string at, table;
  std::string key = {}, column = {}, before = {}, after = {}, why = {};
  bool undone = false;
  bool companion = false;  // goes with another change, and people are told of that one
};
Page values_history_page(std::string_view set, const std::vector<HistoryLine>& edits);

// What an edit, an undo or a redo changed in one row: the cell that was asked for, then what goes with it.
//
//   values_change_page("values undo", "club-2026", {"parts", "spin-360", changed, {{"value", "1.0", "0.9"}}})
//   // undone: club-2026 parts spin-360: value 1.0 -> 0.9

// A change without a table: all tables. A cell that is as it was: it said so already.
Page values_change_page(std::string question, std::string_view set, const RowChange& change);

// A set that was written into a folder.
//
//   values_copy_page("values export", {"club-2026", "out/mine", "mine"})   // ... the line is `values mine`

struct CopiedSet {
  std::string set, folder;
  std::string name;  // of the copy
};
Page values_copy_page(std::string question, const CopiedSet& copied);

// A set that was taken into a season file, or out of it.

struct ImportedSet {
  std::string set, season;
  std::size_t rows = 0;
  bool already_there = false;
};
Page values_import_page(const ImportedSet& imported);
Page values_remove_page(std::string_view set, std::string_view season);

// Which value sets there are, and where sets come from.
//
//   values_list_page({{{"club-2026", "Club league", "2026", 214, {}, "/home/club/values/club-2026", 4}}, ...})

// A set that can be named.
struct ListedSet {
  std::string name, title, edition;
  std::size_t rows = 0;
  std::optional<std::size_t> edits = {};  // of one in a season file
  std::string place = {};                 // its folder, or the season file
  std::size_t origin = 0;                 // its place in `origins`, from 1 on; 0: none of them
  std::vector<std::string> hidden = {};   // the folders of further sets of that name, which do not count
};
// Where sets are looked for: "the folders that --values names", and which these are here.
struct SetOrigin {
  std::string words;
  std::vector<std::string> folders = {};
};
struct ListedSets {
  std::vector<ListedSet> sets;
  std::vector<SetOrigin> origins = {};  // in order; none when a season file is named
  std::string season = {};              // the file
};
Page values_list_page(const ListedSets& listed);

// The values that a sheet needs and its set does not have.
//
//   values_missing_page({"duet.sheet", "Undercurrent", "declared-2024", resolved.gaps})

struct MissingValues {
  std::string file, routine;
  std::string set;
  std::vector<Gap> gaps;
  bool shipped = false;  // the set comes with the program, which nobody changes
};
Page values_missing_page(const MissingValues& missing);

// What changed between two value sets, and what that does to a sheet.
//
//   values_compare_page({"club-2026", "club-2027", compare_sets(before, after), "harbour.sheet", moves})

struct ComparedSets {
  std::string before, after;  // names
  SetComparison changes;
  std::string sheet = {};  // may be empty
  std::vector<SheetMove> moves = {};
};
Page values_compare_page(const ComparedSets& compared);

// What a value set says: all of it, one table, or one row with what its columns mean.
//
//   values_show_page(files, "parts", "spin-360")
//
// Works on the tables as they are written, so nothing that stands in a file is left out.

// `row`: the key of a row of the table ("spin-360", "duet-free execution"); either may be empty: all of them. CSV of
// a whole set is its first table only: its files are CSV already.
Answer values_show_page(const TableFiles& files, std::string_view table, std::string_view row);
// The keys of the rows of a table; of all tables when none is named.
std::vector<std::string> row_keys(const TableFiles& files, std::string_view table);

}  // namespace landdrill::report
