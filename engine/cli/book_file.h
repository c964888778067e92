// The season book that a command names, and what it wishes to find in it.
//
//   auto season = open_book(call, Season::Mode::read);   // the operand BOOK
//   BookWish wish = book_wish(call);                     // WORDS..., --event, --from, --until, --all
#pragma once

#include <functional>

#include "engine/cli/call.h"
#include "engine/cli/exit.h"
#include "engine/cli/find_values.h"
#include "tables/folder.h"
#include "tables/store/book.h"

namespace landdrill::cli {

Result<Season> open_book(const Call& call, Season::Mode mode);

struct WishRead {
  BookWish wish;
  std::string mistake;  // what was asked for and cannot be; empty when all is well
};
// Heeds the operands from the place `words` on and those of the options that the command has.
WishRead book_wish(const Call& call, std::size_t words = 1);
// Opens the book to read, reads the wish and does the work, or says why not.
Exit with_book(Call& call, const std::function<Exit(const Book&, const BookWish&)>& work);
// Says that the book has nothing of that, and which events it has when one was asked for in vain; Exit::ok.
Exit nothing_found(Call& call, const Book& book, const BookWish& wish);

}  // namespace landdrill::cli
