#include "engine/routine/resolve.h"

#include <algorithm>

#include "engine/routine/difficulty.h"
#include "engine/routine/lookup.h"
#include "engine/routine/problems.h"
#include "engine/routine/routine.h"
#include "grammar/ast.h"
#include "tables/decimal.h"
#include "tables/formula.h"
#include "tables/problems.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

constexpr int most_counts = 1'000'000;  // so that no sum of counts overflows

// Resolves the routine itself, line by line; what cannot be understood is complained of and left out.
class RoutineLookup {
 public:
  RoutineLookup(Lookup& lookup, const ast::Sheet& sheet) : lookup_(lookup), sheet_(sheet) {
    routine_.title = sheet.routine.head.title.text;
    routine_.set = &lookup.set;
  }

  Routine read() && {
    read_header();
    routine_.elements.reserve(sheet_.routine.items.size());
    routine_.order.reserve(sheet_.routine.items.size());
    for (const ast::Item& item : sheet_.routine.items) {
      if (const auto* element = std::get_if<ast::Element>(&item)) read_element(*element);
      if (const auto* passage = std::get_if<ast::Passage>(&item)) read_passage(*passage);
    }
    for (const ast::NamedNumber& expected : sheet_.routine.impressions) read_impression(expected);
    resolve_choosing(lookup_, sheet_, routine_);
    return std::move(routine_);
  }

 private:
  void read_header();
  void read_event(const ast::Name& typed);
  void read_element(const ast::Element& element);
  void leave_out(const ast::Element& typed, int number);
  void read_passage(const ast::Passage& passage);
  void read_impression(const ast::NamedNumber& expected);
  void read_option(const ast::Variant& variant, const Element& element, const ast::ElementLine& head,
                   Option& option);
  bool read_parts(const ast::CountedList& typed, const Element& element, Option& option);
  bool can_be_swum(int counts, std::string_view piece);
  CountUses read_counts(const std::optional<ast::Counts>& typed);
  std::optional<Mark> mark_of(const ast::Number& typed, const Element& element, std::string_view what);
  void read_stated(const ast::Number& typed, Option& option);
  void work_out_difficulty(Option& option, const Element& element, std::string_view piece);
  void check_family(const ast::Name& code, const Part& part, const Kind& kind);

  Lookup& lookup_;
  const ast::Sheet& sheet_;
  Routine routine_;
  int counts_ = 0;  // so far, in all elements, options and passages
};

void RoutineLookup::read_header() {
  const ast::Routine& typed = sheet_.routine;
  if (typed.event) {
    read_event(*typed.event);
  } else {
    lookup_.complain(typed.head.title.text,
                     {Problem::missing_line, "a routine without an event", "a line such as `event duet-free`",
                      "the events of " + lookup_.set.name + " are listed by `values show`"});
  }
  if (typed.tempo)
    routine_.tempo =
        lookup_.number_between(*typed.tempo, "the tempo",
                               {Decimal::whole(20), Decimal::whole(400), "beats a minute, from 20 to 400"});
  if (typed.swimmers) {
    routine_.swimmers = lookup_.whole(*typed.swimmers, "the number of swimmers", 1, 100);
  }
}

void RoutineLookup::read_event(const ast::Name& typed) {
  routine_.event = lookup_.row(typed, lookup_.set.events, Problem::unknown_event, "event");
  if (routine_.event == nullptr) return;
  const std::size_t event = lookup_.set.events.place(*routine_.event);
  for (const PanelRule& rule : lookup_.set.panels) {
    if (rule.event_row != event) continue;
    if (!rule.per_element) routine_.aspects.push_back(&rule);
    if (!rule.weight) lookup_.gap(typed.text, {"panels", rule.from.key, "weight"});
  }
}

