// The CSV tables of a set in the season file, cell by cell, with every byte around the cells.
//
//   put_files(db, set, files);
//   kept_files(db, set)             // the same bytes again
//
// Everything here runs inside the caller's transaction and throws Refused.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "tables/edit_cell.h"
#include "tables/load.h"
#include "tables/store/database.h"
#include "tables/store/kept_blocks.h"

namespace landdrill::store {

using SetId = std::int64_t;

std::optional<SetId> find_set_id(Database& db, std::string_view name);
// The set of that name, or a refusal that names the nearest ones.
SetId set_id_of(Database& db, std::string_view name);
// What stands before file names in messages: "club.season/kingfisher-2026/".
std::string place_of_set(const Database& db, std::string_view name);

// Rows below the headers that hold anything.
std::size_t count_rows(const std::vector<TableFile>& files);

// Refused when one could not be written back byte for byte.
void put_files(Database& db, SetId set, const std::vector<TableFile>& files);
void drop_files(Database& db, SetId set);
// In the order in which they were put.
std::vector<TableFile> kept_files(Database& db, SetId set);

// The bytes of the cell; none when its row ends before.
std::optional<std::string> kept_cell(Database& db, SetId set, const CellPlace& place);
// Puts other bytes into a cell that is there.
void put_cell(Database& db, SetId set, const CellPlace& place, std::string_view raw);

// Editions of value sets in the season book: a set as it was when something was swum, byte for byte.
//
//   const std::int64_t id = keep_edition(db, kingfisher);     // the same id for the same bytes
//   files_of_edition(db, id)                                  // the bytes again

// The edition with these bytes, if it is kept.
std::optional<std::int64_t> find_edition(Database& db, const TableFiles& set);
// The same, kept now if it was not there.
std::int64_t keep_edition(Database& db, const TableFiles& set);
std::vector<TableFile> files_of_edition(Database& db, std::int64_t edition);
std::vector<KeptEdition> kept_editions(Database& db);

// What a set says of itself in set.csv.
struct SetFace {
  std::string title, edition;
};
SetFace face_of(const std::vector<TableFile>& files);

}  // namespace landdrill::store
