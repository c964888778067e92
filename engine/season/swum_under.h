// What the club swam under each edition of a value set.
//
//   (*swum_by_edition(book, {}))[edition.id].panels       // 3
#pragma once

#include <cstdint>
#include <map>
#include <set>
#include <string>
#include <utility>

#include "tables/folder.h"
#include "tables/store/book.h"

namespace landdrill {

// What was swum under one edition.
struct SwumUnder {
  std::set<std::pair<std::string, std::string>> routines;  // title and event
  std::set<std::int64_t> versions;
  std::size_t runs = 0, panels = 0;
};

// Of what the wish finds, by KeptEdition::id.
Result<std::map<std::int64_t, SwumUnder>> swum_by_edition(const Book& book, BookWish wish);

}  // namespace landdrill
