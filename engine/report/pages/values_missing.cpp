#include "engine/report/pages/values_missing.h"

namespace landdrill::report {

Page values_missing_page(const MissingValues& missing) {
  Page page("values missing");
  page.say(missing.file + ": " + missing.routine);
  page.fact("file", missing.file);
  page.fact("routine", missing.routine);
  page.fact("set", missing.set);
  page.say(missing.gaps.empty() ? missing.set + " has every value that this sheet needs."
                                : "To fill in, in " + missing.set + ", before this sheet can be scored:");
  PageTable table("gaps",
                  {{"table", "table"}, {"row", "row", Align::words, Wraps::yes}, {"column", "column"}});
  table.keys = 2;
  table.in_csv = true;
  for (const Gap& gap : missing.gaps) table.add({gap.table, gap.key, gap.column});
  page.add(std::move(table));
  return page;
}

}  // namespace landdrill::report
