// The blocks of the season book: a routine, a run or a panel as it is given, as it is kept, and what is asked for.
//
//   BookWish{"harbour", Block::What::panel}     // the panels of every routine with this word in its title
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <tuple>
#include <vector>

#include "tables/store/database.h"

namespace landdrill {

// A routine, a run of it or a panel of it, in the words of the sheet language. What comes without a routine
// beside it belongs to the version that it belonged to before or, when it is new, to the latest.
struct Block {
  enum class What { routine, run, panel } what = What::routine;
  std::string routine, event;  // title and event code: together they name the routine
  std::string date, title;     // of a run or a panel; empty for a routine
  std::string text;            // tidied, whole lines
  std::size_t edition = 0;     // index into the editions given with it
  std::int64_t of = 0;         // of a run or a panel: the version it is said to belong to, as KeptBlock::id
};
std::string_view word_of(Block::What what);  // "routine", "run", "panel"

struct KeptBlock {
  std::int64_t id = 0;
  Block::What what = Block::What::routine;
  std::string routine, event, date, title, kept_at;
  int version = 1, versions = 1;  // this one, and how many there are
  std::int64_t of_routine = 0;    // for a run or a panel: the routine's version it belongs to,
  int of_version = 0;             // its number,
  int routine_versions = 0;       // and for all, how many versions of the routine there are
  std::int64_t edition = 0;       // which edition of the value set
  std::string set;                // its name
};
struct AddedBlock {
  enum class Did { added, new_version, already_there } did = Did::added;
  std::int64_t id = 0;
  int version = 1;
  int of_version = 0;        // of a run or a panel: the version of the routine that it belongs to,
  int beside = 0;            // and the version beside it in this add; 0 when there was none
  int routine_versions = 0;  // how many there are of the routine now
  std::string set;           // the name of the value set that it is priced from
};

// An edition of a value set that something was swum under.
struct KeptEdition {
  std::int64_t id = 0;
  std::string name, title, edition;  // the set's name, and what it says of itself
  std::string kept_at, first_for;    // when it came, and with which routine
};

// What can still be read of a damaged book: sheets as of sheets_of_all_words, and the names of what cannot.
struct Rescued {
  std::vector<std::string> sheets, lost;
};

// Which blocks: all that fit every wish.
struct BookWish {
  std::string words;  // all of them in the routine's title or the block's, case aside; empty: any
  std::optional<Block::What> what;
  std::string event, from, until;  // dates as written, both included; empty: any
  bool all_versions = false;       // else the latest of each only, a run with the version it counts with
};

}  // namespace landdrill

// All that follows is for inside the caller's transaction.
namespace landdrill::store {

// Of texts that are given one after the other, those that are history already: the longest beginning that
// occurs among the kept ones in this order, up to the last of these. The place of each among the kept ones;
// the same text twice in a row is in one place.
//
//   kept_before({"a", "b", "c"}, {"a", "x", "b"})      // {0, 2}
//   kept_before({"a"}, {"a", "b"})                     // {}: the older text is in force again
std::vector<std::size_t> kept_before(const std::vector<std::string_view>& given,
                                     const std::vector<std::string_view>& kept);

// "the panel 2026-05-09 \"Tarn Open\" of Harbour Lights"
std::string name_of_entry(Database& db, std::int64_t id);
// The names of texts that are no longer what was kept: of entries, and of files of editions.
std::vector<std::string> damaged_texts(Database& db);

// An entry of the book, for telling another book what this one knows.
struct BookEntry {
  std::string what, date, title;
  std::int64_t id = 0, routine = 0, version = 0;
  // The version of the routine it belongs to, by its id: later versions have greater ones.
  std::int64_t home = 0;
  std::string text;
  auto place() const { return std::tie(what, date, title); }
};

// Takes their home from the words of runs and panels that a book need not be told to end up with the same, as of
// one panel, with homes and words: {1, "a"}, {2, "b"}, {1, "c"}: the second. Those of one name follow each other,
// oldest first.
void leave_out_what_need_not_be_told(std::vector<BookEntry>& entries);

// The routine with the first words of all that was swum, then with the second of what has some, and so on.
std::vector<std::string> sheets_of(const std::string& routine, const std::vector<BookEntry>& swum);

}  // namespace landdrill::store
