// Routines of the book as they were when a panel saw them: what was changed later does not change what was
// known then.
//
//   AsSwum book_of(book, wish);
//   book_of.for_each(make, take, complain);    // one version after the other that something was swum of
//   book_of.found();                           // whether there was any
//
// Which version a panel belongs to, the book says (book.h). A run that several versions have counts with the
// first of them alone. A version comes in parts with some of its panels each, worked on by all processors, so
// that a season of any length needs little memory.
#pragma once

#include "engine/files/read_ahead.h"
#include "engine/files/value_sets.h"
#include "engine/season/kept_sheets.h"
#include "grammar/diagnostics.h"
#include "tables/folder.h"
#include "tables/store/book.h"

namespace landdrill {

// A version with all its runs, because an expectation may rest on an older one, and some of the panels that
// the wish finds. `runs`, as many as the routine has: whether the wish finds it and it counts with this
// version.
struct Swum {
  KeptSheet kept;
  std::vector<bool> runs;
};

class AsSwum {
 public:
  AsSwum(const Book& book, const BookWish& wish) : book_(book), sheets_(book), wish_(wish) {}
  // `make(swum)` of every part, at several processors at once; then here, in the order of the book,
  // `take(routine, parts)` with all that was made of a version, or `complain(diagnostics)` of one that is in
  // error. The value sets live as long as this.
  template <class Make, class Take, class Complain>
  Result<void> for_each(Make make, Take take, Complain complain);
  bool found() const { return found_; }

 private:
  struct Version {
    KeptBlock routine;
    SwumWith swum;
  };
  struct Part {
    std::string head;
    std::vector<StoredText> panels;
    Swum swum;
    const ReadSet* set = nullptr;
    const Version* of = nullptr;
    bool first = false, last = false;     // of its version
    std::optional<Trouble> trouble;       // why there is no more
    std::optional<std::int64_t> damaged;  // a panel
  };
  Result<void> find_versions();
  Result<void> find_swum();
  Result<void> go_to_next();
  Result<void> start_version();
  std::optional<std::size_t> next(Part& part);
  Result<void> cut(Part& part);
  static void read(Part& part);
  Result<Diagnostics> wrong_with(const KeptBlock& routine);

  const Book& book_;
  KeptSheets sheets_;
  const BookWish wish_;
  std::vector<Version> versions_;  // in the order of the book
  std::size_t known_ = 0;          // of so many it is known what counts with them
  std::size_t version_ = 0;        // of which parts are cut now:
  std::string head_;               // the routine with its runs
  std::size_t panel_ = 0;          // the first that was not in a part yet
  const ReadSet* set_ = nullptr;
  bool found_ = false;
};

template <class Make, class Take, class Complain>
Result<void> AsSwum::for_each(Make make, Take take, Complain complain) {
  using Made = std::invoke_result_t<Make, const Swum&>;
  struct Slot {
    Part part;
    std::optional<Made> made;
  };
  if (auto found = find_versions(); !found) return found;
  std::vector<Slot> slots(InOrder::slots());
  const auto work = [&](std::size_t slot) {
    auto& [part, made] = slots[slot];
    made.reset();
    if (part.trouble) return;
    read(part);
    if (part.swum.kept.sheet.routine()) made = make(std::as_const(part.swum));
    part.swum = {};
  };
  InOrder order([&](std::size_t slot) { return next(slots[slot].part); }, work);
  order.ahead();
  std::vector<Made> all;
  bool good = true;
  while (const auto slot = order.next()) {
    auto& [part, made] = slots[*slot];
    if (part.trouble) return tl::unexpected(*part.trouble);
    if (part.damaged) return tl::unexpected(book_.damaged(*part.damaged));
    if (part.first) {
      all.clear();
      good = true;
    }
    good = good && made;
    if (good) all.push_back(std::move(*made));
    if (!part.last) continue;
    if (good) {
      take(part.of->routine, std::move(all));
    } else {
      const auto wrong = wrong_with(part.of->routine);
      if (!wrong) return tl::unexpected(wrong.error());
      complain(*wrong);
    }
  }
  return {};
}

}  // namespace landdrill
