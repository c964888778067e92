// What the rules of the event would object to, at its places in the sheet. Warnings: the routine can be
// priced all the same.
#include "engine/routine/problems.h"
#include "engine/routine/resolve.h"
#include "engine/score/objections.h"
#include "engine/score/stays_exact.h"
#include "grammar/blocks.h"
#include "grammar/diagnostics.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

// The word of the sheet that an objection is about.
std::string_view piece_of(const ast::Sheet& sheet, Objection::About about) {
  switch (about) {
    case Objection::About::event:
      return sheet.routine.event->text;
    case Objection::About::tempo:
      return sheet.routine.tempo->text;
    case Objection::About::swimmers:
      return sheet.routine.swimmers->text;
    default:
      return sheet.routine.head.title.text;
  }
}

void add_limits(const ast::Sheet& sheet, const Routine& routine, Diagnostics& diagnostics) {
  Objections objections(routine);
  const auto complain = [&](std::string_view piece, Objection&& one) {
    diagnostics.add(
        diagnostic_at(sheet.sources, piece, {one.problem, std::move(one.found), std::move(one.expected)}));
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

}  // namespace

Resolved understood(const ast::Sheet& sheet, const ValueSet& set) {
  Resolved resolved = resolve(sheet, set);
  if (!resolved.routine) return resolved;
  if (stays_exact(*resolved.routine)) {
    add_limits(sheet, *resolved.routine, resolved.diagnostics);
    return resolved;
  }
  resolved.diagnostics.add(
      diagnostic_at(sheet.sources, sheet.routine.head.title.text,
                    {Problem::too_large, "a score too large to stay exact", "one below 9000000000000",
                     "look at the difficulties of the sheet and the weights of the set"}));
  resolved.routine.reset();
  return resolved;
}

void understand(Sheet& sheet, const ValueSet& set) {
  if (sheet.tree() != nullptr) sheet.take(understood(*sheet.tree(), set));
}

}  // namespace landdrill
