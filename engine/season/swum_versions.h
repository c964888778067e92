// Routines of the book as they were when a panel saw them, version after version, and what came of each: what was
// changed later does not change what was known then.
//
//   AsSwum book_of(book, wish);
//   book_of.for_each(version_swum, take, complain);    // one version after the other that something was swum of
//   book_of.found();                                   // whether there was any
//
// Which version a panel belongs to, the book says (book.h). A run that several versions have counts with the
// first of them alone. Versions are worked on by all processors, few at a time.
#pragma once

#include <cstddef>
#include <cstdint>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <type_traits>
#include <utility>
#include <vector>

#include "engine/files/in_order.h"
#include "engine/files/value_sets.h"
#include "engine/judging/progress.h"
#include "engine/score/account.h"
#include "engine/score/totals.h"
#include "engine/season/kept_sheets.h"
#include "grammar/diagnostics.h"
#include "tables/folder.h"
#include "tables/store/book.h"

namespace landdrill {

// A version with all its runs, because an expectation may rest on an older one, and the panels that the wish finds.
// `runs`, as many as the routine has: whether the wish finds it and it counts with this version.
struct Swum {
  KeptSheet kept;
  std::vector<bool> runs;
};

class AsSwum {
 public:
  AsSwum(const Book& book, const BookWish& wish) : book_(book), sheets_(book), wish_(wish) {}
  // `make(swum)` of every version, of several at once; then here, in the order of the book, `take(routine, made)`, or
  // `complain(diagnostics)` of one that is in error. The value sets live as long as this.
  template <class Make, class Take, class Complain>
  Result<void> for_each(Make make, Take take, Complain complain);
  bool found() const { return !versions_.empty(); }

 private:
  struct Version {
    KeptBlock routine;
    std::vector<std::pair<std::string, std::string>> runs;  // that count with it: days and titles, in order
    std::vector<std::int64_t> panels;                       // the same: entries
  };
  void find_versions();
  // The routine with its runs and the panels that are found.
  std::string text_of(const Version& version) const;
  static Swum swum(const Version& version, std::string text, const ReadSet& set);
  Diagnostics wrong_with(const KeptBlock& routine);

  // Of text that waits for its turn: a version with a thousand panels has half a million.
  static constexpr std::size_t most_bytes = 4 * 1024 * 1024;
  const Book& book_;
  KeptSheets sheets_;
  const BookWish wish_;
  std::vector<Version> versions_;  // that something was swum of, in the order of the book
};

template <class Make, class Take, class Complain>
Result<void> AsSwum::for_each(Make make, Take take, Complain complain) {
  struct Slot {
    const Version* of = nullptr;
    const ReadSet* set = nullptr;
    std::string text;
    std::optional<std::invoke_result_t<Make, const Swum&>> made;
  };
  std::size_t begun = 0;
  const auto fill = [&](Slot& slot) -> std::optional<std::size_t> {
    if (begun == versions_.size()) return std::nullopt;
    slot.of = &versions_[begun++];
    slot.set = &sheets_.set_of(slot.of->routine.edition);
    slot.text = text_of(*slot.of);
    return slot.text.size();
  };
  const auto work = [&](Slot& slot) {
    const Swum one = swum(*slot.of, std::move(slot.text), *slot.set);
    if (one.kept.sheet.routine()) slot.made = make(one);
  };
  return store::attempt([&] {
    find_versions();
    InOrder<Slot> order(fill, work, most_bytes);
    order.ahead();
    while (Slot* slot = order.next()) {
      if (slot->made)
        take(slot->of->routine, std::move(*slot->made));
      else
        complain(wrong_with(slot->of->routine));
    }
  });
}

// Panels of the book scored again, beside what the coach could expect before their day.
//
//   panel_scores(swum)[0].totals.recorded      // 209.7167, by the values of that day

struct PanelScore {
  std::string date, title;
  Totals totals;
  Unmarked without_total, without_estimate;  // why there is none
};

// Of a sheet with a routine. An estimate rests on runs of earlier days than the panel alone.
std::vector<PanelScore> panel_scores(const Swum& swum);

// What the club swam under each edition of a value set.
//
//   (*swum_by_edition(book, {}))[edition.id].panels       // 3

// What was swum under one edition.
struct SwumUnder {
  std::set<std::pair<std::string, std::string>> routines;  // title and event
  std::set<std::int64_t> versions;
  std::size_t runs = 0, panels = 0;
};

// Of what the wish finds, by KeptEdition::id.
Result<std::map<std::int64_t, SwumUnder>> swum_by_edition(const Book& book, BookWish wish);

struct SwumVersion {
  std::string event_title;
  ProgressVersion version;
};

// Of a sheet with a routine.
SwumVersion version_swum(const Swum& swum);

// How the routines of the season book went.
//
//   SwumVersions versions;
//   versions.add(routine, version_swum(swum));       // in the order of the book
//   versions.all()[0].versions

class SwumVersions {
 public:
  void add(const KeptBlock& version, SwumVersion swum);
  // The latest version of each routine too, when nothing was swum of it yet.
  Result<void> add_latest(const Book& book);
  std::vector<SeasonProgress> all();

 private:
  struct OfRoutine {
    KeptBlock last;
    std::string event_title;
    std::vector<ProgressVersion> versions;
  };
  std::vector<OfRoutine> routines_;
};

}  // namespace landdrill