void RoutineLookup::read_element(const ast::Element& typed) {
  Element& element = routine_.elements.emplace_back();
  const std::optional<int> number = lookup_.whole(typed.head.number, "the number of the element", 1, 1000);
  element.number = number.value_or(0);
  if (typed.head.title) element.title = typed.head.title->text;
  element.kind = lookup_.row(typed.head.kind, lookup_.set.kinds, Problem::unknown_kind, "kind of element");
  if (element.kind == nullptr) {
    routine_.elements.pop_back();
    return leave_out(typed, number.value_or(0));
  }
  if (routine_.event != nullptr) element.panel = lookup_.set.element_panel(*routine_.event, *element.kind);
  read_choosing(lookup_, typed, element);
  element.options.reserve(typed.variants.size());
  for (const ast::Variant& variant : typed.variants) {
    read_option(variant, element, typed.head, element.options.emplace_back());
    // An option that says nothing of its counts takes as long as the element as written.
    if (!variant.counts) element.options.back().counts = element.options.front().counts;
  }
  routine_.order.push_back({true, routine_.elements.size() - 1});
}

// What can be said of the words below a line in error is said all the same.
void RoutineLookup::leave_out(const ast::Element& typed, int number) {
  lookup_.left_out.push_back(number);
  for (const ast::Variant& variant : typed.variants) {
    read_counts(variant.counts);
    if (!variant.parts) continue;
    for (const ast::Counted& part : *variant.parts) {
      lookup_.row(part.code, lookup_.set.parts, Problem::unknown_part, "part");
    }
  }
}

void RoutineLookup::read_passage(const ast::Passage& typed) {
  routine_.order.push_back({false, routine_.passages.size()});
  routine_.passages.push_back({typed.head.title.text, read_counts(typed.counts)});
}

void RoutineLookup::read_option(const ast::Variant& variant, const Element& element,
                                const ast::ElementLine& head, Option& option) {
  std::string_view piece = head.number.text;
  if (variant.title) option.title = piece = variant.title->text;
  if (variant.difficulty) read_stated(*variant.difficulty, option);
  const bool parts_known = !variant.parts || read_parts(*variant.parts, element, option);
  option.counts = read_counts(variant.counts);
  if (variant.expect) option.expect = mark_of(*variant.expect, element, "an expected mark");
  if (variant.best) option.best = mark_of(*variant.best, element, "a best mark");
  if (variant.slip) option.slip = lookup_.chance(*variant.slip);
  read_choosing(lookup_, variant, routine_.event, option);
  if (!variant.parts && !variant.difficulty) {
    lookup_.complain(piece, {Problem::no_difficulty, "an element with nothing that gives it a difficulty",
                             "a line `parts ...`, or `difficulty` with the declared value"});
  } else if (option.stated || (variant.parts && parts_known)) {
    work_out_difficulty(option, element, piece);
  }
}

// False when a part is unknown or has no value, so that the formula cannot be asked.
bool RoutineLookup::read_parts(const ast::CountedList& typed, const Element& element, Option& option) {
  bool known = true;
  option.parts.reserve(typed.size());
  for (const ast::Counted& one : typed) {
    const Part* part = lookup_.row(one.code, lookup_.set.parts, Problem::unknown_part, "part");
    const std::optional<int> times = lookup_.times(one.times);
    known = known && part != nullptr && times && part->value;
    if (part == nullptr || !times) continue;
    check_family(one.code, *part, *element.kind);
    if (!part->value && !option.stated) lookup_.gap(one.code.text, {"parts", part->code, "value"});
    option.parts.push_back({part, *times});
  }
  return known;
}

void RoutineLookup::check_family(const ast::Name& code, const Part& part, const Kind& kind) {
  if (part.family_row == no_row) return;
  const Family* family = &lookup_.set.families.all()[part.family_row];
  if (family->kinds.empty()) return;
  if (std::find(family->kinds.begin(), family->kinds.end(), kind.code) != family->kinds.end()) return;
  lookup_.complain(code.text, {Problem::wrong_family,
                               quoted("the part", part.code) + " of the family " + family->code + " in " +
                                   with_article(kind.code),
                               "a part that may stand in " + with_article(kind.code)});
}

