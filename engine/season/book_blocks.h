// What the season book keeps of a sheet: the tidied text of the routine, of each run and of each panel.
//
//   blocks_of(sheet, 0)     // {routine "Harbour Lights"}, {run 2026-04-14}, {panel 2026-05-09 "Tarn Open"}
#pragma once

#include <string_view>
#include <vector>

#include "engine/routine/sheet.h"
#include "grammar/diagnostics.h"
#include "grammar/span.h"
#include "tables/store/book.h"

namespace landdrill {

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

}  // namespace landdrill
