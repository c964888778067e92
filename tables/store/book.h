// The season book: every version of the club's routines, of the runs of them and of the recorded panels, kept
// as sheet text in the season file, each with the edition of the value set it was swum under.
//
//   Book book(*season);
//   book.add({{Block::What::routine, "Harbour Lights", "duet-free", "", "", "routine \"Harbour
//   Lights\"\n...", 0}},
//            {kingfisher});                    // {added, version 1}
//   book.sheet(book.find({"harbour"})->front().id)    // the text again: routine, its runs, its panels
//
// Nothing is overwritten: another text for the same routine, run or panel is a new version, the same text is
// no change. An `add` is one transaction: all of it is on disk when it returns, or nothing is.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "tables/store/season.h"

namespace landdrill {

// A routine, a run of it or a panel of it, in the words of the sheet language. A run or a panel belongs to
// the version of the routine that was added with it or, without one, to the latest.
struct Block {
  enum class What { routine, run, panel } what = What::routine;
  std::string routine, event;  // title and event code: together they name the routine
  std::string date, title;     // of a run or a panel; empty for a routine
  std::string text;            // tidied, whole lines
  std::size_t edition = 0;     // index into the editions given with it
};
std::string_view word_of(Block::What what);  // "routine", "run", "panel"

struct KeptBlock {
  std::int64_t id = 0;
  Block::What what = Block::What::routine;
  std::string routine, event, date, title, kept_at;
  int version = 1, versions = 1;  // this one, and how many there are
  std::int64_t of_routine = 0;    // for a run or a panel: the routine's version it belongs to
  std::int64_t edition = 0;       // which edition of the value set
  std::string set;                // its name
};
struct AddedBlock {
  enum class Did { added, new_version, already_there } did = Did::added;
  std::int64_t id = 0;
  int version = 1;
};

// Which blocks: all that fit every wish.
struct BookWish {
  std::string words;  // all of them in the routine's title or the block's, case aside; empty: any
  std::optional<Block::What> what;
  std::string event, from, until;  // dates as written, both included; empty: any
  bool all_versions = false;       // else the latest of each only
};

class Book {
 public:
  // The season outlives the book; opened to write for `add`.
  explicit Book(Season& season) : season_(season) {}

  // In order: a routine before its runs and panels. Refused when a run or a panel belongs to no routine.
  Result<std::vector<AddedBlock>> add(const std::vector<Block>& blocks,
                                      const std::vector<TableFiles>& editions);
  // By routine, then routine, runs and panels by date.
  Result<std::vector<KeptBlock>> find(const BookWish& wish) const;
  Result<std::string> text(std::int64_t block) const;
  // A version of a routine with the latest versions of its runs and panels: a whole sheet.
  Result<std::string> sheet(std::int64_t routine) const;
  // The set with which blocks were added, byte for byte.
  Result<TableFiles> edition(std::int64_t edition) const;
  // A copy of the whole season file as it is now, also while others work with it. Refused when `to` is there.
  Result<void> back_up(const std::filesystem::path& to) const;

  // The season file is from now on what the backup was. Refused when the backup is damaged or no season file.
  Result<void> restore(const std::filesystem::path& backup);

 private:
  Season& season_;
};

}  // namespace landdrill
