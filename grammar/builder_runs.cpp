#include <fmt/format.h>

#include "grammar/ast.h"
#include "grammar/blocks.h"
#include "grammar/builder.h"
#include "grammar/calendar.h"
#include "grammar/diagnostics.h"
#include "grammar/once.h"
#include "grammar/problems.h"
#include "grammar/words.h"

namespace landdrill::ast {

void Builder::put(RunLine& line) {
  const bool good = may_start(line.date);
  run_ = good ? &sheet_->runs.emplace_back() : &(spare_run_ = {});
  run_->head = std::move(line);
  start(Place::run);
}

void Builder::put(PanelLine& line) {
  const bool good = may_start(line.date);
  panel_ = good ? &sheet_->panels.emplace_back() : &(spare_panel_ = {});
  panel_->head = std::move(line);
  start(Place::panel);
}

bool Builder::may_start(const Date& date) {
  if (sheet_ == nullptr) need_routine();
  const bool exists = is_day_of_the_calendar(date.text);
  if (!exists)
    complain(date.text, {Problem::bad_date, fmt::format("\"{}\"", date.text), "a day of the calendar",
                         day_hint(date.text)});
  return exists;
}

void Builder::put(FaultsLine& line) {
  if (place_ != Place::run) return misplaced("them in a run", faults_hint(), "faults");
  if (once(in_block_, {Said::element, without_zeros(line.element.text)}, line.element.text))
    add(run_->elements, line);
}

void Builder::put(ElementMarksLine& line) {
  if (place_ != Place::panel) return misplaced("them in a panel", marks_hint(), "marks");
  if (once(in_block_, {Said::element, without_zeros(line.element.text)}, line.element.text))
    add(panel_->elements, line);
}

std::string Builder::faults_hint() const {
  if (place_ == Place::panel) return "a panel holds marks: element 2: 7.25 7.50 7.00";
  return "start a run above it: run 2026-04-14 \"Tuesday\"";
}

std::string Builder::marks_hint() const {
  if (place_ == Place::run) return "a run holds faults: element 2: bent-knee small, or: element 2: clean";
  return "start a panel above it: panel 2026-05-09 \"Tarn Open\"";
}

void Builder::put(AspectMarksLine& line) {
  if (!in_block() && put_stated(line)) return;
  if (!in_block()) return misplaced("them in a run or a panel", aspect_hint(line), "marks");
  if (place_ == Place::run && (line.marks.size() != 1 || !line.marks[0])) return complain_of_run_marks(line);
  if (once(in_block_, {Said::aspect, line.aspect.text}, line.aspect.text))
    add<4>(place_ == Place::run ? run_->aspects : panel_->aspects, line);
}

void Builder::complain_of_run_marks(const AspectMarksLine& line) {
  run_->incomplete = true;
  complain(line.aspect.text,
           {Problem::syntax,
            line.marks.size() == 1 ? "no mark in a run" : fmt::format("{} marks in a run", line.marks.size()),
            "the one mark that the coach gives", "the marks of several judges belong in a panel"});
}

std::string Builder::aspect_hint(const AspectMarksLine& line) {
  const auto near = words::nearest_keyword(line.aspect.text);
  if (near && words::may_be_an_aspect(*near) && words::find(line.aspect.text))
    return fmt::format("in a routine it is written like this: {}", words::keyword(*near).example);
  if (near) return fmt::format("the nearest keyword is {}", words::keyword(*near).word);
  return "the marks you expect go into the routine as: impression choreography 7.50";
}

void Builder::put(SyncLine& line) {
  put_in_block(Said::sync, line, &Run::sync, &Panel::sync);
}

void Builder::put(PenaltyLine& line) {
  put_in_block(Said::penalty, line, &Run::penalty, &Panel::penalty);
}

void Builder::put(ResultLine& line) {
  if (place_ != Place::panel)
    return misplaced("it in a panel", "a result is what was announced after a panel");
  if (once(in_block_, {Said::result})) panel_->result = line;
}

template <class Statement>
void Builder::put_in_block(Said what, Statement& line, std::optional<Statement> Run::*of_run,
                           std::optional<Statement> Panel::*of_panel) {
  if (!in_block())
    return misplaced("it in a run or a panel", "start a run above it: run 2026-04-14 \"Tuesday\"");
  if (!once(in_block_, {what})) return;
  (place_ == Place::run ? run_->*of_run : panel_->*of_panel) = std::move(line);
}

}  // namespace landdrill::ast
