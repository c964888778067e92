// Routines of the book as they were when a panel saw them: what was changed later does not change what was
// known then.
//
//   AsSwum book_of(book);
//   book_of.find(wish);                        // whether there is anything
//   book_of.for_each(make, take, complain);    // one version after the other that something was swum of
//
// Which version a panel belongs to, the book says (book.h). A run that several versions have counts with the
// first of them alone. A version comes in parts with some of its panels each, worked on by all processors, so
// that a season of any length needs little memory.
#pragma once

#include <map>

#include "engine/cli/book_file.h"
#include "engine/cli/in_order.h"
#include "engine/cli/kept_sheets.h"
#include "engine/cli/messages.h"

namespace landdrill::cli {

// A version with all its runs, because an expectation may rest on an older one, and some of the panels that
// the wish finds. `runs`, as many as the routine has: whether the wish finds it and it counts with this
// version.
struct Swum {
  KeptSheet kept;
  std::vector<bool> runs;
};

class AsSwum {
 public:
  explicit AsSwum(const Book& book) : book_(book), sheets_(book) {}
  // False when nothing was swum of what the wish finds.
  Result<bool> find(BookWish wish);
  // `make(swum)` of every part, at several processors at once; then here, in the order of the book,
  // `take(routine, parts)` with all that was made of a version, or `complain(diagnostics)` of one that is in
  // error. The value sets live as long as this.
  template <class Make, class Take, class Complain>
  Result<void> for_each(Make make, Take take, Complain complain);

 private:
  using Names = std::vector<std::pair<std::string_view, std::string_view>>;  // dates and titles, in order
  struct Version {
    KeptBlock routine;
    Names runs;                        // that count,
    std::vector<std::int64_t> panels;  // and panels
  };
  struct Part {
    Swum swum;
    std::vector<StoredText> panels;
    const ReadSet* set = nullptr;
    const Version* of = nullptr;
    bool first = false, last = false;     // of its version
    std::optional<Trouble> trouble;       // why there is no more
    std::optional<std::int64_t> damaged;  // a panel
  };
  void count(const std::vector<KeptBlock>& found);
  std::optional<std::size_t> next(Part& part);
  Result<void> cut(Part& part);
  Result<void> start_version();
  static void put_in(Part& part);
  static void understand(Part& part);
  Result<Diagnostics> wrong_with(const KeptBlock& routine);

  const Book& book_;
  KeptSheets sheets_;
  std::vector<KeptBlock> found_;   // what names are views of
  std::vector<Version> versions_;  // in the order of the book
  std::size_t version_ = 0;        // of which parts are cut now:
  std::string head_;               // the routine with its runs
  std::size_t panel_ = 0;          // the first that was not in a part yet
  const ReadSet* set_ = nullptr;
  bool started_ = false;
};

template <class Make, class Take, class Complain>
Result<void> AsSwum::for_each(Make make, Take take, Complain complain) {
  using Made = std::invoke_result_t<Make, const Swum&>;
  struct Slot {
    Part part;
    std::optional<Made> made;
  };
  std::vector<Slot> slots(InOrder::slots());
  const auto work = [&](std::size_t slot) {
    auto& [part, made] = slots[slot];
    made.reset();
    if (part.trouble) return;
    put_in(part);
    if (part.damaged) return;
    understand(part);
    if (part.swum.kept.sheet.routine()) made = make(std::as_const(part.swum));
    part.swum.kept.sheet = {};
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

// The same with what the call asks of the book, and `print(worst)` at the end; says so when there is nothing.
template <class Make, class Take, class Print>
Exit with_swum(Call& call, Make make, Take take, Print print) {
  return with_book(call, [&](const Book& book, const BookWish& wish) {
    AsSwum as_swum(book);
    const auto found = as_swum.find(wish);
    if (!found) return refuse(call, found.error());
    if (!*found) return nothing_found(call, wish);
    Messages messages(call.streams);
    Exit worst = Exit::ok;
    const auto complain = [&](const Diagnostics& diagnostics) {
      messages.add(diagnostics);
      worst = Exit::errors;
    };
    const auto done = as_swum.for_each(make, take, complain);
    if (!done) return refuse(call, done.error());
    messages.finish();
    return print(worst);
  });
}

}  // namespace landdrill::cli
