#include "tables/marks_list.h"

#include <algorithm>
#include <unordered_map>

#include "grammar/calendar.h"
#include "grammar/characters.h"
#include "grammar/problems.h"
#include "grammar/span.h"
#include "tables/csv.h"
#include "tables/headed_rows.h"
#include "tables/problems.h"
#include "tables/read_table.h"

namespace landdrill {
namespace {

constexpr ListColumn marks_columns[] = {
    {"date", true, list_words::date},       {"meet", false, list_words::meet},
    {"routine", true, list_words::routine}, {"event", false, list_words::event},
    {"element", true, list_words::line},    {"judge", true, list_words::judge},
    {"mark", true, list_words::mark, true}, {"base", false, list_words::base}};
constexpr ListShape marks_shape = {
    marks_columns,
    "one row a mark",
    "a list starts with a heading such as date,meet,routine,element,judge,mark",
    "trainee",
    "the marks of a panel, with a column for the judge",
    "a trainee's marks are kept by `landdrill practice add`",
    list_words::said_in_sheets,
    "sync errors, penalties and results belong in the panel of a sheet: `landdrill help "
    "book add`"};
constexpr std::size_t nowhere = static_cast<std::size_t>(-1);

// "2" of "2", "Element 2", "E2" and "2."; any other name as it is.
std::string_view line_name(std::string_view text) {
  std::string_view number = text.ends_with('.') ? text.substr(0, text.size() - 1) : text;
  const std::size_t digits = number.find_last_not_of("0123456789") + 1;
  if (digits == number.size()) return text;
  std::string word = normal_name(number.substr(0, digits));
  while (word.ends_with('_') || word.ends_with('.')) word.pop_back();
  const bool known =
      word.empty() || word == "e" || word == "el" ||
      std::find(std::begin(list_words::line), std::end(list_words::line), word) != std::end(list_words::line);
  number.remove_prefix(digits);
  return known && number.front() != '0' ? number : text;
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
  enum Field { date, meet, routine, event, line, judge, mark, base, fields };
  static_assert(std::size(marks_columns) == fields);

  MarksReader(const Source& source, Diagnostics& diagnostics)
      : source_(source), rows_(source, marks_shape, diagnostics) {}

  std::vector<ListedPanel> read() {
    if (!rows_.read_headings()) return {};
    while (rows_.next()) take_row();
    return std::move(panels_);
  }

 private:
  std::string_view text(Field field) const { return rows_.text(field); }

  void take_row() {
    const bool same_panel = last_ != nowhere && is_of_row(panels_[last_]);
    if (!same_panel && !is_written_day(text(date))) return rows_.complain_of_date(date);
    const auto seat = seat_of(text(judge));
    if (!seat) {
      return rows_.complain(judge, {Problem::bad_number, "the judge \"" + std::string(text(judge)) + "\"",
                                    "the number of her seat, 1 to " + std::to_string(most_seats)});
    }
    if (!says_no(text(base)) && !says_yes(text(base))) {
      return rows_.complain(base,
                            {Problem::bad_choice, "\"" + std::string(text(base)) + "\" in the column base",
                             "yes where the base mark was given, otherwise no or nothing"});
    }
    ListedPanel::Given given{std::nullopt, rows_.piece(mark)};
    if (!is_no_mark(text(mark))) {
      given.mark = Decimal::parse(text(mark));
      if (!given.mark) return rows_.complain_of_mark(mark);
    }
    give(line_of(same_panel ? panels_[last_] : panel_of_row()), *seat, given);
  }

  void give(ListedPanel::Line& into, std::size_t seat, const ListedPanel::Given& given) {
    if (into.judges.size() <= seat) into.judges.resize(seat + 1);
    auto& place = into.judges[seat];
    if (place) {
      return rows_.complain_at(
          given.piece,
          {Problem::repeated,
           "a second mark of judge " + std::to_string(seat + 1) + " for " +
               (characters::all_digits(into.name) ? "element " : "") + into.name,
           "one; the first is on line " + std::to_string(position_of(source_, place->piece).line)});
    }
    place = given;
  }

  ListedPanel& panel_of_row() {
    std::string key;
    for (Field field : {date, meet, routine, event}) {
      key += text(field);
      key += '\x1F';
    }
    const auto [known, is_new] = by_name_.try_emplace(std::move(key), panels_.size());
    last_ = known->second;
    if (is_new) {
      panels_.push_back({std::string(text(date)),
                         std::string(text(meet)),
                         std::string(text(routine)),
                         std::string(text(event)),
                         {},
                         rows_.piece(date),
                         rows_.piece(meet, date),
                         rows_.piece(routine),
                         rows_.piece(event, routine),
                         rows_.has(base)});
    }
    return panels_[last_];
  }

  // Rows of one panel mostly follow each other.
  bool is_of_row(const ListedPanel& panel) const {
    return panel.date == text(date) && panel.meet == text(meet) && panel.routine == text(routine) &&
           panel.event == text(event);
  }

  ListedPanel::Line& line_of(ListedPanel& panel) {
    const std::string_view name = characters::all_digits(text(line)) ? text(line) : line_name(text(line));
    auto known = std::find_if(panel.lines.begin(), panel.lines.end(),
                              [&](const ListedPanel::Line& one) { return one.name == name; });
    if (known == panel.lines.end())
      known = panel.lines.insert(known, {std::string(name), false, {}, rows_.piece(line)});
    known->base |= says_yes(text(base));
    return *known;
  }

  const Source& source_;
  HeadedRows rows_;
  std::vector<ListedPanel> panels_;
  std::unordered_map<std::string, std::size_t> by_name_;
  std::size_t last_ = nowhere;
};

}  // namespace

bool looks_like_a_list(const Source& text) {
  CsvRows rows(text);
  if (!rows.next()) return false;
  const auto has = [&](const ListColumn& column) {
    for (std::size_t i = 0; i < rows.cells(); ++i) {
      const auto& words = column.words;
      if (std::find(words.begin(), words.end(), normal_name(rows.cell(i))) != words.end()) return true;
    }
    return false;
  };
  return has(marks_columns[MarksReader::date]) && has(marks_columns[MarksReader::routine]) &&
         has(marks_columns[MarksReader::mark]);
}

std::vector<ListedPanel> read_marks_list(const Source& list, Diagnostics& diagnostics) {
  return MarksReader(list, diagnostics).read();
}

namespace {

constexpr std::string_view trainee_words[] = {"trainee", "name", "official", "who", "anwärter", "stagiaire"};
constexpr std::string_view session_words[] = {"session", "practice", "practised", "practiced",
                                              "started", "sitzung",  "séance",    "sesión"};
constexpr std::string_view late_words[] = {"late", "too_late", "spät", "tard"};
constexpr ListColumn practice_columns[] = {{"trainee", false, trainee_words},
                                           {"session", false, session_words},
                                           {"date", true, list_words::date},
                                           {"meet", false, list_words::meet},
                                           {"routine", true, list_words::routine},
                                           {"event", false, list_words::event},
                                           {"element", true, list_words::line},
                                           {"mark", true, list_words::mark, true},
                                           {"late", false, late_words}};
constexpr ListShape practice_shape = {
    practice_columns,
    "one row a mark",
    "a list starts with a heading such as trainee,date,meet,routine,element,mark",
    "judge",
    "a trainee's own marks, one for each line of a panel",
    "the marks of a panel are kept by `landdrill book add`"};

// "T18:03:11Z"
bool is_time_of_day(std::string_view text) {
  return has_shape(text, "T00:00:00Z") && text.substr(1, 2) < "24" && text.substr(4, 2) < "60" &&
         text.substr(7, 2) < "60";
}

class PracticeReader {
 public:
  enum Field { trainee, session, date, meet, routine, event, line, mark, late, fields };
  static_assert(std::size(practice_columns) == fields);

