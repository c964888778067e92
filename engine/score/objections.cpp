#include "engine/score/objections.h"

#include <algorithm>
#include <iterator>

#include "engine/routine/problems.h"
#include "engine/routine/resolve.h"
#include "engine/routine/routine.h"
#include "engine/routine/timing.h"
#include "engine/routine/wish.h"
#include "engine/score/execution.h"
#include "engine/score/problems.h"
#include "engine/score/totals.h"
#include "grammar/blocks.h"
#include "grammar/diagnostics.h"
#include "grammar/problem_code.h"
#include "tables/decimal.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

int counts_swum(const Routine& routine, const Wish& wish) {
  int sum = 0;
  for (std::size_t i = 0; i < routine.elements.size(); ++i) sum += counts_in(chosen(routine, i, wish).counts);
  for (const Passage& passage : routine.passages) sum += counts_in(passage.counts);
  return sum;
}

// What depends on which options are chosen.
bool is_of_options(ProblemCode problem) {
  constexpr ProblemCode all[] = {Problem::part_count, Problem::over_family_limit, Problem::over_code_limit,
                                 Problem::quota,      Problem::over_time,         Problem::under_time};
  return std::find(std::begin(all), std::end(all), problem) != std::end(all);
}

void look_at_all_families(const Routine& routine, const Wish& wish, std::vector<Objection>& found) {
  const std::vector<Family>& families = routine.set->families.all();
  std::vector<std::int64_t> parts(families.size());
  for (std::size_t i = 0; i < routine.elements.size(); ++i) {
    for (const PartUse& use : chosen(routine, i, wish).parts) {
      if (use.part->family_row != no_row) parts[use.part->family_row] += use.times;
    }
  }
  for (std::size_t row = 0; row < families.size(); ++row) {
    if (!is_outside(parts[row], {}, families[row].most_in_routine)) continue;
    found.push_back({Problem::over_family_limit,
                     plural(parts[row], "part") + " of " + families[row].code + " in the routine",
                     range_of({}, families[row].most_in_routine), nullptr, Objection::About::title});
  }
}

void look_at_quota(const Quota& quota, const Routine& routine, const Wish& wish,
                   std::vector<Objection>& found) {
  int count = 0;
  for (std::size_t i = 0; i < routine.elements.size(); ++i) {
    const Kind& is = *routine.elements[i].kind;
    const bool kind = quota.kind.empty() || routine.set->kinds.place(is) == quota.kind_row;
    const bool family = quota.family.empty() || holds_family(chosen(routine, i, wish), quota.family_row);
    if (kind && family) ++count;
  }
  if (!is_outside(count, quota.least, quota.most)) return;
  std::string counted = plural(count, quota.kind.empty() ? "element" : quota.kind + " element");
  if (!quota.family.empty()) counted += " with a part of " + quota.family;
  found.push_back({Problem::quota, std::move(counted),
                   range_of(quota.least, quota.most) + " in " + routine.event->code, nullptr,
                   Objection::About::event});
}

void look_at_time(const Routine& routine, const Wish& wish, std::vector<Objection>& found) {
  const Event& event = *routine.event;
  const int counts = counts_swum(routine, wish);
  if (!routine.tempo || !event.seconds || counts == 0) return;
  const Exact seconds = seconds_of(counts, *routine.tempo);
  const Decimal tolerance = event.tolerance.value_or(Decimal());
  const bool over = seconds > Exact(*event.seconds + tolerance);
  if (!over && seconds >= Exact(*event.seconds - tolerance)) return;
  // To a thousandth, so that a routine over by less than a tenth is not told that it is on time.
  found.push_back({over ? Problem::over_time : Problem::under_time,
                   round(seconds, 3, Rounding::half_up).text(1) + " s of counts at " + routine.tempo->text() +
                       " beats a minute",
                   event.seconds->text() + " s, with a tolerance of " + tolerance.text() + " s", nullptr,
                   Objection::About::tempo});
}

