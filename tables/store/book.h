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
//
// A panel belongs to the version of the routine that stood beside it when it was first kept in these words:
// the same words beside a changed routine do not move it. New words belong to the version beside them, unless
// it is said (Block::of) that they are of another. A run goes with every version whose sheet had it, because
// what that sheet expects may rest on it; it counts with the first of these.
#pragma once

#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "tables/folder.h"
#include "tables/load.h"
#include "tables/store/season.h"

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

// What counts with a version of a routine: the runs that its sheet was the first to have, and the panels that
// belong to it.
struct SwumWith {
  std::vector<std::pair<std::string, std::string>> runs;  // dates and titles, in order
  std::vector<std::int64_t> panels;  // entries of the latest words, in the order of a sheet
};

// The text of an entry as it stands in the file, which nobody has looked at yet.
struct StoredText {
  std::int64_t id = 0;
  std::string text;
  std::optional<std::int64_t> checksum;  // that it was kept with

  // Whether it is what was kept. May be asked by any thread; see Book::damaged.
  bool sound() const;
};

class Book {
 public:
  // The season outlives the book; opened to write for `add`.
  explicit Book(Season& season) : season_(season) {}

  // Until it is gone nobody else changes the season file, so that what is added can rest on what was read.
  // What is done meanwhile is kept by `commit` alone.
  class Hold {
   public:
    Hold(Hold&&) noexcept;
    Hold& operator=(Hold&&) noexcept;
    ~Hold();
    Result<void> commit();

   private:
    friend class Book;
    struct Inside;
    explicit Hold(std::unique_ptr<Inside> inside);
    std::unique_ptr<Inside> inside_;
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
  // Given versions of one routine, by their entries: for each what counts with it and fits the wish, whose
  // event and versions do not matter here.
  Result<std::vector<SwumWith>> swum(std::span<const std::int64_t> versions, const BookWish& wish) const;
  // The texts of the first of these entries, until there are `enough` bytes of them: at least one.
  Result<std::vector<StoredText>> stored(std::span<const std::int64_t> entries, std::size_t enough) const;
  // What there is to say of an entry whose text is not sound.
  Trouble damaged(std::int64_t entry) const;
  // Sheets that bring a version of a routine with everything in all its words into another book, or change
  // nothing in this one, when they are added after those of the versions before: the first words of each run
  // and panel, then the second of those that have some, and so on. Words of a panel that were replaced by
  // words beside an earlier version are left out.
  Result<std::vector<std::string>> sheets_of_all_words(std::int64_t routine) const;
  // In the order in which they came.
  Result<std::vector<KeptEdition>> editions() const;
  // The set with which blocks were added, byte for byte.
  Result<TableFiles> edition(std::int64_t edition) const;
  // Whatever the damage.
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
