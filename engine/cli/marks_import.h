// Recorded marks from a spreadsheet, checked against the routines of the book, as panels that the book can
// keep.
//
//   ListHomes homes(book);   homes.read();
//   Imported made = *panels_from(read_marks_list(list, diagnostics), list, homes)
//   made.blocks[0].text      // panel 2026-05-09 "Tarn Open"\n  element 2: 7.25 7.50 ...
//
// The panels go through the same checks as those of a sheet; what is wrong is said at its row and column of
// the list.
#pragma once

#include <map>
#include <tuple>

#include "engine/cli/kept_sheets.h"
#include "tables/marks_list.h"

namespace landdrill::cli {

struct Imported {
  std::vector<Block> blocks;  // `edition` is an index into `editions`
  std::vector<TableFiles> editions;
  std::size_t marks = 0;
  Diagnostics diagnostics;  // with errors the blocks are not to be kept
};

// The versions of routines that panels of a list belong to: that to which they belong already, or the latest.
class ListHomes {
 public:
  explicit ListHomes(const Book& book) : book_(book), sheets_(book) {}
  Result<void> read();
  const std::vector<const KeptSheet*>& latest() const { return latest_; }
  // Given the latest version of the panel's routine.
  Result<const KeptSheet*> of(const ListedPanel& panel, const KeptSheet& latest);

 private:
  using Name = std::tuple<std::string, std::string, std::string, std::string>;  // with event, date and meet
  const Book& book_;
  KeptSheets sheets_;
  std::vector<const KeptSheet*> latest_;
  std::map<Name, std::int64_t> older_;  // panels of older versions
  std::map<std::int64_t, const KeptSheet*> versions_;
};

Result<Imported> panels_from(const std::vector<ListedPanel>& panels, const Source& list, ListHomes& homes);

}  // namespace landdrill::cli
