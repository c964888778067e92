#include "engine/report/pages/values_compare.h"

#include "engine/report/amount_text.h"

namespace landdrill::report {
namespace {

std::string_view change_word(RowChange::What what) {
  switch (what) {
    case RowChange::What::added:
      return "new";
    case RowChange::What::gone:
      return "gone";
    case RowChange::What::changed:
      return "changed";
  }
  return "";
}

PageTable changes_table(const SetComparison& changes) {
  PageTable table("changes", {{"table", "table"},
                              {"row", "row", Align::words, Wraps::yes},
                              {"change", "change"},
                              {"column", "column"},
                              {"before", "before", Align::words, Wraps::yes},
                              {"after", "after", Align::words, Wraps::yes}});
  table.keys = 2;
  table.in_csv = true;
  for (const RowChange& row : changes.rows) {
    if (row.cells.empty()) table.add({row.table, row.key, change_word(row.what), "", "", ""});
    for (const CellChange& cell : row.cells)
      table.add({row.table, row.key, change_word(row.what), cell.column, cell.before, cell.after});
  }
  return table;
}

// In a spreadsheet the moves stand below the changes, in the same columns.
PageTable moves_table(const std::vector<SheetMove>& moves) {
  PageTable table("moves", {{"line", "line", Align::words, Wraps::yes},
                            {"before", "before", Align::amount},
                            {"after", "after", Align::amount},
                            {"change", "change", Align::amount}});
  table.columns.front().csv = "row";
  table.columns.back().csv = "difference";  // `change` is a word there
  table.given = {{"table", "sheet"}, {"change", "moved"}, {"column", "difficulty"}};
  table.in_csv = true;
  table.keys = 1;
  for (const SheetMove& move : moves)
    table.add({move.line, text_of(move.before, move.places), text_of(move.after, move.places),
               signed_text(move.change(), move.places)});
  return table;
}

void put_moves(Page& page, const ComparedSets& compared) {
  const Seen seen =
      compared.moves.empty() || compared.changes.rows.empty() ? Seen::by_programs : Seen::always;
  if (!compared.sheet.empty() && !compared.changes.rows.empty()) {
    page.apart();
    page.say(compared.moves.empty() ? "Nothing in " + compared.sheet + " is worth more or less."
                                    : "What that does to the difficulty of " + compared.sheet);
  }
  page.apart();
  page.add(moves_table(compared.moves), seen);
}

}  // namespace

Page values_compare_page(const ComparedSets& compared) {
  Page page("values compare");
  const std::string names = compared.before + " to " + compared.after;
  page.say("From " + names + (compared.changes.rows.empty() ? ": no value differs." : ""));
  page.fact("before", compared.before);
  page.fact("after", compared.after);
  page.fact("sheet", compared.sheet);
  page.apart();
  page.add(changes_table(compared.changes));
  put_moves(page, compared);
  return page;
}

}  // namespace landdrill::report