  PracticeReader(const Source& list, std::string_view who, Diagnostics& diagnostics)
      : who_(who), rows_(list, practice_shape, diagnostics) {}

  std::vector<ListedPractice> read() {
    if (!rows_.read_headings()) return {};
    while (rows_.next()) take_row();
    return std::move(listed_);
  }

 private:
  // Without the ' by which an export keeps a spreadsheet from taking a name for a formula.
  std::string text(Field field) const {
    std::string_view cell = rows_.text(field);
    if (cell.size() > 1 && cell[0] == '\'' && std::string_view("=+-@").find(cell[1]) != cell.npos)
      cell.remove_prefix(1);
    return std::string(cell);
  }

  void take_row() {
    ListedPractice row{who_,
                       {},
                       text(date),
                       text(meet),
                       text(routine),
                       text(event),
                       text(line),
                       std::nullopt,
                       says_yes(rows_.text(late)),
                       rows_.piece(date),
                       rows_.piece(meet, routine),
                       rows_.piece(routine),
                       rows_.piece(line),
                       rows_.piece(mark),
                       rows_.piece(session, date)};
    if (!rows_.text(trainee).empty() && !take_name(row)) return;
    if (row.trainee.empty()) {
      return rows_.complain_at(
          rows_.piece(trainee, date),
          {Problem::missing_cell, "nobody whose mark this is", "a trainee in every row, or --name NAME"});
    }
    if (!is_written_day(row.date)) return rows_.complain_of_date(date);
    if (!take_session(row)) return;
    if (!is_no_mark(rows_.text(mark))) {
      row.mark = Decimal::parse(rows_.text(mark));
      if (!row.mark) return rows_.complain_of_mark(mark);
    }
    listed_.push_back(std::move(row));
  }

  bool take_name(ListedPractice& row) {
    auto name = trainee_name(text(trainee));
    if (name)
      row.trainee = std::move(*name);
    else
      rows_.complain(trainee, name.error());
    return name.has_value();
  }

  bool take_session(ListedPractice& row) {
    const std::string_view when = rows_.text(session);
    const std::string_view day = when.empty() ? std::string_view(row.date) : when.substr(0, 10);
    const std::string_view time = when.size() > 10 ? when.substr(10) : "T00:00:00Z";
    row.session = std::string(day) + std::string(time);
    if (is_written_day(day) && is_time_of_day(time)) return true;
    rows_.complain(session, {Problem::bad_date, "the session \"" + std::string(when) + "\"",
                             "the day when she marked, such as 2026-05-09, or that moment, such as "
                             "2026-05-09T18:30:00Z"});
    return false;
  }

  const std::string who_;
  HeadedRows rows_;
  std::vector<ListedPractice> listed_;
};

}  // namespace

std::vector<ListedPractice> read_practice_list(const Source& list, std::string_view trainee,
                                               Diagnostics& diagnostics) {
  return PracticeReader(list, trainee, diagnostics).read();
}

}  // namespace landdrill
