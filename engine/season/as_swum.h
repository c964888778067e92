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

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <type_traits>
#include <utility>
#include <vector>

#include "engine/files/in_order.h"
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
  bool found() const { return !versions_.empty(); }

 private:
  struct Version {
    KeptBlock routine;
    std::vector<std::pair<std::string, std::string>> runs;  // that count with it: days and titles, in order
    std::vector<std::int64_t> panels;                       // the same: entries
  };
  struct Part {
    std::string text;
    Swum swum;
    const ReadSet* set = nullptr;
    const Version* of = nullptr;
    bool first = false, last = false;  // of its version
  };
  void find_versions();
  std::size_t next(Part& part);
  static void read(Part& part);
  Diagnostics wrong_with(const KeptBlock& routine);

  const Book& book_;
  KeptSheets sheets_;
  const BookWish wish_;
  std::vector<Version> versions_;  // that something was swum of, in the order of the book
  std::size_t version_ = 0;        // of which parts are cut now:
  std::string head_;               // the routine with its runs
  std::size_t panel_ = 0;          // the first that was not in a part yet
  const ReadSet* set_ = nullptr;
};

template <class Make, class Take, class Complain>
Result<void> AsSwum::for_each(Make make, Take take, Complain complain) {
  using Made = std::invoke_result_t<Make, const Swum&>;
  struct Slot {
    Part part;
    std::optional<Made> made;
  };
  const auto fill = [&](Slot& slot) {
    return version_ < versions_.size() ? std::optional(next(slot.part)) : std::nullopt;
  };
  const auto work = [&](Slot& slot) {
    read(slot.part);
    if (slot.part.swum.kept.sheet.routine()) slot.made = make(std::as_const(slot.part.swum));
    slot.part.swum = {};
  };
  return store::attempt([&] {
    find_versions();
    InOrder<Slot> order(fill, work);
    order.ahead();
    std::vector<Made> all;
    bool good = true;
    while (Slot* slot = order.next()) {
      const Part& part = slot->part;
      if (part.first) {
        all.clear();
        good = true;
      }
      good = good && slot->made;
      if (good) all.push_back(std::move(*slot->made));
      if (!part.last) continue;
      if (good)
        take(part.of->routine, std::move(all));
      else
        complain(wrong_with(part.of->routine));
    }
  });
}

}  // namespace landdrill
