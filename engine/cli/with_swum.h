// What a call asks of the book, of each version of a routine as it was swum.
//
//   return with_swum(call, make, take, [&](const Book&, const BookWish&, Exit worst) { ...; return worst; });
#pragma once

#include "engine/cli/book_file.h"
#include "engine/cli/call.h"
#include "engine/cli/exit.h"
#include "engine/cli/find_values.h"
#include "engine/cli/messages.h"
#include "engine/season/as_swum.h"
#include "grammar/diagnostics.h"
#include "tables/store/book.h"

namespace landdrill::cli {

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

}  // namespace landdrill::cli
