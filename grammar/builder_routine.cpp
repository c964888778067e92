#include "grammar/ast.h"
#include "grammar/blocks.h"
#include "grammar/builder.h"
#include "grammar/once.h"

namespace landdrill::ast {

void Builder::put(RoutineLine& line) {
  out_.routine_lost = false;
  sheet_ = &out_.sheets.emplace_back();
  start_routine(line);
}

void Builder::put(EventLine& line) {
  put_in_header(Said::event, line, &Routine::event);
}

void Builder::put(ValuesLine& line) {
  put_in_header(Said::values, line, &Routine::values);
}

void Builder::put(TempoLine& line) {
  put_in_header(Said::tempo, line, &Routine::tempo);
}

void Builder::put(SwimmersLine& line) {
  put_in_header(Said::swimmers, line, &Routine::swimmers);
}

void Builder::put(DayLine& line) {
  put_in_header(Said::day, line, &Routine::day);
}

void Builder::start_routine(const RoutineLine& line) {
  sheet_->sources.add(source_);
  routine_ = &sheet_->routine;
  routine_->head = line;
  in_routine_.clear();
  start(Place::header);
}

template <class Statement>
void Builder::put_in_header(Said what, Statement& line, std::optional<Statement> Routine::*member) {
  need_routine();
  if (place_ != Place::header)
    return misplaced("it in the header of a routine, above its first element",
                     "move it up, above the first element or passage");
  if (once(in_routine_, {what})) routine_->*member = std::move(line);
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
  const bool is_new = once(in_routine_, {Said::element, without_zeros(line.number.text)}, line.number.text);
  Element& element = is_new ? new_item<Element>() : (spare_element_ = {});
  element.head = std::move(line);
  start_element(element);
}

void Builder::put(OptionLine& line) {
  if (place_ != Place::element) return misplaced("it in an element", "write the element above its options");
  const bool is_new = once(in_element_, {Said::option, line.title.text}, line.title.text);
  Variant& variant = is_new ? element_->variants.emplace_back() : (spare_variant_ = {});
  variant.title = line.title;
  start_variant(variant);
}

void Builder::put(PassageLine& line) {
  need_routine();
  if (in_block())
    return misplaced("it in a routine, above its runs and panels",
                     "move it up, above the first run or panel");
  passage_ = &new_item<Passage>();
  passage_->head = std::move(line);
  start_passage();
}

void Builder::put(PartsLine& line) {
  put_in_variant(Said::parts, line, &Variant::parts);
}

void Builder::put(DifficultyLine& line) {
  put_in_variant(Said::difficulty, line, &Variant::difficulty);
}

void Builder::put(ExpectLine& line) {
  put_in_variant(Said::expect, line, &Variant::expect);
}

void Builder::put(SlipLine& line) {
  put_in_variant(Said::slip, line, &Variant::slip);
}

void Builder::put(CountsLine& line) {
  if (place_ != Place::passage) return put_in_variant(Said::counts, line, &Variant::counts);
  if (once(in_variant_, {Said::counts})) passage_->counts = std::move(line);
}

template <class Statement>
void Builder::put_in_variant(Said what, Statement& line, std::optional<Statement> Variant::*member) {
  if (place_ != Place::element)
    return misplaced(what == Said::counts ? "it in an element or a passage" : "it in an element",
                     variant_hint());
  if (once(in_variant_, {what})) variant_->*member = std::move(line);
}

std::string Builder::variant_hint() const {
  if (place_ == Place::passage) return "a passage has counts only; what is scored is an element";
  return "write it below its element: element 1 hybrid \"Undertow\"";
}

void Builder::put(ImpressionLine& line) {
  if (!may_speak_of_the_whole()) return;
  for (ExpectedAspect& each : line.marks)
    if (once(in_routine_, {Said::aspect, each.aspect.text}, each.aspect.text))
      routine_->impressions.push_back(std::move(each));
}

bool Builder::may_speak_of_the_whole() {
  need_routine();
  if (in_block()) {
    misplaced("it in a routine, above its runs and panels", "move it up, above the first run or panel");
    return false;
  }
  if (place_ != Place::header) start(Place::after_elements);
  return true;
}

}  // namespace landdrill::ast
