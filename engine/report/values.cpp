#include "engine/report/values.h"

#include <algorithm>

#include "engine/report/listing.h"
#include "engine/report/width.h"

namespace landdrill::report {
namespace {

int page(const TextWish& wish) {
  return std::max(60, wish.width);
}

std::string number_text(const std::optional<std::size_t>& number) {
  return number ? std::to_string(*number) : "";
}

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

Listing changes_listing(const SetComparison& changes) {
  Listing listing{"changes",
                  {{"table"},
                   {"row", Align::words, true},
                   {"change"},
                   {"column"},
                   {"before", Align::words, true},
                   {"after", Align::words, true}},
                  {},
                  2};
  for (const RowChange& row : changes.rows) {
    const std::string what(change_word(row.what));
    if (row.cells.empty()) listing.rows.push_back({row.table, row.key, what, "", "", ""});
    for (const CellChange& cell : row.cells) {
      listing.rows.push_back({row.table, row.key, what, cell.column, cell.before, cell.after});
    }
  }
  return listing;
}

Listing moves_listing(const std::vector<SheetMove>& moves) {
  Listing listing{"moves",
                  {{"line", Align::words, true},
                   {"before", Align::amount},
                   {"after", Align::amount},
                   {"change", Align::amount}},
                  {}};
  for (const SheetMove& move : moves)
    listing.rows.push_back({move.line, move.before, move.after, move.change});
  return listing;
}

std::string compared_sets_text(const ComparedSets& compared, const TextWish& wish) {
  const std::string names = plain(std::string(compared.before) + " to " + std::string(compared.after));
  if (compared.changes->rows.empty())
    return paragraph("", "From " + names + ": no value differs.", page(wish));
  std::string result = paragraph("", "From " + names, page(wish)) + "\n";
  result += as_text(changes_listing(*compared.changes), wish);
  if (compared.sheet.empty()) return result;
  const std::string sheet = plain(compared.sheet);
  if (compared.moves.empty())
    return result + "\n" + paragraph("", "Nothing in " + sheet + " is worth more or less.", page(wish));
  return result + "\n" + paragraph("", "What that does to the difficulty of " + sheet, page(wish)) + "\n" +
         as_text(moves_listing(compared.moves), wish);
}

// The moves below the changes, in the same columns.
std::string compared_sets_csv(const ComparedSets& compared) {
  Listing listing = changes_listing(*compared.changes);
  for (const SheetMove& move : compared.moves) {
    listing.rows.push_back({"sheet", move.line, "moved", "difficulty", move.before, move.after});
  }
  return as_csv(listing);
}

Listing history_listing(const std::vector<HistoryLine>& edits) {
  Listing listing{"edits",
                  {{"number", Align::amount},
                   {"at"},
                   {"table"},
                   {"row", Align::words, true},
                   {"column"},
                   {"before", Align::words, true},
                   {"after", Align::words, true},
                   {"why", Align::words, true},
                   {"undone"}},
                  {}};
  for (const HistoryLine& edit : edits) {
    listing.rows.push_back({edit.number, edit.at, edit.table, edit.key, edit.column, edit.before, edit.after,
                            edit.why, edit.undone ? "undone" : ""});
  }
  return listing;
}

// One edit as a coach tells it: "spin-360 (parts): value 0.9 to 1.0 (new catalogue)".
std::string history_text(std::string_view set, const std::vector<HistoryLine>& edits, const TextWish& wish) {
  if (edits.empty()) return paragraph("", plain(set) + " has not been edited.", page(wish));
  Grid grid({{"no.", Align::amount}, {"at"}, {"edit", Align::words, true}, {"", Align::words}});
  for (const HistoryLine& edit : edits) {
    const std::string why = edit.why.empty() ? "" : " (" + edit.why + ")";
    const std::string before = edit.before.empty() ? "nothing" : edit.before;
    const std::string after = edit.after.empty() ? "nothing" : edit.after;
    // Whole tables that came in have no cell to name.
    const std::string what = edit.column.empty() ? edit.table
                                                 : edit.table + " " + edit.key + ": " + edit.column + " " +
                                                       before + " to " + after;
    grid.add({edit.number, edit.at, what + why, edit.undone ? "undone" : ""});
  }
  return grid.text(page(wish), wish.colour);
}

std::string codes_sentence(std::string_view words, const std::vector<std::string>& codes,
                           const TextWish& wish) {
  if (codes.empty()) return "";
  std::string list;
  for (const std::string& code : codes) list += (list.empty() ? "" : ", ") + code;
  return paragraph("", std::string(words) + " (" + std::to_string(codes.size()) + "): " + plain(list),
                   page(wish));
}

Listing outcome_listing(const Filled& outcome) {
  Listing listing{"codes", {{"code"}, {"outcome"}}, {}};
  for (const std::string& code : outcome.filled) listing.rows.push_back({code, "filled"});
  for (const std::string& code : outcome.added) listing.rows.push_back({code, "added"});
  for (const std::string& code : outcome.unchanged) listing.rows.push_back({code, "unchanged"});
  for (const std::string& code : outcome.still_missing) listing.rows.push_back({code, "missing"});
  return listing;
}

}  // namespace

std::string set_list(const std::vector<SetLine>& sets, Format format, const TextWish& wish) {
  Listing listing{"sets",
                  {{"name"},
                   {"title", Align::words, true},
                   {"edition"},
                   {"rows", Align::amount},
                   {"edits", Align::amount},
                   {"place", Align::words, true}},
                  {}};
  for (const SetLine& set : sets) {
    listing.rows.push_back(
        {set.name, set.title, set.edition, number_text(set.rows), number_text(set.edits), set.place});
  }
  if (format == Format::csv) return as_csv(listing);
  if (format == Format::json) return as_json({}, {listing});
  if (sets.empty()) return "No value sets.\n";
  // The place is long and often the same: it does not squeeze the titles.
  Grid grid({{"name"},
             {"title", Align::words, true},
             {"edition", Align::words, true},
             {"rows", Align::amount},
             {"edits", Align::amount}});
  for (const auto& row : listing.rows) grid.add({row[0], row[1], row[2], row[3], row[4]});
  std::string result = grid.text(page(wish), wish.colour);
  std::vector<std::string_view> told;
  for (const SetLine& set : sets) {
    if (set.place.empty() || std::find(told.begin(), told.end(), set.place) != told.end()) continue;
    result += (told.empty() ? "\n" : "") + paragraph("kept in ", plain(set.place), page(wish));
    told.push_back(set.place);
  }
  return result;
}

std::string comparison(const ComparedSets& compared, Format format, const TextWish& wish) {
  if (format == Format::text) return compared_sets_text(compared, wish);
  if (format == Format::csv) return compared_sets_csv(compared);
  return as_json({{"before", compared.before}, {"after", compared.after}, {"sheet", compared.sheet}},
                 {changes_listing(*compared.changes), moves_listing(compared.moves)});
}

std::string history(std::string_view set, const std::vector<HistoryLine>& edits, Format format,
                    const TextWish& wish) {
  if (format == Format::text) return history_text(set, edits, wish);
  if (format == Format::csv) return as_csv(history_listing(edits));
  return as_json({{"set", set}}, {history_listing(edits)});
}

std::string filled(const Filled& outcome, Format format, const TextWish& wish) {
  if (format == Format::csv) return as_csv(outcome_listing(outcome));
  if (format == Format::json) return as_json({}, {outcome_listing(outcome)});
  const std::string result = codes_sentence("Filled in", outcome.filled, wish) +
                             codes_sentence("New in the set", outcome.added, wish) +
                             codes_sentence("The same as before", outcome.unchanged, wish) +
                             codes_sentence("Still missing", outcome.still_missing, wish);
  return result.empty() ? "Nothing to fill in.\n" : result;
}

std::string gaps(const std::vector<Gap>& missing, std::string_view set, Format format, const TextWish& wish) {
  Listing listing{"gaps", {{"table"}, {"row", Align::words, true}, {"column"}}, {}, 2};
  for (const Gap& gap : missing)
    listing.rows.push_back({std::string(gap.table), std::string(gap.key), std::string(gap.column)});
  if (format == Format::csv) return as_csv(listing);
  if (format == Format::json) return as_json({{"set", set}}, {listing});
  if (missing.empty())
    return paragraph("", plain(set) + " has every value that this sheet needs.", page(wish));
  return paragraph("", "To fill in, in " + plain(set) + ", before this sheet can be scored:", page(wish)) +
         as_text(listing, wish);
}

}  // namespace landdrill::report
