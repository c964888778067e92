// Routines of the book as they were when a panel saw them: what was changed later does not change what was
// known then.
//
//   auto swum = AsSwum(book).read(wish);     // one for each version of a routine that something was swum of
//   (*swum)[0].panels[1]                     // whether the wish finds the second panel of this version
//
// Which version a panel belongs to, the book says (book.h). A run that several versions have counts with the
// first of them alone.
#pragma once

#include "engine/cli/book_file.h"
#include "engine/cli/kept_sheets.h"

namespace landdrill::cli {

// `runs` and `panels`, as many as the routine has: whether the wish finds it and it counts with this version.
// What does not count is there all the same: an expectation may rest on an older run.
struct Swum {
  const KeptSheet* kept = nullptr;
  std::vector<bool> runs, panels;
};

class AsSwum {
 public:
  explicit AsSwum(const Book& book) : book_(book), sheets_(book) {}
  // Nothing of a version that nothing was swum of. They live as long as this.
  Result<std::vector<Swum>> read(BookWish wish);

 private:
  const Book& book_;
  KeptSheets sheets_;
};

// Does `work` with what the call asks of the book; says so when there is nothing of that.
template <class Work>
Exit with_swum(Call& call, Work work) {
  return with_book(call, [&](const Book& book, const BookWish& wish) {
    AsSwum kept(book);
    const auto swum = kept.read(wish);
    if (!swum) return refuse(call, swum.error());
    return swum->empty() ? nothing_found(call, wish) : work(*swum);
  });
}

}  // namespace landdrill::cli
