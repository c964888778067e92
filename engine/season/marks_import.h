// Recorded marks from a spreadsheet, checked against the routines of the book, as panels that the book can
// keep.
//
//   ListHomes homes(book, 0);   homes.read();
//   Imported made = *panels_from(read_marks_list(list, diagnostics), list, homes)
//   made.blocks[0].text      // panel 2026-05-09 "Tarn Open"\n  element 2: 7.25 7.50 ...
//
// The marks of a panel that is kept already are put into it: what the list does not speak of stays. The
// panels go through the same checks as those of a sheet; what is wrong is said at its row and column of the
// list.
#pragma once

#include "engine/season/list_homes.h"
#include "engine/season/marks_apart.h"
#include "grammar/diagnostics.h"
#include "grammar/span.h"
#include "tables/folder.h"
#include "tables/load.h"
#include "tables/marks_list.h"
#include "tables/store/book.h"

namespace landdrill {

struct Imported {
  std::vector<Block> blocks;      // `edition` is an index into `editions`
  std::vector<MarksApart> marks;  // for each block: what the list did to the panel that was kept
  std::vector<TableFiles> editions;
  Diagnostics diagnostics;  // with errors the blocks are not to be kept
};

Result<Imported> panels_from(const std::vector<ListedPanel>& panels, const Source& list, ListHomes& homes);

}  // namespace landdrill
