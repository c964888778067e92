// Sheets read back from the season book, each with the edition of the value set it was swum under.
//
//   KeptSheets kept(book);
//   kept.read(versions_of(book, {"harbour"}))[0]->sheet.routine()->panels
#pragma once

#include <deque>
#include <map>
#include <set>
#include <string>
#include <string_view>
#include <tuple>
#include <vector>

#include "engine/files/value_sets.h"
#include "engine/routine/sheet.h"
#include "grammar/diagnostics.h"
#include "grammar/span.h"
#include "tables/folder.h"
#include "tables/store/book.h"

namespace landdrill {

// What the season book keeps of a sheet: the tidied text of the routine, of each run and of each panel.
//
//   blocks_of(sheet, 0)     // {routine "Harbour Lights"}, {run 2026-04-14}, {panel 2026-05-09 "Tarn Open"}

// Given a sheet with a routine (sheet.ok()). Comments just above a run or a panel go with it. `edition`: as
// in Block.
std::vector<Block> blocks_of(const Sheet& sheet, std::size_t edition);

// What is wrong with a sheet whose runs or panels the book could not tell apart, though it may be scored.
Diagnostics called_the_same(const Sheet& sheet);

// A block, and the piece of the sheet's text that it is made of: whole lines without the last one's ending.
struct TypedBlock {
  Block block;
  const Source* source = nullptr;
  std::string_view typed;
};
// The same of a sheet that may have errors: title and event of the routine are as typed.
std::vector<TypedBlock> typed_blocks(const Sheet& sheet);

// A version of a routine with its runs and panels.
struct KeptSheet {
  KeptBlock routine;
  Sheet sheet;  // without a routine when the edition no longer loads: its messages say so
  const ReadSet* set = nullptr;
};

// Versions of routines, by KeptBlock::id.
using Versions = std::set<std::int64_t>;
// Those that the wish finds, or whose runs and panels it finds. Throws Refused.
Versions versions_of(const Book& book, const BookWish& wish);
// The same as whole sheets, in the order of the book; with wish.all_versions in all the words that they ever had.
Result<std::vector<std::string>> sheets_in(const Book& book, const BookWish& wish);

// A text as a sheet of this version.
KeptSheet kept_sheet(const KeptBlock& routine, std::string text, const ReadSet& set);

class KeptSheets {
 public:
  explicit KeptSheets(const Book& book) : book_(book) {}
  // In the order of the book. They live as long as this, as all that follows. Throws Refused.
  std::vector<const KeptSheet*> read(const Versions& versions);
  // The routine that was swum, with this version of a panel (or a run) of it alone.
  Result<const KeptSheet*> read_alone(const KeptBlock& block, const KeptBlock& routine);
  // `text` as a sheet of this version of the routine, with its edition. Throws Refused.
  const KeptSheet& understood(const KeptBlock& routine, std::string text);
  // Read once. Throws Refused.
  const ReadSet& set_of(std::int64_t edition);

 private:
  const Book& book_;
  std::map<std::int64_t, ReadSet> sets_;  // by edition
  std::deque<KeptSheet> sheets_;
};

// The titles of the book and of what is being added to it, for finding one that is spelled in two ways.
//
//   Titles titles;
//   titles.take(panel_of_may("Tarn Open"));        // ""
//   titles.take(panel_of_may("Tarn open"));        // "Tarn Open"

// The letters and digits alone, in lower case as far as they are of ASCII: titles with the same ones differ
// in nothing but case, blanks or signs.
std::string bare_title(std::string_view title);

class Titles {
 public:
  // As it is in the book, where both spellings may be from before.
  void know(const KeptBlock& block);
  // The title of the same event or, of a run or panel, of the same routine and day that this one is another
  // spelling of; empty when there is none. Then it is known.
  std::string take(const Block& block);

 private:
  using Name = std::tuple<Block::What, std::string, std::string, std::string, std::string>;
  template <class SomeBlock>
  static Name name_of(const SomeBlock& block);

  std::map<Name, std::vector<std::string>> known_;
};

}  // namespace landdrill
