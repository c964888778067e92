// What was swum of a routine: which runs and panels count, and with which of its versions.
//
//   swum_blocks(db, {1, 7}, {"tarn"})      // for the versions kept as entries 1 and 7: what the words find
//
// Inside the caller's transaction. Looks at names in an index, not at texts.
#pragma once

#include <span>
#include <vector>

#include "tables/load.h"
#include "tables/store/database.h"
#include "tables/store/kept_blocks.h"

namespace landdrill::store {

// Editions of value sets in the season book: a set as it was when something was swum, byte for byte.
//
//   const std::int64_t id = keep_edition(db, kingfisher);     // the same id for the same bytes
//   files_of_edition(db, id)                                  // the bytes again
//
// Inside the caller's transaction.

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

// Given versions of a routine: for each what counts with it.
std::vector<SwumWith> swum_blocks(Database& db, std::span<const std::int64_t> versions, const BookWish& wish);

}  // namespace landdrill::store
