// The season book that a command names, and what it wishes to find in it.
//
//   auto season = open_book(call, Season::Mode::read);   // the operand BOOK
//   BookWish wish = book_wish(call);                     // WORDS..., --event, --from, --until, --all
#pragma once

#include "engine/cli/find_values.h"
#include "tables/store/book.h"

namespace landdrill::cli {

Result<Season> open_book(const Call& call, Season::Mode mode);

struct WishRead {
  BookWish wish;
  std::string mistake;  // what was asked for and cannot be; empty when all is well
};
// Heeds the operands behind BOOK and those of the options that the command has.
WishRead book_wish(const Call& call);

}  // namespace landdrill::cli
