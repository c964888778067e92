#include "tables/marks_list.h"

#include <algorithm>
#include <array>
#include <span>
#include <unordered_map>

#include "grammar/calendar.h"
#include "grammar/words.h"
#include "tables/csv_rows.h"
#include "tables/read_table.h"

namespace landdrill {
namespace {

enum Field { date, meet, routine, event, line, judge, mark, base, fields };

struct Heading {
  std::string_view name;  // as messages call it
  bool needed;
  std::span<const std::string_view> words;
};
constexpr std::string_view date_words[] = {"date", "day", "datum", "fecha", "data", "дата"};
constexpr std::string_view meet_words[] = {"meet",      "competition", "title",       "panel",
                                           "wettkampf", "compétition", "competicion", "gara"};
constexpr std::string_view routine_words[] = {"routine", "programme", "program",
                                              "kür",     "rutina",    "programma"};
constexpr std::string_view event_words[] = {"event", "category", "disziplin", "épreuve", "epreuve", "prueba"};
constexpr std::string_view line_words[] = {"element", "line",    "what",     "aspect", "element_no",
                                           "nr",      "élément", "elemento", "элемент"};
constexpr std::string_view judge_words[] = {"judge", "seat", "richter", "juge", "juez", "giudice", "судья"};
constexpr std::string_view mark_words[] = {"mark", "marks",  "score",   "note",
                                           "nota", "punkte", "wertung", "оценка"};
constexpr std::string_view base_words[] = {"base", "base_mark", "basis"};
constexpr std::array<Heading, fields> headings = {{{"date", true, date_words},
                                                   {"meet", false, meet_words},
                                                   {"routine", true, routine_words},
                                                   {"event", false, event_words},
                                                   {"element", true, line_words},
                                                   {"judge", true, judge_words},
                                                   {"mark", true, mark_words},
                                                   {"base", false, base_words}}};
constexpr std::size_t nowhere = static_cast<std::size_t>(-1);
constexpr const char* heading_hint =
    "a list starts with a heading such as date,meet,routine,element,judge,mark";

bool says_yes(std::string_view text) {
  if (text.empty()) return false;
  constexpr std::array<std::string_view, 8> yes = {"yes", "y", "1", "x", "base", "ja", "oui", "si"};
  const std::string word = normal_name(text);
  return std::find(yes.begin(), yes.end(), word) != yes.end();
}

bool is_missing(std::string_view text) {
  return text.empty() || text == "-" || text == "–" || text == "—";
}

bool is_number(std::string_view text) {
  return !text.empty() && text.find_first_not_of("0123456789") == text.npos;
}

// "3", "J3", "Judge 3"
std::optional<std::size_t> seat_of(std::string_view text) {
  if (text.size() == 1 && text[0] >= '1' && text[0] <= '9') return static_cast<std::size_t>(text[0] - '1');
  const std::size_t digits = text.find_last_not_of("0123456789") + 1;
  const std::string word = normal_name(text.substr(0, digits));
  const bool known = word.empty() || word == "j" || word == "judge" || word == "judge_";
  const std::string_view number = text.substr(digits);
  if (!known || number.empty() || number.size() > 2) return std::nullopt;
  const int seat = std::stoi(std::string(number));
  return seat >= 1 && seat <= most_seats ? std::optional(static_cast<std::size_t>(seat - 1)) : std::nullopt;
}

class MarksReader {
 public:
  MarksReader(const Source& source, Diagnostics& diagnostics)
      : source_(source), diagnostics_(diagnostics), rows_(source) {}

  std::vector<ListedPanel> read() {
    if (!read_headings()) return {};
    while (rows_.next()) read_row();
    return std::move(panels_);
  }

 private:
  bool read_headings() {
    place_.fill(nowhere);
    if (!rows_.next()) {
      diagnostics_.add(diagnostic_about(source_.name, {Problem::missing_column, "an empty list",
                                                       "a heading and one row a mark", heading_hint}));
      return false;
    }
    columns_ = rows_.cells();
    for (std::size_t i = 0; i < columns_; ++i) read_heading(i);
    for (std::size_t field = 0; field < fields; ++field) {
      if (headings[field].needed && place_[field] == nowhere) miss(headings[field]);
    }
    return diagnostics_.ok();
  }

  void read_heading(std::size_t column) {
    const std::string name = normal_name(rows_.cell(column));
    for (std::size_t field = 0; field < fields; ++field) {
      const auto& words = headings[field].words;
      if (std::find(words.begin(), words.end(), name) == words.end()) continue;
      if (place_[field] == nowhere) {
        place_[field] = column;
      } else {
        complain(column, {Problem::repeated_column,
                          "a second column for the " + std::string(headings[field].name), "one"});
      }
      return;
    }
  }

  void miss(const Heading& heading) {
    complain(0, {Problem::missing_column, "no column for the " + std::string(heading.name),
                 "one that is called " + std::string(heading.name), heading_hint});
  }

