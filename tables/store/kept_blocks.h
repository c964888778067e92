// The blocks of the season book: a routine, a run or a panel as it is given, as it is kept, and what is asked for.
//
//   BookWish{"harbour", Block::What::panel}     // the panels of every routine with this word in its title
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
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

namespace landdrill::store {

// Finds blocks of the season book, in the order of the book: by routine, then routine, runs and panels by
// date.
//
//   find_blocks(db, {"harbour tarn"})     // the panels of Harbour Lights at the Tarn Open
//
// Inside the caller's transaction.

std::vector<KeptBlock> find_blocks(Database& db, const BookWish& wish);

}  // namespace landdrill::store
