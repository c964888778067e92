#include "engine/report/pages/values.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <utility>
#include <vector>

#include "engine/report/figures.h"
#include "engine/report/pages/face.h"
#include "grammar/diagnostics.h"
#include "tables/value_set.h"

namespace landdrill::report {
namespace {

std::string usable(const Loaded& loaded) {
  const Diagnostics& messages = loaded.diagnostics;
  if (messages.errors() > 0) return counted(messages.errors(), "error");
  std::string text = "ok";
  if (messages.warnings() > 0) text = "can be used, with " + counted(messages.warnings(), "warning");
  if (const std::size_t gaps = gaps_in(*loaded.set); gaps > 0)
    text += "; " + counted(gaps, "value") + " still to fill in";
  return text;
}

}  // namespace

Page values_check_page(std::string_view set, const Loaded& loaded) {
  Page page = brief_page("values check", fmt::format("{}: {}\n", set, usable(loaded)),
                         {{"set", set}, {"can_be_used", loaded.set.has_value()}});
  if (loaded.set) page.fact("to_fill_in", gaps_in(*loaded.set));
  put_messages(page, loaded.diagnostics);
  return page;
}

Page values_fill_page(const Filled& outcome, std::string_view written_into) {
  Page page("values fill");
  PageTable codes("codes", program_columns({"code", "outcome"}));
  codes.in_csv = true;
  const auto add = [&](const std::vector<std::string>& all, std::string_view words, std::string_view what) {
    if (!all.empty()) page.say(fmt::format("{} ({}): {}", words, all.size(), fmt::join(all, ", ")));
    for (const std::string& code : all) codes.add({code, what});
  };
  add(outcome.filled, "Filled in", "filled");
  add(outcome.added, "New in the set", "added");
  add(outcome.unchanged, "The same as before", "unchanged");
  add(outcome.still_missing, "Still missing", "missing");
  if (codes.rows.empty()) page.say("Nothing to fill in.");
  page.add(std::move(codes), Seen::by_programs);
  page.apart();
  page.say(written_into.empty()
               ? "Nothing is written yet: --write writes into the set, --to FOLDER into a new one."
               : fmt::format("Written into {}.", written_into));
  page.fact("written_into", written_into);
  return page;
}

namespace {

std::string or_nothing(const std::string& value) {
  return value.empty() ? "nothing" : value;
}

// One edit as a coach tells it: "parts spin-360: value 0.9 to 1.0 (new catalogue)".
std::string edit_told(const HistoryLine& edit) {
  const std::string why = edit.why.empty() ? "" : " (" + edit.why + ")";
  // Whole tables that came in have no cell to name.
  if (edit.column.empty()) return edit.table + why;
  return edit.table + " " + edit.key + ": " + edit.column + " " + or_nothing(edit.before) + " to " +
         or_nothing(edit.after) + why;
}

PageTable edits_table(const std::vector<HistoryLine>& edits) {
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
    table.add({edit.number, edit.at, edit_told(edit), edit.table, edit.key, edit.column, edit.before,
               edit.after, edit.why, edit.undone ? "undone" : ""},
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

namespace {

PageTable sets_table(const std::vector<ListedSet>& sets) {
  PageTable table("sets", {{"name", "name"},
                           {"title", "title", Align::words, Wraps::yes},
                           {"edition", "edition", Align::words, Wraps::yes},
                           {"rows", "rows", Align::amount},
                           {"edits", "edits", Align::amount},
                           for_programs("place"),
                           for_programs("hidden"),
                           {"", "place", Align::amount}});
  table.in_csv = true;
  table.hides_empty_columns = true;
  for (const ListedSet& set : sets)
    table.add({set.name, set.title, set.edition, set.rows, set.edits ? Entry(*set.edits) : Entry(), set.place,
               Datum::texts(set.hidden), set.origin == 0 ? "" : std::to_string(set.origin)});
  return table;
}

// Each folder in a line of its own, so that it is not broken in two.
void put_origins(Page& page, const std::vector<SetOrigin>& origins) {
  page.heading("Places of sets: the first that is found counts");
  for (std::size_t i = 0; i < origins.size(); ++i) {
    page.say("  " + std::to_string(i + 1) + ". ", origins[i].words);
    for (const std::string& folder : origins[i].folders) page.path("     ", folder);
  }
}

void put_hidden(Page& page, const ListedSet& set) {
  if (set.hidden.empty()) return;
  page.apart();
  page.say("There are " + std::to_string(set.hidden.size() + 1) + " sets called " + set.name +
           ". The first one here counts, " +
           (set.hidden.size() == 1 ? "the other does not:" : "the others do not:"));
  page.path("  - ", set.place);
  for (const std::string& folder : set.hidden) page.path("  - ", folder);
}

}  // namespace

Page values_list_page(const ListedSets& listed) {
  Page page("values list");
  if (listed.sets.empty()) page.say("No value sets.");
  page.add(sets_table(listed.sets));
  if (listed.season.empty()) {
    put_origins(page, listed.origins);
  } else {
    page.apart();
    page.path("With --season, sets come from that file alone: ", listed.season);
  }
  for (const ListedSet& set : listed.sets) put_hidden(page, set);
  return page;
}

namespace {

// What to do about the gaps: a list for parts, one edit for anything else; in a copy when the set is not the
// coach's.
std::string advice(const MissingValues& missing) {
  const std::vector<Gap>& gaps = missing.gaps;
  const std::string name = missing.shipped ? "my-set" : missing.set;
  std::string text = "To fill them in:\n";
  if (missing.shipped)
    text += fmt::format(
        "  landdrill values copy {} {}\n      a set of your own; name it in the sheet: values {}\n",
        missing.set, name, name);
  const auto is_part = [](const Gap& gap) { return gap.table == "parts"; };
  if (std::any_of(gaps.begin(), gaps.end(), is_part))
    text += fmt::format(
        "  landdrill values fill {} LIST.csv --write\n      with a code and a value on each line of "
        "LIST.csv\n",
        name);
  const auto other = std::find_if_not(gaps.begin(), gaps.end(), is_part);
  if (other != gaps.end())
    text += fmt::format("  landdrill values edit {} {} \"{}\" {} VALUE\n", name, other->table, other->key,
                        other->column);
  return text;
}

}  // namespace

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
  page.apart();
  if (!missing.gaps.empty()) page.verbatim("", advice(missing));
  return page;
}

namespace {

std::string_view change_word(RowChange::What what) {
  using enum RowChange::What;
  return what == added ? "new" : what == gone ? "gone" : "changed";
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

std::string cell_told(const CellChange& cell) {
  return cell.column + (cell.before == cell.after
                            ? fmt::format(" is {} already\n", cell.after)
                            : fmt::format(" {} -> {}\n", or_nothing(cell.before), or_nothing(cell.after)));
}

// "club-2026 parts spin-720: "; the one row of a set has no key.
std::string row_told(std::string_view set, const RowChange& row) {
  return fmt::format("{}{}{}{}{}: ", set, row.table.empty() ? "" : " ", row.table, row.key.empty() ? "" : " ",
                     row.key);
}

}  // namespace

Page values_change_page(std::string question, std::string_view set, const RowChange& change) {
  const bool edit = question == "values edit";
  std::string text = edit ? "" : question == "values undo" ? "undone: " : "done again: ";
  text += row_told(set, change);
  text += change.cells.empty() ? "all tables\n" : cell_told(change.cells.front());
  for (std::size_t i = 1; edit && i < change.cells.size(); ++i)
    text += fmt::format("  its {} is now \"{}\"\n", change.cells[i].column, change.cells[i].after);
  Page page = brief_page(std::move(question), std::move(text), {{"set", set}});
  RowChange real = change;
  std::erase_if(real.cells, [](const CellChange& cell) { return cell.before == cell.after; });
  const bool as_it_was = real.cells.empty() && !change.cells.empty();
  page.add(changes_table(as_it_was ? SetComparison{} : SetComparison{{std::move(real)}}), Seen::by_programs);
  return page;
}

Page values_copy_page(std::string question, const CopiedSet& copied) {
  return brief_page(std::move(question),
                    fmt::format("{} is written into {}. In a sheet beside it, the line is\n  values {}\n",
                                copied.set, copied.folder, copied.name),
                    {{"set", copied.set}, {"written_into", copied.folder}, {"name", copied.name}});
}

Page values_import_page(const ImportedSet& imported) {
  return brief_page(
      "values import",
      imported.already_there
          ? fmt::format("{} is in {} already\n", imported.set, imported.season)
          : fmt::format("{}: {} rows are in {}\n", imported.set, imported.rows, imported.season),
      {{"set", imported.set},
       {"season", imported.season},
       {"rows", imported.rows},
       {"already_there", imported.already_there}});
}

Page values_remove_page(std::string_view set, std::string_view season) {
  return brief_page("values remove", fmt::format("{} is no longer in {}\n", set, season),
                    {{"set", set}, {"season", season}});
}

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
