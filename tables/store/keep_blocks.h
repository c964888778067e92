// Adds blocks to the season book: finds out which of them are kept already, and which are new versions.
//
//   keep_blocks(db, blocks, editions)      // {already there 1, new version 2, already there 1}
//
// Inside the caller's transaction. What belongs to what: see book.h.
#pragma once

#include <cstddef>
#include <string_view>
#include <vector>

#include "tables/load.h"
#include "tables/store/database.h"
#include "tables/store/kept_blocks.h"

namespace landdrill::store {

// Throws Refused when a run or a panel belongs to no routine.
std::vector<AddedBlock> keep_blocks(Database& db, const std::vector<Block>& blocks,
                                    const std::vector<TableFiles>& editions);

// Of texts that are given one after the other, those that are history already: the longest beginning that
// occurs among the kept ones in this order, up to the last of these. The place of each among the kept ones;
// the same text twice in a row is in one place.
//
//   kept_before({"a", "b", "c"}, {"a", "x", "b"})      // {0, 2}
//   kept_before({"a"}, {"a", "b"})                     // {}: the older text is in force again
std::vector<std::size_t> kept_before(const std::vector<std::string_view>& given,
                                     const std::vector<std::string_view>& kept);

}  // namespace landdrill::store
