#include "grammar/ast.h"
#include "grammar/builder.h"
#include "grammar/diagnostics.h"
#include "grammar/once.h"
#include "grammar/problems.h"
#include "grammar/words.h"

namespace landdrill::ast {

void Builder::put(SpreadLine& line) {
  need_routine();
  if (place_ == Place::header && once(in_routine_, {Said::spread})) routine_->spread = line;
  if (place_ == Place::element && once(in_variant_, {Said::spread})) variant_->spread = line;
  if (place_ == Place::header || place_ == Place::element) return;
  misplaced("it in the header of a routine, in an element or in an option",
            "move it up, above the first element or passage, where it is meant for all");
}

void Builder::put(LimitLine& line) {
  need_routine();
  if (place_ != Place::header)
    return misplaced("it in the header of a routine, above its first element",
                     "move it up, above the first element or passage");
  const std::string_view word = line.word();
  const Once::Key key =
      word.empty() ? Once::Key{Said::limit_of_code, line.name.text} : Once::Key{Said::limit, word};
  if (once(in_routine_, key, line.name.text)) routine_->limits.push_back(line);
}

void Builder::put(ErrorsLine& line) {
  if (!may_speak_of_the_whole()) return;
  for (ExpectedErrors& each : line.errors)
    if (once(in_routine_, {Said::errors, each.sync.text}, each.sync.text))
      routine_->errors.push_back(std::move(each));
}

void Builder::put(RiskLine& line) {
  if (!may_speak_of_the_whole()) return;
  for (ExpectedPenalty& each : line.penalties)
    if (once(in_routine_, {Said::risk, each.penalty.text}, each.penalty.text))
      routine_->risks.push_back(std::move(each));
}

void Builder::put(OptionalLine&) {
  put_in_element(Said::optional, &Element::optional);
}

void Builder::put(StaysLine&) {
  put_in_element(Said::stays, &Element::stays);
}

void Builder::put_in_element(Said what, std::string_view Element::*member) {
  if (place_ != Place::element) return misplaced("it in an element", variant_hint());
  if (in_option()) return complain_of_option();
  if (once(in_element_, {what})) element_->*member = first_word();
}

// It stands in an element all the same, so that the lines below it are in their places.
void Builder::complain_of_option() {
  mark_incomplete();
  if (!forgiving_)
    complain(first_word(), {Problem::misplaced, "\"" + std::string(first_word()) + "\" in an option",
                            "it in an element, above its options", "move it up, above the first option"});
}

// `difficulty: 2.4` in an element, `spread: 0.4`, `day: 0.2`: a colon after a keyword that needs none.
bool Builder::put_stated(const AspectMarksLine& line) {
  const auto word = words::find(line.aspect.text);
  if (!word || line.marks.size() != 1 || !line.marks[0]) return false;
  if (*word == words::Word::difficulty && place_ == Place::element) {
    DifficultyLine stated{*line.marks[0]};
    put(stated);
    return true;
  }
  if (*word == words::Word::spread) {
    SpreadLine stated{*line.marks[0]};
    put(stated);
    return true;
  }
  if (*word != words::Word::day) return false;
  DayLine stated{*line.marks[0]};
  put(stated);
  return true;
}

}  // namespace landdrill::ast
