#include <fmt/format.h>

#include <algorithm>
#include <chrono>

#include "engine/judging/practice.h"
#include "engine/routine/problems.h"
#include "engine/season/practice_tasks.h"
#include "grammar/characters.h"
#include "grammar/diagnostics.h"
#include "grammar/problems.h"
#include "grammar/words.h"
#include "tables/decimal.h"
#include "tables/folder.h"
#include "tables/marks_list.h"
#include "tables/problems.h"
#include "tables/quantity.h"
#include "tables/store/book.h"
#include "tables/store/practice_book.h"
#include "tables/store/refusal.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

constexpr std::size_t most_names = 12;  // in a message

std::string panel_name(const KeptBlock& panel) {
  return panel.date + (panel.title.empty() ? "" : " " + panel.title);
}

std::string mark_text(const std::optional<Decimal>& mark) {
  return mark ? mark->text(2) : std::string("no mark");
}

std::string line_text(const std::string& line) {
  return (characters::all_digits(line) ? "element " : "") + line;
}

}  // namespace

std::string day_after(const std::string& day) {
  using namespace std::chrono;
  const sys_days next =
      sys_days(year(std::stoi(day.substr(0, 4))) / month(static_cast<unsigned>(std::stoi(day.substr(5, 2)))) /
               std::chrono::day(static_cast<unsigned>(std::stoi(day.substr(8, 2))))) +
      days(1);
  const year_month_day date(next);
  return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(date.year()), static_cast<unsigned>(date.month()),
                     static_cast<unsigned>(date.day()));
}

Result<void> PracticeImport::read(const std::vector<ListedPractice>& rows) {
  return store::attempt([&] {
    BookWish wish;
    wish.what = Block::What::panel;
    panels_ = store::must(book_.find(wish));
    for (const ListedPractice& row : rows) read_row(row);
    diagnostics.sort();
  });
}

void PracticeImport::read_row(const ListedPractice& row) {
  std::string name = row.routine;
  for (const std::string* part : {&row.event, &row.date, &row.meet}) (name += '\x1F') += *part;
  auto panel = known_panels_.find(name);
  if (panel == known_panels_.end()) {
    if (!diagnostics.wants_more()) return;  // what is wrong with so many others is enough
    const auto found = panel_of(row);
    if (!found) return;
    panel = known_panels_.emplace(std::move(name), *found).first;
  }
  const PracticeTask* const task = task_of(row, tasks_.of_panel(panel->second));
  if (task != nullptr && is_on_a_day(row) && is_on_scale(row, *task)) keep(row, *task);
}

std::optional<std::int64_t> PracticeImport::panel_of(const ListedPractice& row) {
  std::vector<const KeptBlock*> of_routine, found;
  for (const KeptBlock& panel : panels_) {
    if (panel.routine != row.routine || (!row.event.empty() && panel.event != row.event)) continue;
    of_routine.push_back(&panel);
    if (panel.date == row.date && (row.meet.empty() || panel.title == row.meet)) found.push_back(&panel);
  }
  if (found.size() == 1) return found.front()->id;
  if (of_routine.empty()) {
    no_such_routine(row);
  } else if (found.empty()) {
    no_such_panel(row, of_routine);
  } else {
    const bool events = found.front()->event != found.back()->event;
    complain(row.routine_piece,
             {Problem::unknown_name, fmt::format("{} of {}", row.routine, row.date), "one panel",
              events ? "the book has it in several events: add a column event"
                     : "the book has several panels of that day: add a column meet"});
  }
  return std::nullopt;
}

void PracticeImport::no_such_routine(const ListedPractice& row) {
  std::vector<std::string_view> titles;
  for (const KeptBlock& panel : panels_) titles.push_back(panel.routine);
  const bool known = std::find(titles.begin(), titles.end(), row.routine) != titles.end();
  complain(row.routine_piece, {Problem::unknown_name,
                               known ? fmt::format("the event \"{}\" for {}", row.event, row.routine)
                                     : fmt::format("the routine \"{}\"", row.routine),
                               "a routine of the book that a panel has marked",
                               known ? "" : words::nearest_hint(row.routine, titles)});
}

void PracticeImport::no_such_panel(const ListedPractice& row,
                                   const std::vector<const KeptBlock*>& of_routine) {
  std::vector<std::string_view> meets;
  std::vector<std::string> names;
  bool day = false;
  for (const KeptBlock* panel : of_routine) {
    meets.push_back(panel->title);
    names.push_back(panel_name(*panel));
    day = day || panel->date == row.date;
  }
  const std::string expected =
      names.size() > most_names
          ? fmt::format("one of the {} panels of {} in `landdrill book list`", names.size(), row.routine)
          : fmt::format("a panel of {}: {}", row.routine, fmt::join(names, ", "));
  if (day) {
    complain(row.meet_piece, {Problem::unknown_name, fmt::format("the meet \"{}\" on {}", row.meet, row.date),
                              expected, words::nearest_hint(row.meet, meets)});
  } else {
    complain(row.date_piece, {Problem::unknown_name, fmt::format("the day {}", row.date), expected, ""});
  }
}

