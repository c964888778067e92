// Finds blocks of the season book, in the order of the book: by routine, then routine, runs and panels by
// date.
//
//   find_blocks(db, {"harbour tarn"})     // the panels of Harbour Lights at the Tarn Open
//
// Inside the caller's transaction.
#pragma once

#include "tables/store/book.h"
#include "tables/store/database.h"

namespace landdrill::store {

std::vector<KeptBlock> find_blocks(Database& db, const BookWish& wish);

}  // namespace landdrill::store
