// The season book that a command names, and what it wishes to find in it.
//
//   auto season = open_book(call, Season::Mode::read);   // the operand BOOK
//   BookWish wish = book_wish(call);                     // WORDS..., --event, --from, --until, --all
#pragma once

#include <functional>

#include "engine/cli/call.h"
#include "engine/cli/call_sheets.h"
#include "engine/report/pages/asked.h"
#include "engine/report/pages/book.h"  // IWYU pragma: export
#include "engine/season/swum_versions.h"     // IWYU pragma: export
#include "grammar/diagnostics.h"
#include "tables/folder.h"
#include "tables/store/book.h"  // IWYU pragma: export

namespace landdrill::cli {

Result<Season> open_book(const Call& call, Season::Mode mode);

// Heeds the operands from the place `words` on and those of the options that the command has.
report::Typed<BookWish> book_wish(const Call& call, std::size_t words = 1);
// Opens the book to read, reads the wish and does the work, or says why not.
Exit with_book(Call& call, const std::function<Exit(const Book&, const BookWish&)>& work);
// Says that the book has nothing of that, and which events it has when one was asked for in vain; Exit::ok.
Exit nothing_found(Call& call, const Book& book, const BookWish& wish);

// What a call asks of the book, of each version of a routine as it was swum:
//
//   return with_swum(call, make, take, [&](const Book&, const BookWish&, Exit worst) { ...; return worst; });
//
// `make` and `take` as AsSwum::for_each has them, and `print(book, wish, worst)` at the end; says so when there is
// nothing.
template <class Make, class Take, class Print>
Exit with_swum(Call& call, Make make, Take take, Print print) {
  return with_book(call, [&](const Book& book, const BookWish& wish) {
    AsSwum as_swum(book, wish);
    Messages messages(call.streams);
    Exit worst = Exit::ok;
    const auto complain = [&](const Diagnostics& diagnostics) {
      messages.add(diagnostics);
      worst = Exit::errors;
    };
    const auto done = as_swum.for_each(make, take, complain);
    if (!done) return refuse(call, done.error());
    if (!as_swum.found()) return nothing_found(call, book, wish);
    messages.finish();
    return print(book, wish, worst);
  });
}

// What was added to the season book, as the commands that add tell it.

// A line for each of the blocks, unless text would be very long, and how many were added.
report::BookAdded what_was_added(const Call& call, const std::vector<Block>& blocks,
                                 const std::vector<AddedBlock>& added);
void tell_added(Call& call, const report::BookAdded& added);

// "3" -> 3; 0 when it is no number that a version can have.
int version_number(std::string_view text);

// A word of a command as a shell reads it again: club.season; 'Tarn Open'.
std::string shell_quoted(std::string_view text);

}  // namespace landdrill::cli
