// The rows of a long CSV list whose columns are found by their names: forgivingly, in any order.
//
//   enum Field { date, mark };
//   constexpr ListColumn columns[] = {{"date", true, date_words}, {"mark", true, mark_words, true}};
//   HeadedRows rows(list, {columns, "one row a mark", "a list starts with date,mark"}, diagnostics);
//   if (rows.read_headings()) while (rows.next()) rows.text(mark)      // "7.25"
//
// What is wrong is said at its row and column; a row with a mistake is passed over.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "grammar/diagnostics.h"
#include "grammar/span.h"
#include "tables/csv.h"

namespace landdrill {

struct ListColumn {
  std::string_view name;  // as messages call it
  bool needed;
  std::span<const std::string_view> words;  // its names, as normal_name makes them
  bool may_be_empty = false;                // of a needed one: its cells
};
struct ListShape {
  std::span<const ListColumn> columns;
  std::string_view row;           // what a row is: "one row a mark"
  std::string_view heading_hint;  // how a list starts
  // By what column another kind of list is known, what was expected instead, and where that list belongs.
  std::string_view foreign, instead, foreign_hint;
  // Names of columns that say what no list can take: with anything in them the list is refused.
  std::span<const std::string_view> refused = {};
  std::string_view refused_hint = {};
};

class HeadedRows {
 public:
  HeadedRows(const Source& list, const ListShape& shape, Diagnostics& diagnostics);

  // False when the list is not to be read on.
  bool read_headings();
  // The next row that has what it needs; false at the end. A list without any row is complained of.
  bool next();

  // Fields are places in the shape's columns. A column that is not there is empty in every row.
  bool has(std::size_t field) const { return place_[field] != nowhere; }
  std::string_view text(std::size_t field) const { return rows_.cell(place_[field]); }
  // Its place in the list; that of `otherwise` where there is no such column.
  std::string_view piece(std::size_t field) const { return rows_.piece(place_[field]); }
  std::string_view piece(std::size_t field, std::size_t otherwise) const {
    return piece(has(field) ? field : otherwise);
  }
  void complain(std::size_t field, Complaint complaint) { complain_at(piece(field), std::move(complaint)); }
  void complain_at(std::string_view piece, Complaint complaint);
  void complain_of_date(std::size_t field);
  void complain_of_mark(std::size_t field);

 private:
  static constexpr std::size_t nowhere = static_cast<std::size_t>(-1);
  void read_heading(std::size_t column);
  void leave_unread(std::size_t column, std::string_view name);
  void tell_unread();
  void miss(const ListColumn& column);
  bool complete();
  void find_refused();
  bool cut_off() const;

  const Source& list_;
  const ListShape shape_;
  Diagnostics& diagnostics_;
  CsvRows rows_;
  std::size_t columns_ = 0;
  bool any_row_ = false;
  std::vector<std::size_t> place_, unread_;
  std::vector<std::pair<std::size_t, std::string>> refused_;  // columns, and as they are called
};

// A cell that stands for no mark: nothing, or a dash.
bool is_no_mark(std::string_view text);
// A cell that says yes, in several languages.
bool says_yes(std::string_view text);
// A cell that says no, or nothing.
bool says_no(std::string_view text);

}  // namespace landdrill

namespace landdrill::list_words {

// What the columns of a list of marks may be called, in several languages, as normal_name makes the names.
//
//   list_words::mark      // "mark", "marks", "score", "note", ...

inline constexpr std::string_view date[] = {"date", "day", "datum", "fecha", "data", "дата"};
inline constexpr std::string_view meet[] = {"meet",      "competition", "title",       "panel",
                                            "wettkampf", "compétition", "competicion", "gara"};
inline constexpr std::string_view routine[] = {"routine", "programme", "program",
                                               "kür",     "rutina",    "programma"};
inline constexpr std::string_view event[] = {"event",   "category", "disziplin",
                                             "épreuve", "epreuve",  "prueba"};
inline constexpr std::string_view line[] = {"element", "line",    "what",     "aspect", "element_no",
                                            "nr",      "élément", "elemento", "элемент"};
inline constexpr std::string_view judge[] = {"judge", "seat", "richter", "juge", "juez", "giudice", "судья"};
inline constexpr std::string_view mark[] = {"mark", "marks",  "score",   "note",
                                            "nota", "punkte", "wertung", "оценка"};
// What a panel's list cannot say, for it has one row a mark.
inline constexpr std::string_view said_in_sheets[] = {
    "sync",      "sync_error",   "sync_errors", "synchronisation", "synchronization", "penalty",
    "penalties", "deduction",    "deductions",  "result",          "total",           "strafe",
    "strafen",   "abzug",        "abzüge",      "ergebnis",        "pénalité",        "pénalités",
    "résultat",  "penalización", "resultado",   "penalità",        "risultato"};
inline constexpr std::string_view base[] = {"base", "base_mark", "basis"};

}  // namespace landdrill::list_words
