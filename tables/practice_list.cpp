#include "tables/practice_list.h"

#include "grammar/calendar.h"
#include "grammar/problems.h"
#include "grammar/span.h"
#include "tables/headed_rows.h"
#include "tables/list_words.h"
#include "tables/problems.h"
#include "tables/trainee_name.h"

namespace landdrill {
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
    const std::string typed = text(trainee);
    if (typed != last_typed_) {
      auto name = trainee_name(typed);
      if (!name) {
        rows_.complain(trainee, name.error());
        return false;
      }
      last_typed_ = typed;
      last_name_ = std::move(*name);
    }
    row.trainee = last_name_;
    return true;
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
  std::string last_typed_, last_name_;
};

}  // namespace

std::vector<ListedPractice> read_practice_list(const Source& list, std::string_view trainee,
                                               Diagnostics& diagnostics) {
  return PracticeReader(list, trainee, diagnostics).read();
}

}  // namespace landdrill
