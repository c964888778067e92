// Some panels of a list as blocks of one version of a routine, or what is wrong with them, cell by cell.
//
//   ListedBlocks some = listed_blocks(kept_routine, list, {{&panel, ""}});
//   some.blocks[0].text      // panel 2026-05-09 "Tarn Open"\n  element 2: 7.25 7.50 ...
//
// They go through the same checks as the panels of a sheet.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "engine/season/kept_sheets.h"
#include "engine/season/marks_apart.h"
#include "grammar/diagnostics.h"
#include "grammar/span.h"
#include "tables/marks_list.h"
#include "tables/store/book.h"

namespace landdrill {

struct OnePanel {
  const ListedPanel* listed = nullptr;
  std::string kept;  // its text when it is in the book: the marks of the list are put into it
};

struct ListedBlocks {
  std::vector<Block> blocks;
  std::vector<MarksApart> marks;  // for each block
  std::vector<Diagnostic> wrong;  // with any, there are no blocks
};

// `list`: from the first of the panels on.
ListedBlocks listed_blocks(const KeptSheet& routine, const Source& list, std::span<const OnePanel> panels);

}  // namespace landdrill