const PracticeTask* PracticeImport::task_of(const ListedPractice& row,
                                            const std::vector<PracticeTask>& tasks) {
  const std::string wanted = words::lower(row.line);
  std::vector<std::string> names;
  for (const PracticeTask& task : tasks) {
    if (words::lower(task.line) == wanted) return &task;
    names.push_back(task.line);
  }
  const std::vector<std::string_view> known(names.begin(), names.end());
  complain(row.line_piece,
           {Problem::unknown_element, line_text(row.line),
            names.empty() ? "a panel that can be scored with the edition it is kept with"
                          : fmt::format("what the panel of {} marked: {}", row.date, fmt::join(names, ", ")),
            words::nearest_hint(row.line, known)});
  return nullptr;
}

// She can mark a panel from its day on, and has not yet marked tomorrow. A moment is told in UTC, where it
// may still be the day before.
bool PracticeImport::is_on_a_day(const ListedPractice& row) {
  const std::string day = row.session.substr(0, 10);
  const bool day_alone = row.session.ends_with("T00:00:00Z");
  if ((day_alone ? day : day_after(day)) < row.date) {
    complain(row.session_piece, {Problem::bad_date, fmt::format("a practice on {}", day),
                                 fmt::format("the day of the panel, {}, or a later one", row.date), ""});
    return false;
  }
  if (day > today_) {
    complain(row.session_piece, {Problem::bad_date, fmt::format("a practice on {}", day),
                                 fmt::format("a day until today, {}", today_), ""});
    return false;
  }
  return true;
}

bool PracticeImport::is_on_scale(const ListedPractice& row, const PracticeTask& task) {
  if (!row.mark) return true;
  const PanelRule& rule = *task.rule;
  if (Mark(*row.mark) < rule.least || Mark(*row.mark) > rule.most) {
    complain(
        row.mark_piece,
        {Problem::out_of_range, "the mark " + row.mark->text(),
         fmt::format("a mark from {} to {} for {}", rule.least.text(), rule.most.text(), rule.aspect), ""});
    return false;
  }
  if (!(*row.mark - rule.least.value()).is_multiple_of(rule.step)) {
    complain(row.mark_piece,
             {Problem::off_step, "the mark " + row.mark->text(),
              fmt::format("a mark in steps of {} for {}", rule.step.text(), rule.aspect), ""});
    return false;
  }
  return true;
}

void PracticeImport::keep(const ListedPractice& row, const PracticeTask& task) {
  const auto [place, is_new] = places_.try_emplace({row.trainee, row.session}, sessions.size());
  if (is_new) {
    sessions.push_back({0, {row.trainee, std::nullopt}, row.session, true, {}, {}});
    rows_.emplace_back();
  }
  const auto [given, is_first] = given_.try_emplace({place->second, task.block, task.line}, &row);
  if (!is_first) {
    const ListedPractice& first = *given->second;
    if (first.mark == row.mark) return;
    complain(
        row.mark_piece,
        {Problem::repeated, fmt::format("{} for {}, marked before", mark_text(row.mark), line_text(row.line)),
         fmt::format("{}, as on line {}", mark_text(first.mark), position_of(list_, first.mark_piece).line),
         "marks of another practice need another session"});
    return;
  }
  PracticeSession& session = sessions[place->second];
  session.lines.push_back({task.block, task.line});
  session.marks.push_back({row.mark ? KeptMark::Did::marked : KeptMark::Did::skipped, row.mark, row.late});
  rows_[place->second].push_back(&row);
}

void PracticeImport::compare(const std::vector<std::vector<AddedMark>>& added) {
  for (std::size_t i = 0; i < added.size(); ++i) {
    for (std::size_t line = 0; line < added[i].size(); ++line) {
      if (added[i][line].did != AddedMark::Did::differs) continue;
      const ListedPractice& row = *rows_[i][line];
      complain(row.mark_piece,
               {Problem::contradiction, fmt::format("{} for {}", mark_text(row.mark), line_text(row.line)),
                fmt::format("{}, as the book has it of {} on {}", mark_text(added[i][line].kept), row.trainee,
                            row.session.substr(0, 10)),
                "--correct puts it in its place; marks of another practice need another session"});
    }
  }
  diagnostics.sort();
}

}  // namespace landdrill
