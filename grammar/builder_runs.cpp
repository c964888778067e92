// What a run and a panel hold.
#include <fmt/format.h>

#include "grammar/ast.h"
#include "grammar/builder.h"
#include "grammar/diagnostics.h"
#include "grammar/once.h"
#include "grammar/problems.h"
#include "grammar/tree.h"
#include "grammar/words.h"

namespace landdrill::ast {

void Builder::put(FaultsLine& line) {
  if (place_ != Place::run) return misplaced("them in a run", faults_hint(), "faults");
  if (once(in_block_, {Word::element, without_zeros(line.element.text)}, line.element.text))
    add(run_->elements, line);
}

void Builder::put(ElementMarksLine& line) {
  if (place_ != Place::panel) return misplaced("them in a panel", marks_hint(), "marks");
  if (once(in_block_, {Word::element, without_zeros(line.element.text)}, line.element.text))
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
