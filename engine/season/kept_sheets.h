// Sheets read back from the season book, each with the edition of the value set it was swum under.
//
//   KeptSheets kept(book);
//   auto sheets = kept.read(*versions_of(book, {"harbour"}));     // (*sheets)[0]->sheet.routine()->panels
#pragma once

#include <deque>
#include <map>
#include <memory>
#include <set>
#include <string>
#include <string_view>
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

// The text of a version of a routine with its runs and panels.
struct KeptText {
  KeptBlock routine;
  std::string text;
};
// Versions of routines, by KeptBlock::id.
using Versions = std::set<std::int64_t>;
// Those that the wish finds, or whose runs and panels it finds.
Result<Versions> versions_of(const Book& book, const BookWish& wish);
// In the order of the book.
Result<std::vector<KeptText>> kept_texts(const Book& book, const Versions& versions);

// The same as whole sheets, one after the other; with wish.all_versions in all the words that they ever had.
Result<std::vector<std::string>> sheets_in(const Book& book, const BookWish& wish);

// A text as a sheet of this version.
KeptSheet kept_sheet(const KeptBlock& routine, std::string text, const ReadSet& set);

class KeptSheets {
 public:
  explicit KeptSheets(const Book& book) : book_(book) {}
  // Those of kept_texts. They live as long as this.
  Result<std::vector<const KeptSheet*>> read(const Versions& versions);
  // The routine that was swum, with this version of a panel (or a run) of it alone.
  Result<const KeptSheet*> read_alone(const KeptBlock& block, const KeptBlock& routine);
  // `text` as a sheet of this version of the routine, with its edition.
  Result<const KeptSheet*> understood(const KeptBlock& routine, std::string text);
  // Read once. It lives as long as this.
  Result<const ReadSet*> set_of(std::int64_t edition);

 private:
  const Book& book_;
  std::map<std::int64_t, std::unique_ptr<ReadSet>> sets_;  // by edition
  std::deque<KeptSheet> sheets_;
};

}  // namespace landdrill
