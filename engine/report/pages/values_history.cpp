#include "engine/report/pages/values_history.h"

#include <algorithm>

namespace landdrill::report {
namespace {

// One edit as a coach tells it: "parts spin-360: value 0.9 to 1.0 (new catalogue)".
std::string edit_told(const HistoryLine& edit) {
  const std::string why = edit.why.empty() ? "" : " (" + edit.why + ")";
  const auto shown = [](const std::string& value) { return value.empty() ? "nothing" : value; };
  // Whole tables that came in have no cell to name.
  if (edit.column.empty()) return edit.table + why;
  return edit.table + " " + edit.key + ": " + edit.column + " " + shown(edit.before) + " to " +
         shown(edit.after) + why;
}

PageTable edits_table(const std::vector<HistoryLine>& edits) {
  const auto for_programs = [](std::string key) {
    return PageColumn{std::move(key), "", Align::words, Wraps::no, Seen::by_programs};
  };
  PageTable table("edits", {{"number", "no.", Align::amount},
                            {"at", "at"},
                            {"", "edit", Align::words, Wraps::yes},
                            for_programs("table"),
                            for_programs("row"),
                            for_programs("column"),
                            for_programs("before"),
                            for_programs("after"),
                            for_programs("why"),
                            {"undone", ""}});
  table.in_csv = true;
  for (const HistoryLine& edit : edits)
    table.add({{std::to_string(edit.number), edit.number},
               edit.at,
               edit_told(edit),
               edit.table,
               edit.key,
               edit.column,
               edit.before,
               edit.after,
               edit.why,
               edit.undone ? "undone" : ""},
              Look::usual, edit.companion ? Seen::by_programs : Seen::always);
  return table;
}

}  // namespace

Page values_history_page(std::string_view set, const std::vector<HistoryLine>& edits) {
  Page page("values history");
  page.fact("set", set);
  if (std::all_of(edits.begin(), edits.end(), [](const HistoryLine& edit) { return edit.companion; }))
    page.say(std::string(set) + " has not been edited.");
  page.add(edits_table(edits));
  return page;
}

}  // namespace landdrill::report
