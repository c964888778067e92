#include "engine/report/practice.h"

#include <fmt/format.h>

#include <cmath>

#include "tables/binary.h"
#include "engine/report/chance.h"
#include "engine/report/csv.h"
#include "engine/report/figures.h"
#include "engine/report/grid.h"
#include "engine/report/json_text.h"
#include "engine/report/practice_list.h"
#include "engine/report/sections.h"

namespace landdrill::report {
namespace {

// Never "-0.00".
std::string signed_number(std::optional<double> value) {
  const std::string text = figure(value);
  return text.empty() || text.starts_with('-') ? text : "+" + text;
}
std::string share(std::optional<double> value) {
  return value ? fmt::format("{:.0f} %", *value * 100) : std::string();
}

std::string judges_marks(const JudgeMarks& judges) {
  std::string text;
  for (const std::optional<Mark>& mark : judges)
    text += (text.empty() ? "" : " ") + (mark ? mark->text(2) : std::string("-"));
  return text;
}

struct Compared {
  std::string task, meet, yours, panel, off, judges;
};
Compared compared(const PracticeTask& task, const Practised& done) {
  const double hers = done.mark ? binary(*done.mark) : 0;
  return {task.label,
          task.routine + ", " + task.panel,
          done.mark ? done.mark->text(2) : std::string(done.late ? "too late" : "skipped"),
          figure(task.kept),
          done.mark ? signed_number(hers - task.kept) : std::string(),
          judges_marks(task.judges)};
}

std::string tasks_section(const PracticeTold& told, const TextWish& wish) {
  Grid grid({{"element", Align::words, true},
             {"swum", Align::words, true},
             {"you", Align::amount},
             {"panel", Align::amount},
             {"off", Align::amount},
             {"judges", Align::words, true}});
  for (std::size_t i = 0; i < told.tasks.size(); ++i) {
    const Compared row = compared(told.tasks[i], told.done[i]);
    grid.add({row.task, row.meet, row.yours, row.panel, row.off, row.judges});
  }
  return heading("Your marks beside the panel's", wish) + grid.text(wish.width, wish.colour);
}

std::string summary(const PracticeReport& report, const TextWish& wish) {
  if (!report.bias) return {};
  Grid grid({{"", Align::words}, {"", Align::words, true}});
  grid.add({"bias", signed_number(report.bias) + " marks (above the panel is +)"});
  grid.add({"how far off", figure(report.difference) + " marks on average, whichever way"});
  grid.add({"within one step", share(report.within_one) + ", within two " + share(report.within_two)});
  if (report.order.value)
    grid.add({"same order", figure(report.order.value) + " (1 ranks as the panel does, 0 as chance would)"});
  grid.add({"use of the scale",
            fmt::format("you {} to {}, the panel {} to {}", figure(report.lowest), figure(report.highest),
                        figure(report.panel_lowest), figure(report.panel_highest))});
  if (report.first_half)
    grid.add({"steadiness", fmt::format("off by {} in the first half, {} in the second",
                                        figure(report.first_half), figure(report.second_half))});
  if (report.late > 0) grid.add({"too late", fmt::format("{} of the marks", report.late)});
  return heading("How you mark", wish) + grid.text(wish.width, wish.colour);
}

std::string judges_section(const PracticeReport& report, const TextWish& wish) {
  if (report.judges.empty()) return {};
  Grid grid({{"judge"}, {"marks", Align::amount}, {"you are", Align::amount}, {"apart", Align::amount}});
  for (const auto& one : report.judges)
    grid.add({fmt::format("judge {}", one.judge + 1), std::to_string(one.tasks), signed_number(one.bias),
              figure(one.difference)});
  return heading("Against each judge", wish) + grid.text(wish.width, wish.colour);
}

std::string where_section(const PracticeReport& report, const TextWish& wish) {
  if (report.where.size() < 2) return {};
  Grid grid({{"where", Align::words, true},
             {"marks", Align::amount},
             {"you are", Align::amount},
             {"off", Align::amount}});
  auto before = PracticeReport::Where::By::kind;
  for (const auto& one : report.where) {
    if (one.by != before) grid.add_rule();
    before = one.by;
    grid.add({one.name, std::to_string(one.tasks), signed_number(one.bias), figure(one.difference)});
  }
  return heading("Where you are off", wish) + grid.text(wish.width, wish.colour);
}

std::string practice_text(const PracticeTold& told, const TextWish& wish) {
  const PracticeReport& report = *told.report;
  std::string text = fmt::format("Practice of {}, {}: {} marked, {} not\n", told.trainee,
                                 moment(told.started), report.marked, report.skipped);
  std::vector<std::string> said = report.sentences;
  said.insert(said.end(), report.warnings.begin(), report.warnings.end());
  if (!said.empty()) text += "\n" + bullets(said, wish);
  return text + tasks_section(told, wish) + summary(report, wish) + where_section(report, wish) +
         judges_section(report, wish);
}

// As text, as all amounts are: short and without an exponent.
json::value number_or_null(std::optional<double> value) {
  return value ? json::value(as_number(std::round(*value * 1e6) / 1e6)) : json::value(nullptr);
}

json::object summary_json(const PracticeReport& report) {
  return {{"marked", report.marked},
          {"skipped", report.skipped},
          {"late", report.late},
          {"corrected", report.corrected},
          {"bias", number_or_null(report.bias)},
          {"difference", number_or_null(report.difference)},
          {"within_one", number_or_null(report.within_one)},
          {"within_two", number_or_null(report.within_two)},
          {"order", number_or_null(report.order.value)},
          {"spread", number_or_null(report.spread)},
          {"panel_spread", number_or_null(report.panel_spread)},
          {"first_half", number_or_null(report.first_half)},
          {"second_half", number_or_null(report.second_half)}};
}

std::string practice_json(const PracticeTold& told) {
  json::array marks;
  for (std::size_t i = 0; i < told.tasks.size(); ++i) {
    const PracticeTask& task = told.tasks[i];
    const Practised& done = told.done[i];
    marks.push_back(json::object{{"routine", task.routine},
                                 {"panel", task.panel},
                                 {"line", task.line},
                                 {"kind", task.kind},
                                 {"mark", done.mark ? json::value(done.mark->text(2)) : json::value(nullptr)},
                                 {"late", done.late},
                                 {"kept", number_or_null(task.kept)},
                                 {"corrected", task.corrected}});
  }
  json::array where;
  for (const auto& one : told.report->where) {
    constexpr const char* by[] = {"kind", "level", "time"};
    where.push_back(json::object{{"by", by[static_cast<std::size_t>(one.by)]},
                                 {"name", one.name},
                                 {"marks", one.tasks},
                                 {"bias", number_or_null(one.bias)},
                                 {"difference", number_or_null(one.difference)}});
  }
  json::object all{{"trainee", told.trainee},
                   {"started", told.started},
                   {"marks", std::move(marks)},
                   {"summary", summary_json(*told.report)},
                   {"where", std::move(where)}};
  return json_text(all, JsonLayout::indented);
}

std::string practice_csv(const PracticeTold& told) {
  std::string text = csv_row(
      {"trainee", "started", "routine", "panel", "line", "kind", "mark", "late", "kept", "off", "corrected"});
  for (std::size_t i = 0; i < told.tasks.size(); ++i) {
    const PracticeTask& task = told.tasks[i];
    const Practised& done = told.done[i];
    const Compared row = compared(task, done);
    const std::string mark = done.mark ? row.yours : std::string();
    text += csv_row({told.trainee, told.started, task.routine, task.panel, task.line, task.kind, mark,
                     done.late ? "yes" : "no", row.panel, row.off, task.corrected ? "yes" : "no"});
  }
  return text;
}

}  // namespace

std::string practice(const PracticeTold& told, Format format, const TextWish& wish) {
  if (format == Format::json) return practice_json(told);
  return format == Format::csv ? practice_csv(told) : practice_text(told, wish);
}

std::string practice_curve(std::string_view trainee, const std::vector<PracticePoint>& points, Format format,
                           const TextWish& wish) {
  if (format == Format::json) {
    json::array sessions;
    for (const PracticePoint& point : points) {
      json::object one = summary_json(*point.report);
      one["started"] = point.started;
      one["number"] = point.number;
      sessions.push_back(std::move(one));
    }
    return json_text(json::object{{"trainee", trainee}, {"sessions", std::move(sessions)}},
                     JsonLayout::indented);
  }
  std::string csv =
      csv_row({"trainee", "started", "marked", "bias", "difference", "within_one", "order", "number"});
  Grid grid({{"", Align::amount},
             {"session", Align::words},
             {"marks", Align::amount},
             {"bias", Align::amount},
             {"off", Align::amount},
             {"within a step", Align::amount},
             {"order", Align::amount},
             {"", Align::words}});
  for (const PracticePoint& point : points) {
    const PracticeReport& told = *point.report;
    const std::string marks = std::to_string(told.marked), bias = signed_number(told.bias),
                      off = figure(told.difference), within = share(told.within_one),
                      within_in_full = figure(told.within_one), order = figure(told.order.value),
                      session = std::to_string(point.number);
    csv += csv_row({trainee, point.started, marks, bias, off, within_in_full, order, session});
    // One sign for each tenth of a mark that she is off.
    const auto tenths = static_cast<std::size_t>(std::lround(told.difference.value_or(0) * 10));
    grid.add({session, moment(point.started), marks, bias, off, within, order,
              std::string(std::min<std::size_t>(tenths, 20), '=')});
  }
  if (format == Format::csv) return csv;
  return fmt::format("Practice of {} over time: the shorter the bar, the closer to the panel\n\n", trainee) +
         grid.text(wish.width, wish.colour);
}

}  // namespace landdrill::report
