// A panel of a list as lines of the sheet language: views into the list, so that what is wrong with one is said of its
// cell.
//
//   Spellings spellings;
//   print(written(panel, aspects, spellings).lines)
//   // panel 2026-05-09 "Tarn Open"
//   //   element 2: 7.25 7.50
//   written_into("panel 2026-05-09 \"Tarn Open\"\n  element 2: 7.25 7.25\n  penalty: overtime\n", panel, {}, spellings)
//   // the same, but with judge 2's 7.50; the penalty stays
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "engine/season/kept_sheets.h"
#include "engine/season/placing.h"
#include "grammar/ast.h"
#include "grammar/blocks.h"
#include "grammar/diagnostics.h"
#include "grammar/span.h"
#include "tables/marks_list.h"
#include "tables/store/book.h"

namespace landdrill {

// They point into the list and into the spellings: marks are written with two places.
struct ListedLines {
  ast::Lines lines;
  MarksApart marks = {};  // of a panel that was there
  // Of the list: lines that give a judge's mark which another one gave already, and that one, which stands.
  struct Twice {
    const ListedPanel::Line *line, *first;
    std::string_view name;  // of the aspect as the event calls it; of an element as it is typed
    std::size_t judge = 0;  // the number of the seat
  };
  std::vector<Twice> twice = {};
};

// `aspects`: as the event calls them. A name that differs in case alone is that of the event.
ListedLines written(const ListedPanel& panel, std::span<const std::string> aspects, Spellings& spellings);

// Given a panel's text as it is kept. A mark of the list takes the place of the kept one; what the list does
// not speak of stays, and so does the wording of a mark with the same value. Where the list has a column for
// the base mark, it says it of each element that it has marks for. What is wrong with kept words is said of the
// line of the list that speaks of them, else of the panel's date.
ListedLines written_into(std::string_view kept, const ListedPanel& panel,
                         std::span<const std::string> aspects, Spellings& spellings);

// Lines of one panel as a block.
ast::Panel panel_of(const ast::Lines& lines);

// Some panels of a list as blocks of one version of a routine, or what is wrong with them, cell by cell.
//
//   ListedBlocks some = listed_blocks(kept_routine, list, {{&panel, ""}});
//   some.blocks[0].text      // panel 2026-05-09 "Tarn Open"\n  element 2: 7.25 7.50 ...
//
// They go through the same checks as the panels of a sheet.

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
