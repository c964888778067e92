// The season book: every version of the club's routines, of the runs of them and of the recorded panels, kept
// as sheet text in the season file, each with the edition of the value set it was swum under.
//
//   Book book(*season);
//   const std::string text = "routine \"Harbour Lights\"\n...";
//   book.add({{Block::What::routine, "Harbour Lights", "duet-free", "", "", text}}, {kingfisher});
//   // {added, version 1}
//   book.sheet(book.find({"harbour"})->front().id)    // the text again: routine, its runs, its panels
//
// Nothing is overwritten: another text for the same routine, run or panel is a new version, the same text is
// no change. An `add` is one transaction: all of it is on disk when it returns, or nothing is.
//
// A panel belongs to the version of the routine that stood beside it when it was first kept in these words:
// the same words beside a changed routine do not move it. New words belong to the version beside them, unless
// it is said (Block::of) that they are of another. A run goes with every version whose sheet had it, because
// what that sheet expects may rest on it; it counts with the first of these.
#pragma once

#include <memory>
#include <string>
#include <utility>
#include <vector>

#include "tables/folder.h"
#include "tables/load.h"
#include "tables/store/database.h"
#include "tables/store/kept_blocks.h"  // IWYU pragma: export
#include "tables/store/season.h"       // IWYU pragma: export

namespace landdrill {

class Book {
 public:
  // The season outlives the book; opened to write for `add`.
  explicit Book(Season& season) : season_(season) {}

  // Until it is gone nobody else changes the season file, so that what is added can rest on what was read.
  // What is done meanwhile is kept by `commit` alone.
  class Hold {
   public:
    Result<void> commit();

   private:
    friend class Book;
    explicit Hold(std::unique_ptr<store::Transaction> transaction) : transaction_(std::move(transaction)) {}
    std::unique_ptr<store::Transaction> transaction_;
  };
  // Waits for others, for a time that a long list takes.
  Result<Hold> hold();

  // In order: a routine before its runs and panels. Several versions of a routine that come one after the
  // other are history: those that are kept in the same order are recognised. Refused when a run or a panel
  // belongs to no routine.
  Result<std::vector<AddedBlock>> add(const std::vector<Block>& blocks,
                                      const std::vector<TableFiles>& editions);
  // By routine, then routine, runs and panels by date.
  Result<std::vector<KeptBlock>> find(const BookWish& wish) const;
  Result<std::string> text(std::int64_t block) const;
  // A version of a routine with its runs and panels, each in its latest words: a whole sheet.
  Result<std::string> sheet(std::int64_t routine) const;
  // The same without panels.
  Result<std::string> sheet_without_panels(std::int64_t routine) const;
  // Sheets that bring a version of a routine with everything in all its words into another book, or change
  // nothing in this one, when they are added after those of the versions before: the first words of each run
  // and panel, then the second of those that have some, and so on. Words of a panel that were replaced by
  // words beside an earlier version are left out.
  Result<std::vector<std::string>> sheets_of_all_words(std::int64_t routine) const;
  // In the order in which they came.
  Result<std::vector<KeptEdition>> editions() const;
  // The set with which blocks were added, byte for byte.
  Result<TableFiles> edition(std::int64_t edition) const;
  // What can still be read, whatever the damage.
  Result<Rescued> rescue() const;
  // A copy of the whole season file as it is now, also while others work with it. Refused when `to` is there or
  // its folder takes no new file.
  Result<void> back_up(const std::filesystem::path& to) const;

  // The season file is from now on what the backup was. Refused when the backup is damaged, no season
  // file, or this file itself.
  Result<void> restore(const std::filesystem::path& backup);

 private:
  Season& season_;
};

}  // namespace landdrill
