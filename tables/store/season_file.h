// Opens a season file: says in plain words why a file is none, makes a new one, brings an old one to this
// version.
//
//   Database db = open_season_file("club.season", Database::Access::write);   // ready, of the present version
//
// Reading never creates or changes a file; the one exception is a change that was interrupted by a crash,
// which is taken back by whoever comes first and may write.
#pragma once

#include <cstdint>
#include <filesystem>

#include "tables/store/database.h"

namespace landdrill::store {

inline constexpr std::int64_t season_application_id = 0x4C44726C;  // "LDrl", also in schema.sql
inline constexpr std::int64_t season_version = 4;

// Throws Refused.
void refuse_unless_makeable(const std::filesystem::path& file);
Database open_season_file(const std::filesystem::path& file, Database::Access access);
// Reads every page and every kept text; refused when one is damaged or a row belongs to nothing.
void refuse_damaged(Database& db);

}  // namespace landdrill::store
