// Routines of the book as they were when a panel saw them: what was changed later does not change what was
// known then.
//
//   auto swum = AsSwum(book).read(wish);     // one for each version of a routine that something was swum of
//   (*swum)[0].panels[1]                     // whether its second panel was first kept with this version
//
// A sheet that is added again with a changed routine brings its old runs and panels along; they stay with the
// version with which they came first. What was corrected in the text of a panel itself does count.
#pragma once

#include <map>
#include <tuple>

#include "engine/cli/book_file.h"
#include "engine/cli/kept_sheets.h"

namespace landdrill::cli {

// `runs` and `panels`, as many as the routine has: whether the wish finds it and this version had it first.
// Older runs that the sheet of this version had too are there all the same: an expectation may rest on them.
struct Swum {
  const KeptSheet* kept = nullptr;
  std::vector<bool> runs, panels;
};

class AsSwum {
 public:
  explicit AsSwum(const Book& book) : book_(book), sheets_(book) {}
  // Nothing of a version that nothing was swum of. They live as long as this.
  Result<std::vector<Swum>> read(const BookWish& wish);

 private:
  using Name = std::tuple<std::string, std::string, Block::What, std::string, std::string>;
  static Name name_of(const KeptBlock& block);
  Result<void> know_blocks(const BookWish& wish);
  Result<std::optional<Swum>> of_version(const KeptBlock& routine);
  struct Chosen;
  Result<Swum> read_version(const KeptBlock& routine, const std::vector<Chosen>& chosen, bool first_wording);

  const Book& book_;
  KeptSheets sheets_;
  std::vector<KeptBlock> routines_;
  std::map<Name, std::vector<KeptBlock>> versions_;       // of runs and panels, oldest first
  std::map<std::int64_t, std::vector<Name>> of_routine_;  // by version of the routine, each once
  std::map<Name, bool> found_;
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
