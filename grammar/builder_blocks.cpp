// What begins a block: a routine, an element, an option, a passage; a run, a panel.
#include <fmt/format.h>

#include "grammar/ast.h"
#include "grammar/builder.h"
#include "grammar/calendar.h"
#include "grammar/diagnostics.h"
#include "grammar/once.h"
#include "grammar/problems.h"
#include "grammar/tree.h"
#include "grammar/words.h"

namespace landdrill::ast {

void Builder::put(TitleLine& line) {
  if (line.word == Word::routine) return put_routine(line);
  line.word == Word::option ? put_option(line) : put_passage(line);
}

void Builder::put_routine(TitleLine& line) {
  out_.routine_lost = false;
  sheet_ = &out_.sheets.emplace_back();
  start_routine(line);
}

void Builder::start_routine(const TitleLine& line) {
  sheet_->sources.add(source_);
  routine_ = &sheet_->routine;
  routine_->head = line;
  in_routine_.clear();
  start(Place::header);
}

void Builder::need_routine() {
  if (place_ != Place::outside) return;
  misplaced("a routine above it", "a sheet starts with: routine \"Harbour Lights\"");
  start_lost_routine();
}

void Builder::start_lost_routine() {
  out_.routine_lost = true;
  sheet_ = &(spare_sheet_ = {});
  start_routine({});
}

void Builder::put(ElementLine& line) {
  need_routine();
  if (in_block())
    return misplaced(
        "it in a routine, above its runs and panels",
        "marks and faults follow a colon (element 2: ...); an element stands above the first run or panel");
  const bool is_new = once(in_routine_, {Word::element, without_zeros(line.number.text)}, line.number.text);
  Element& element = is_new ? new_item<Element>() : (spare_element_ = {});
  element.head = std::move(line);
  start_element(element);
}

void Builder::put_option(TitleLine& line) {
  if (place_ != Place::element) return misplaced("it in an element", "write the element above its options");
  const bool is_new = once(in_element_, {Word::option, line.title.text}, line.title.text);
  Variant& variant = is_new ? element_->variants.emplace_back() : (spare_variant_ = {});
  variant.title = line.title;
  start_variant(variant);
}

void Builder::put_passage(TitleLine& line) {
  need_routine();
  if (in_block())
    return misplaced("it in a routine, above its runs and panels",
                     "move it up, above the first run or panel");
  passage_ = &new_item<Passage>();
  passage_->head = line;
  start_passage();
}

void Builder::put(DatedLine& line) {
  const bool good = may_start(line.date);
  if (line.word == Word::run) {
    run_ = good ? &sheet_->runs.emplace_back() : &(spare_run_ = {});
    run_->head = line;
    return start(Place::run);
  }
  panel_ = good ? &sheet_->panels.emplace_back() : &(spare_panel_ = {});
  panel_->head = line;
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

}  // namespace landdrill::ast
