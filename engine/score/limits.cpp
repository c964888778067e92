// What the rules of the event would object to, at its places in the sheet. Warnings: the routine can be
// priced all the same.
#include "engine/score/objections.h"
#include "engine/routine/reading.h"

namespace landdrill {
namespace {

// The word of the sheet that an objection is about.
std::string_view piece_of(const ast::Sheet& sheet, Objection::About about) {
  switch (about) {
    case Objection::About::event:
      return sheet.routine.event->event.text;
    case Objection::About::tempo:
      return sheet.routine.tempo->beats_a_minute.text;
    case Objection::About::swimmers:
      return sheet.routine.swimmers->swimmers.text;
    default:
      return sheet.routine.head.title.text;
  }
}

}  // namespace

void check_limits(Reading& reading, const ast::Sheet& sheet, const Routine& routine) {
  Objections objections(routine);
  const auto complain = [&](std::string_view piece, Objection&& one) {
    reading.complain(piece, {one.problem, std::move(one.found), std::move(one.expected)});
  };
  std::size_t index = 0;
  for (const ast::Item& item : sheet.routine.items) {
    const auto* typed = std::get_if<ast::Element>(&item);
    if (typed == nullptr) continue;
    const Element& element = routine.elements[index++];
    for (std::size_t i = 0; i < element.options.size(); ++i) {
      const ast::Variant& variant = typed->variants[i];
      for (Objection& one : objections.to_option(element, element.options[i]))
        complain(variant.title ? variant.title->text : typed->head.number.text, std::move(one));
    }
  }
  for (Objection& one : objections.to_routine({})) complain(piece_of(sheet, one.about), std::move(one));
}

}  // namespace landdrill