CountUses RoutineLookup::read_counts(const std::optional<ast::Counts>& typed) {
  CountUses uses;
  if (!typed) return uses;
  uses.reserve(typed->size());
  for (const ast::Count& one : *typed) {
    const std::optional<int> counts = lookup_.whole(one.counts, "the counts", 0, 10'000);
    if (!counts || !can_be_swum(*counts, one.counts.text)) continue;
    uses.push_back({*counts, one.where.text, words::same(one.where.text, words::under)});
  }
  return uses;
}

// Complains once, at the count that is too much.
bool RoutineLookup::can_be_swum(int counts, std::string_view piece) {
  if (counts_ > most_counts) return false;
  counts_ += counts;
  if (counts_ <= most_counts) return true;
  lookup_.complain(piece,
                   {Problem::too_large, "more than " + std::to_string(most_counts) + " counts in the routine",
                    "a routine that someone can swim"});
  return false;
}

std::optional<Mark> RoutineLookup::mark_of(const ast::Number& typed, const Element& element,
                                           std::string_view what) {
  if (routine_.event == nullptr) return std::nullopt;
  if (element.panel != nullptr) return lookup_.mark(typed, *element.panel, false);
  lookup_.complain(typed.text,
                   {Problem::no_element_panel, std::string(what) + " for " + with_article(element.kind->code),
                    "no mark: no panel of " + routine_.event->code + " marks such an element by itself"});
  return std::nullopt;
}

void RoutineLookup::read_stated(const ast::Number& typed, Option& option) {
  const std::optional<Decimal> stated = lookup_.number(typed, "the difficulty");
  if (stated && *stated < Decimal()) {
    lookup_.complain(
        typed.text, {Problem::out_of_range, "the difficulty " + stated->text(), "a difficulty of 0 or more"});
    return;
  }
  if (stated) option.stated = Difficulty(*stated);
}

void RoutineLookup::work_out_difficulty(Option& option, const Element& element, std::string_view piece) {
  const Kind& kind = *element.kind;
  if (!option.stated && !kind.formula) return lookup_.gap(piece, {"kinds", kind.code, "formula"});
  const bool uses_base =
      !option.stated && std::any_of(kind.formula->steps.begin(), kind.formula->steps.end(),
                                    [](const FormulaStep& step) { return step.does == Operation::base; });
  if (uses_base && !kind.base) return lookup_.gap(piece, {"kinds", kind.code, "base"});
  if (option.slip && !kind.base) lookup_.gap(piece, {"kinds", kind.code, "base"});
  try {
    const Declared result = declared(option, kind);
    option.declared = result.difficulty;
    if (result.difficulty && *result.difficulty >= Difficulty()) return;
    const std::string why = result.difficulty ? "it gives " + result.difficulty->text() : result.why_not;
    lookup_.complain(
        piece, {Problem::formula_fails, "no difficulty by the formula of " + kind.code + ": " + why,
                "a difficulty of 0 or more", "look at the formula in kinds.csv of " + lookup_.set.name});
  } catch (const Overflow&) {
    lookup_.complain(piece,
                     {Problem::too_large, "a difficulty too large to stay exact", "one below 9000000000000"});
  }
}

void RoutineLookup::read_impression(const ast::NamedNumber& typed) {
  if (routine_.event == nullptr) return;
  const PanelRule* rule = lookup_.aspect_rule(typed.name, routine_);
  const std::optional<Mark> mark = rule == nullptr ? std::nullopt : lookup_.mark(typed.number, *rule, false);
  if (mark) routine_.impressions.push_back({rule, *mark});
}

}  // namespace

Resolved resolve(const ast::Sheet& sheet, const ValueSet& set) {
  Resolved resolved;
  Lookup lookup(set, sheet.sources, resolved);
  Routine routine = RoutineLookup(lookup, sheet).read();
  if (routine.event != nullptr) {
    resolve_runs(lookup, sheet, routine);
    resolve_panels(lookup, sheet, routine);
  }
  if (resolved.diagnostics.ok()) resolved.routine = std::move(routine);
  return resolved;
}

}  // namespace landdrill
