// Recorded marks from a spreadsheet, checked against the routines of the book, as panels that the book can
// keep.
//
//   ListHomes homes(book, 0);   homes.read();
//   Imported made = *panels_from(read_marks_list(list, diagnostics), list, homes)
//   made.panels[0].block.text      // panel 2026-05-09 "Tarn Open"\n  element 2: 7.25 7.50 ...
//
// The marks of a panel that is kept already are put into it: what the list does not speak of stays. The
// panels go through the same checks as those of a sheet; what is wrong is said at its row and column of the
// list.
#pragma once

#include <cstdint>
#include <map>
#include <span>
#include <string>
#include <string_view>
#include <tuple>
#include <vector>

#include "engine/season/kept_sheets.h"
#include "engine/season/placing.h"
#include "grammar/ast.h"
#include "grammar/blocks.h"
#include "grammar/diagnostics.h"
#include "grammar/span.h"
#include "tables/folder.h"
#include "tables/load.h"
#include "tables/marks_list.h"
#include "tables/store/book.h"

namespace landdrill {

// Which version of its routine a panel of a list belongs to, and in which words it is kept already.
//
//   ListHomes homes(book, 0);   homes.read();
//   homes.of(panel, *homes.latest()[0])->version       // the latest, or that to which it belongs already

// Panels belong to the version that is said, or to that to which they belong already, or to the latest.
class ListHomes {
 public:
  // `said`: the number of a version, or 0.
  ListHomes(const Book& book, int said) : book_(book), said_(said), sheets_(book) {}
  Result<void> read();
  const std::vector<const KeptSheet*>& latest() const { return latest_; }
  int said() const { return said_; }

  struct Home {
    const KeptSheet* version = nullptr;  // nullptr when there is none of the number that is said
    std::string kept;                    // the panel's text; empty when it is new
  };
  // Given the latest version of the panel's routine. Throws Refused.
  Home of(const ListedPanel& panel, const KeptSheet& latest);
  // How the book has the meet of that day, when this is another spelling of it; empty otherwise.
  std::string spelled_otherwise(const ListedPanel& panel, const KeptBlock& routine) const;
  // What a list makes of a panel: another list goes on from that.
  void take(const Block& panel, int of_version);
  // The same routine; nullptr when it has none of this number. Throws Refused.
  const KeptSheet* version(const KeptSheet& latest, int number);

 private:
  using Name = std::tuple<std::string, std::string, std::string, std::string>;  // with event, date and meet
  struct Kept {
    std::int64_t entry = 0;  // 0: it is not in the book yet, and this is its text
    int of_version = 0;
    std::string text = {};
  };
  const Book& book_;
  const int said_;
  KeptSheets sheets_;
  std::vector<const KeptSheet*> latest_;
  std::map<Name, Kept> panels_;
  std::map<std::tuple<std::string, std::string, int>, std::int64_t> entries_;  // of versions
  std::map<std::int64_t, const KeptSheet*> versions_;
};

struct Imported {
  std::vector<Placed>
      panels;  // with what the list did to those that were kept; `edition`: place in `editions`
  std::vector<TableFiles> editions;
  Diagnostics diagnostics;  // with errors the panels are not to be kept
};

Result<Imported> panels_from(const std::vector<ListedPanel>& panels, const Source& list, ListHomes& homes);

// A panel of a list as lines of the sheet language: views into the list, so that what is wrong with one is said of its
// cell.
//
//   Spellings spellings;
//   print(written(panel, aspects, spellings).lines)
//   // panel 2026-05-09 "Tarn Open"
//   //   element 2: 7.25 7.50
//   written_into("panel 2026-05-09 \"Tarn Open\"\n  element 2: 7.25 7.25\n  penalty: overtime\n", panel, {}, spellings)
//   // the same, but with judge 2's 7.50; the penalty stays

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
//   some.panels[0].block.text      // panel 2026-05-09 "Tarn Open"\n  element 2: 7.25 7.50 ...
//
// They go through the same checks as the panels of a sheet.

struct OnePanel {
  const ListedPanel* listed = nullptr;
  std::string kept;  // its text when it is in the book: the marks of the list are put into it
};

struct ListedBlocks {
  std::vector<Placed> panels;     // as they are given, with what the list did to kept ones
  std::vector<Diagnostic> wrong;  // with any, there are no panels
};

// `list`: from the first of the panels on.
ListedBlocks listed_blocks(const KeptSheet& routine, const Source& list, std::span<const OnePanel> panels);

}  // namespace landdrill
