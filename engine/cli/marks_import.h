// Recorded marks from a spreadsheet, checked against the routines of the book, as panels that the book can
// keep.
//
//   Imported made = panels_from(read_marks_list(list, diagnostics), list, book_routines)
//   made.blocks[0].text      // panel 2026-05-09 "Tarn Open"\n  element 2: 7.25 7.50 ...
//
// The panels go through the same checks as those of a sheet; what is wrong is said at its row and column of
// the list.
#pragma once

#include "engine/cli/kept_sheets.h"
#include "tables/marks_list.h"

namespace landdrill::cli {

struct Imported {
  std::vector<Block> blocks;  // `edition` is an index into `editions`
  std::vector<TableFiles> editions;
  std::size_t marks = 0;
  Diagnostics diagnostics;  // with errors the blocks are not to be kept
};
// `routines`: those of the book, the latest version of each.
Imported panels_from(const std::vector<ListedPanel>& panels, const Source& list,
                     const std::vector<const KeptSheet*>& routines);

}  // namespace landdrill::cli
