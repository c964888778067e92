// Finds blocks of the season book, in the order of the book: by routine, then routine, runs and panels by
// date.
//
//   find_blocks(db, {"harbour tarn"})     // the panels of Harbour Lights at the Tarn Open
//
// Inside the caller's transaction.
#pragma once

#include "tables/store/database.h"
#include "tables/store/kept_blocks.h"

namespace landdrill::store {

std::vector<KeptBlock> find_blocks(Database& db, const BookWish& wish);

// The words of a wish, in small letters.
std::vector<std::string> words_of(std::string_view wish);
// Those of them that a title has not.
std::vector<std::string> words_not_in(std::string title, std::vector<std::string> words);

}  // namespace landdrill::store