  void complain(std::size_t column, Complaint complaint) {
    complain_at(rows_.piece(column), std::move(complaint));
  }
  void complain_at(std::string_view piece, Complaint complaint) {
    if (!diagnostics_.wants_more()) return diagnostics_.count_only(severity_of(complaint.problem));
    diagnostics_.add(diagnostic_at(source_, piece, std::move(complaint)));
  }
  std::string_view text(Field field) const { return rows_.cell(place_[field]); }

  void read_row() {
    if (!rows_.broken().empty()) {
      return complain_at(rows_.broken(),
                         {Problem::unclosed_quote, "a quotation mark that does not close its cell",
                          "a closing one before the next cell"});
    }
    if (rows_.cells() > columns_) return complain_of_cells();
    for (std::size_t field = 0; field < fields; ++field) {
      if (headings[field].needed && field != mark && text(static_cast<Field>(field)).empty()) {
        return complain(place_[field], {Problem::missing_cell, "an empty cell",
                                        "the " + std::string(headings[field].name) + " in every row"});
      }
    }
    take_row();
  }

  void complain_of_cells() {
    complain(columns_, {Problem::cell_count, std::to_string(rows_.cells()) + " cells",
                        std::to_string(columns_) + ", as the heading has",
                        rows_.separator() == ','
                            ? "a decimal comma splits a cell: write 7.25, or put it in quotation marks"
                            : ""});
  }

  void take_row() {
    if (!is_day_of_the_calendar(text(date)) || text(date).size() != 10) return complain_of_date();
    const auto seat = seat_of(text(judge));
    if (!seat) {
      return complain(place_[judge], {Problem::bad_number, "the judge \"" + std::string(text(judge)) + "\"",
                                      "the number of her seat, 1 to " + std::to_string(most_seats)});
    }
    ListedPanel::Given given{std::nullopt, rows_.piece(place_[mark])};
    if (!is_missing(text(mark))) {
      given.mark = Decimal::parse(text(mark));
      if (!given.mark) {
        return complain(place_[mark], {Problem::bad_number, "\"" + std::string(text(mark)) + "\"",
                                       "a mark such as 7.25, or -"});
      }
    }
    give(line_of(panel_of_row()), *seat, given);
  }

  void complain_of_date() {
    complain(place_[date], {Problem::bad_date, "\"" + std::string(text(date)) + "\"",
                            "a day of the calendar written year-month-day, such as 2026-05-09"});
  }

  void give(ListedPanel::Line& into, std::size_t seat, const ListedPanel::Given& given) {
    if (into.judges.size() <= seat) into.judges.resize(seat + 1);
    auto& place = into.judges[seat];
    if (place) {
      return complain_at(given.piece, {Problem::repeated,
                                       "a second mark of judge " + std::to_string(seat + 1) + " for " +
                                           (is_number(into.name) ? "element " : "") + into.name,
                                       "one; the first is on line " +
                                           std::to_string(position_of(source_, place->piece).line)});
    }
    place = given;
  }

  // Rows of one panel mostly follow each other.
  ListedPanel& panel_of_row() {
    if (last_ != nowhere && is_of_row(panels_[last_])) return panels_[last_];
    std::string key;
    for (Field field : {date, meet, routine, event}) {
      key += text(field);
      key += '\x1F';
    }
    const auto [known, is_new] = by_name_.try_emplace(std::move(key), panels_.size());
    last_ = known->second;
    last_line_ = 0;
    if (is_new) {
      panels_.push_back({std::string(text(date)),
                         std::string(text(meet)),
                         std::string(text(routine)),
                         std::string(text(event)),
                         {},
                         rows_.piece(place_[date]),
                         rows_.piece(place_[routine]),
                         rows_.piece(place_[event] == nowhere ? place_[routine] : place_[event])});
    }
    return panels_[last_];
  }

  bool is_of_row(const ListedPanel& panel) const {
    return panel.date == text(date) && panel.meet == text(meet) && panel.routine == text(routine) &&
           panel.event == text(event);
  }

  ListedPanel::Line& line_of(ListedPanel& panel) {
    const std::string_view name = text(line);
    const bool is_base = says_yes(text(base));
    if (last_line_ < panel.lines.size() && panel.lines[last_line_].name == name) {
      panel.lines[last_line_].base |= is_base;
      return panel.lines[last_line_];
    }
    const auto known = std::find_if(panel.lines.begin(), panel.lines.end(),
                                    [&](const ListedPanel::Line& one) { return one.name == name; });
    last_line_ = static_cast<std::size_t>(known - panel.lines.begin());
    if (known == panel.lines.end())
      panel.lines.push_back({std::string(name), false, {}, rows_.piece(place_[line])});
    panel.lines[last_line_].base |= is_base;
    return panel.lines[last_line_];
  }

  const Source& source_;
  Diagnostics& diagnostics_;
  CsvRows rows_;
  std::size_t columns_ = 0;
  std::array<std::size_t, fields> place_{};
  std::vector<ListedPanel> panels_;
  std::unordered_map<std::string, std::size_t> by_name_;
  std::size_t last_ = nowhere, last_line_ = 0;
};

}  // namespace

std::vector<ListedPanel> read_marks_list(const Source& list, Diagnostics& diagnostics) {
  return MarksReader(list, diagnostics).read();
}

}  // namespace landdrill