void look_at_swimmers(const Routine& routine, std::vector<Objection>& found) {
  const Event& event = *routine.event;
  if (!routine.swimmers || !is_outside(*routine.swimmers, event.least_swimmers, event.most_swimmers)) return;
  found.push_back({Problem::swimmers, plural(*routine.swimmers, "swimmer"),
                   range_of(event.least_swimmers, event.most_swimmers) + " in " + event.code, nullptr,
                   Objection::About::swimmers});
}

}  // namespace

std::vector<Objection> objections_to(const Routine& routine, const Wish& wish) {
  std::vector<Objection> found;
  look_at_all_families(routine, wish, found);
  const std::size_t event = routine.set->events.place(*routine.event);
  for (const Quota& quota : routine.set->quotas) {
    if (quota.event_row == event) look_at_quota(quota, routine, wish, found);
  }
  look_at_time(routine, wish, found);
  look_at_swimmers(routine, found);
  return found;
}

Diagnostics objections_with(const Routine& routine, const Wish& wish, const Diagnostics& of_sheet) {
  Diagnostics result;
  std::vector<Objection> now;
  const auto add = [&](std::vector<Objection> more) {
    now.insert(now.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
  };
  for (std::size_t i = 0; i < routine.elements.size(); ++i)
    add(objections_to(chosen(routine, i, wish), *routine.elements[i].kind, *routine.set));
  add(objections_to(routine, wish));
  for (const Diagnostic& said : of_sheet.list()) {
    const auto same = std::find_if(now.begin(), now.end(), [&](const Objection& one) {
      return one.problem == said.problem && one.found == said.found && one.expected == said.expected;
    });
    if (same == now.end() && is_of_options(said.problem)) continue;
    if (same != now.end()) now.erase(same);
    result.add(said);
  }
  for (const Objection& one : now) {
    Diagnostic fresh{one.problem, {}, {}, {}, 0, 1, one.found, one.expected, {}};
    fresh.at.line = 0;
    result.add(std::move(fresh));
  }
  return result;
}

// What the rules of the event would object to, at its places in the sheet. Warnings: the routine can be
// priced all the same.

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
      for (Objection& one : objections_to(element.options[i], *element.kind, *routine.set))
        complain(variant.title ? variant.title->text : typed->head.number.text, std::move(one));
    }
  }
  for (Objection& one : objections_to(routine, Wish())) complain(piece_of(sheet, one.about), std::move(one));
}

// A run may be better than expected; one that is so by far has rather not noted every fault.
void add_doubts(const ast::Sheet& sheet, const Routine& routine, Diagnostics& diagnostics) {
  for (const Run& run : routine.runs) {
    for (const RunElement& seen : run.elements) {
      const PanelRule& rule = *routine.elements[seen.element].panel;
      const Option& option = routine.elements[seen.element].options.front();
      const RunMark told = run_mark(run, seen, rule, option.best);
      if (!told.mark || !option.expect) continue;
      const Decimal above = told.mark->value() - option.expect->value();
      const Decimal doubt =
          round(Exact((rule.most - rule.least).value()) * Exact(routine.set->estimate("doubt")),
                Decimal::places, Rounding::half_up);
      if (above <= doubt) continue;
      diagnostics.complain(
          sheet.sources, seen.where,
          {Problem::doubtful_run,
           told.mark->text(2) + " from the run of " + std::string(run.date) + ", " + above.text(2) +
               " above the " + option.expect->text(2) + " you expect",
           "at most " + doubt.text(2) + " above it",
           seen.mark ? "is the mark right, or has `expect` to go up?"
                     : "are faults missing? Else say with `best` what a faultless showing by these swimmers "
                       "would get: deductions are taken from it"});
    }
  }
}

}  // namespace

Resolved understood(const ast::Sheet& sheet, const ValueSet& set) {
  Resolved resolved = resolve(sheet, set);
  if (!resolved.routine) return resolved;
  if (stays_exact(*resolved.routine)) {
    add_limits(sheet, *resolved.routine, resolved.diagnostics);
    add_doubts(sheet, *resolved.routine, resolved.diagnostics);
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
