// What was swum of a routine: which runs and panels count, and with which of its versions.
//
//   swum_blocks(db, {1, 7}, {"tarn"})      // for the versions kept as entries 1 and 7: what the words find
//
// Inside the caller's transaction. Looks at names in an index, not at texts.
#pragma once

#include <span>
#include <vector>

#include "tables/store/database.h"
#include "tables/store/kept_blocks.h"

namespace landdrill::store {

// Given versions of a routine: for each what counts with it.
std::vector<SwumWith> swum_blocks(Database& db, std::span<const std::int64_t> versions, const BookWish& wish);

}  // namespace landdrill::store
