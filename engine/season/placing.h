// What becomes of the runs and panels of sheets that are added again beside a changed routine.
//
//   Placing placing(book, editions);   placing.read();
//   placing.place(blocks)->at(2).block.of     // the version that the corrected panel stays with
//
// What was swum stays swum: new words of a panel are a correction, and it stays with the version that it was
// swum as, unless they do not fit it. New words of a run go with the version beside them, and, when the old
// ones would have done there, with the version that the run counts with too. Where several versions of a
// routine are added at once, everything belongs to the one that it stands below.
#pragma once

#include <cstddef>
#include <map>
#include <string>
#include <string_view>
#include <tuple>
#include <vector>

#include "engine/files/sheet_reader.h"
#include "engine/files/value_sets.h"
#include "engine/season/kept_sheets.h"
#include "grammar/ast.h"
#include "tables/folder.h"
#include "tables/load.h"
#include "tables/store/book.h"

namespace landdrill {

// How the marks of a panel differ from what they were.
//
//   marks_apart("panel 2026-05-09\n  element 2: 7.25 7.50\n", "panel 2026-05-09\n  element 2: 7.25\n").gone      // 1

// How many marks there were, how many of these are another now or are
// gone, how many are new; and of how many elements that it had the base mark is given now, or no longer.
struct MarksApart {
  std::size_t there = 0, changed = 0, gone = 0, added = 0, based = 0, unbased = 0;

  bool any() const { return changed + gone + added + based + unbased > 0; }
};
MarksApart marks_apart(const ast::Lines& before, const ast::Lines& now);
MarksApart marks_apart(std::string_view before, std::string_view now);

struct Placed {
  enum class Why {
    as_given,
    same_words,  // a routine in the words of its latest version: if it is a new one, the value set changed
    stays,       // with `version`, in new words
    moves,       // away from `version`, which its new words do not fit
    corrected,   // a run: also with `version`, which it counts with
    left         // with `version`: it is there, and does not fit the routine above it
  } why = Why::as_given;
  Block block;
  int version = 0;
  int again = 0;                 // of a panel: which of its older words these are, if they are
  bool corrected_since = false;  // of one that is left
  MarksApart marks = {};         // of a panel that is kept in other words: how its marks differ
};

class Placing {
 public:
  // Both outlive this. `editions`: those of the blocks.
  Placing(const Book& book, const std::vector<TableFiles>& editions);
  Result<void> read();
  // In the order of the blocks, and now and then one more. What has its version said already is left there.
  Result<std::vector<Placed>> place(std::vector<Block> blocks);
  // The run or panel of this name and text that is kept, whatever the event; nullptr when there is none. Throws Refused.
  const KeptBlock* kept_as(const Block& block) const;

 private:
  using RoutineName = std::pair<std::string, std::string>;  // with the event
  using Name = std::tuple<Block::What, std::string, std::string, std::string, std::string>;
  template <class AnyBlock>
  static Name name_of(const AnyBlock& block) {
    return {block.what, block.routine, block.event, block.date, block.title};
  }

  bool fits(const KeptBlock& version, const std::string& text);
  bool fits_beside(const Block& routine, const std::string& text);
  bool is_kept_as(const Block& routine, const KeptBlock& version);
  Placed place_routine(Block block);
  Placed place_panel(Block block);
  Placed leave(Block block);
  int older_words(const Block& panel) const;
  void place_run(Block block, const Block& beside, std::vector<Placed>& placed);

  const Book& book_;
  const std::vector<TableFiles>& editions_;
  KeptSheets kept_;
  std::map<RoutineName, std::vector<KeptBlock>> routines_;  // every version, oldest first
  std::map<std::int64_t, const KeptBlock*> versions_;       // the same, by entry
  std::map<Name, std::vector<KeptBlock>> swum_;             // in all words, oldest first
  std::map<std::size_t, ReadSet> sets_;                     // by edition
};

// A sheet whose routine was changed so that runs or panels below it fit it no longer, without those of them
// that the book has already in these very words.
//
//   const auto rest = fitting_rest(sheet, placing);
//   (*rest)->sheet.ok()       // nothing else is wrong with it
//   (*rest)->left[0].of       // the version that the first one that was left out belongs to

struct FittingRest {
  StreamSheet sheet;  // its lines stand where they stood
  std::vector<Block> left;
};

// Given a sheet with errors; empty when nothing of it can be left out.
Result<std::optional<FittingRest>> fitting_rest(const StreamSheet& sheet, Placing& placing);

// What there is to say of blocks that were added to the book: which version they belong to, and why.
//
//   AddedNotes notes(file, swum_until(book), shell_quoted);      // before they are added
//   notes.of(placed, added)
//   // {"the panel of 2026-05-09 \"Tarn Open\" has new words; it stays with ..."}

// For each routine (title, event) and each of its versions the last day on which a panel saw it.
using SwumUntil = std::map<std::pair<std::string, std::string>, std::map<int, std::string>>;
Result<SwumUntil> swum_until(const Book& book);

class AddedNotes {
 public:
  // A word of a command as a shell reads it again.
  using Quoted = std::string (*)(std::string_view word);
  // `book`: the file, for commands.
  AddedNotes(std::string book, SwumUntil until, Quoted quoted)
      : book_(std::move(book)), until_(std::move(until)), quoted_(quoted) {}
  // Whole sentences, some with a hint on a line of its own.
  std::vector<std::string> of(const std::vector<Placed>& placed, const std::vector<AddedBlock>& added) const;

 private:
  std::string staying(const std::vector<Placed>& placed, const std::vector<AddedBlock>& added,
                      std::size_t routine) const;
  static std::string all_left(const std::vector<Placed>& placed);
  static std::string of_marks(const Placed& placed, const AddedBlock& added);
  std::string of_block(const Placed& placed, const AddedBlock& added) const;
  std::string too_late(const Block& block, const AddedBlock& added) const;
  std::string move_to(const Block& block, int version) const;

  const std::string book_;
  const SwumUntil until_;
  const Quoted quoted_;
};

}  // namespace landdrill
