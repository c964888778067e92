#include "grammar/builder.h"

#include <fmt/format.h>

#include "grammar/ast.h"
#include "grammar/blocks.h"
#include "grammar/calendar.h"
#include "grammar/diagnostics.h"
#include "grammar/parse.h"
#include "grammar/problems.h"
#include "grammar/words.h"

namespace landdrill::ast {

Builder::Builder(const Source& source, Assembled& out) : source_(source), out_(out) {
  if (out.sheets.empty() && !out.routine_lost) return;
  sheet_ = out.routine_lost ? &spare_sheet_ : &out.sheets.back();
  sheet_->sources.add(source);
}

void Builder::add(Line& line) {
  line_ = line.text;
  std::visit([this](auto& statement) { put(statement); }, line.statement);
}

void Builder::put(BadLine& line) {
  mark_incomplete();
  switch (line.opens) {
    case Opens::nothing:
      return;
    case Opens::routine:
      return start_lost_routine();
    case Opens::run:
      if (sheet_ == nullptr) start_lost_routine();
      run_ = &(spare_run_ = {});
      return start(Place::run);
    case Opens::panel:
      if (sheet_ == nullptr) start_lost_routine();
      panel_ = &(spare_panel_ = {});
      return start(Place::panel);
    case Opens::unknown:
      forgiving_ = true;
      return;
    default:
      if (!in_block()) put_bad_item(line.opens);
  }
}

void Builder::put_bad_item(Opens opens) {
  if (routine_ == nullptr) start_lost_routine();
  if (opens == Opens::passage) {
    passage_ = &(spare_passage_ = {});
    start_passage();
  } else if (opens == Opens::option && place_ == Place::element) {
    start_variant(spare_variant_ = {});
  } else {
    start_element(spare_element_ = {});
  }
}

void Builder::mark_incomplete() {
  if (place_ == Place::run) run_->incomplete = true;
  if (place_ == Place::panel) panel_->incomplete = true;
  if (place_ == Place::element) variant_->incomplete = true;
  if (routine_ != nullptr && !in_block()) routine_->incomplete = true;
}

void Builder::start(Place place) {
  place_ = place;
  forgiving_ = false;
  in_block_.clear();
}

void Builder::start_element(Element& element) {
  element_ = &element;
  in_element_.clear();
  element.variants.reserve(2);  // as written, and mostly one option at most
  start_variant(element.variants.emplace_back());
}

void Builder::start_variant(Variant& variant) {
  variant_ = &variant;
  in_variant_.clear();
  start(Place::element);
}

void Builder::start_passage() {
  in_variant_.clear();
  start(Place::passage);
}

// What begins a block: a routine, an element, an option, a passage; a run, a panel.

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

// What a run and a panel hold.

void Builder::put(FaultsLine& line) {
  if (place_ != Place::run) return misplaced("them in a run", faults_hint(), "faults");
  if (once(in_block_, {Word::element, without_zeros(line.element.text)}, line.element.text))
    add(run_->elements, line);
}

void Builder::put(ElementMarksLine& line) {
  const bool own = place_ == Place::run && line.marks.size() == 1 && line.marks[0];
  if (!own && place_ != Place::panel) return misplaced("them in a panel", marks_hint(), "marks");
  if (once(in_block_, {Word::element, without_zeros(line.element.text)}, line.element.text))
    add(own ? run_->marks : panel_->elements, line);
}

std::string Builder::faults_hint() const {
  if (place_ == Place::panel) return "a panel holds marks: element 2: 7.25 7.50 7.00";
  return "start a run above it: run 2026-04-14 \"Tuesday\"";
}

std::string Builder::marks_hint() const {
  if (place_ == Place::run)
    return "a run holds faults or the coach's one mark: element 2: bent-knee small, or: element 2: 7.25";
  return "start a panel above it: panel 2026-05-09 \"Tarn Open\"";
}

void Builder::put(AspectMarksLine& line) {
  if (!in_block() && put_stated(line)) return;
  if (!in_block()) return misplaced("them in a run or a panel", aspect_hint(line), "marks");
  if (place_ == Place::run && (line.marks.size() != 1 || !line.marks[0])) return complain_of_run_marks(line);
  if (once(in_block_, {Word::impression, line.aspect.text}, line.aspect.text))
    add<4>(place_ == Place::run ? run_->aspects : panel_->aspects, line);
}

// `difficulty: 2.4` in an element, `spread: 0.4`, `day: 0.2`: a colon after a keyword that needs none.
bool Builder::put_stated(const AspectMarksLine& line) {
  const auto word = words::find(line.aspect.text);
  if (!word || line.marks.size() != 1 || !line.marks[0]) return false;
  const words::Keyword& keyword = words::keyword(*word);
  if (keyword.shape != words::Shape::number || !words::may_be_an_aspect(*word)) return false;
  if (keyword.colon == words::Colon::aspect && place_ != Place::element) return false;
  NumberLine stated{*word, *line.marks[0]};
  put(stated);
  return true;
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

}  // namespace landdrill::ast

namespace landdrill {

void assemble(const Source& source, Assembled& so_far) {
  ast::Builder builder(source, so_far);
  parse(
      source, [&](ast::Line& line) { builder.add(line); }, so_far.diagnostics);
}

}  // namespace landdrill
