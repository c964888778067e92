// What a sheet says for choosing: spreads, expected sync errors, chances of penalties, limits of a plan, and
// the elements that it may leave out or has to keep.
#include <algorithm>

#include "engine/routine/lookup.h"
#include "engine/routine/problems.h"
#include "engine/routine/routine.h"
#include "grammar/ast.h"
#include "grammar/blocks.h"
#include "grammar/diagnostics.h"
#include "tables/decimal.h"
#include "tables/problems.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

constexpr int most_of_anything = 10'000;

// Nothing while no event is known.
std::optional<Decimal> width_if_any(const Lookup& lookup, const Event* event) {
  return event == nullptr ? std::nullopt : width_of_scale(lookup.set, *event);
}

std::optional<Decimal> scatter(Lookup& lookup, const ast::Number& typed, std::string_view what,
                               const std::optional<Decimal>& width) {
  const Decimal most = width.value_or(Decimal::whole(most_of_anything));
  const std::string expected =
      "a standard deviation from 0 to " + most.text() + " marks" + (width ? ", the width of the scale" : "");
  return lookup.number_between(typed, what, {Decimal(), most, expected});
}

// ---- what is expected of the whole ----

void read_errors(Lookup& lookup, const ast::Sheet& sheet, Routine& routine) {
  for (const ast::NamedNumber& typed : sheet.routine.errors) {
    const SyncClass* sync =
        lookup.row(typed.name, lookup.set.sync, Problem::unknown_sync, "class of sync error");
    const std::optional<Decimal> number = lookup.number_between(
        typed.number, "the expected number",
        {Decimal(), Decimal::whole(1000), "how many sync errors there are on average, from 0 to 1000"});
    if (sync == nullptr || !number) continue;
    if (!sync->points) lookup.gap(typed.name.text, {"sync", sync->code, "points"});
    routine.errors.push_back({sync, *number});
  }
}

void read_risks(Lookup& lookup, const ast::Sheet& sheet, Routine& routine) {
  for (const ast::NamedNumber& typed : sheet.routine.risks) {
    const Penalty* penalty =
        lookup.row(typed.name, lookup.set.penalties, Problem::unknown_penalty, "penalty");
    const std::optional<Decimal> chance = lookup.chance(typed.number);
    if (penalty == nullptr || !chance) continue;
    if (!penalty->points) lookup.gap(typed.name.text, {"penalties", penalty->code, "points"});
    routine.risks.push_back({penalty, *chance});
  }
}

// ---- limits ----

using Of = OwnLimit::Of;

std::optional<Of> word_from(std::string_view word) {
  constexpr std::array<Of, words::limited.size()> in_order = {Of::elements, Of::seconds, Of::under,
                                                              Of::breath};
  for (std::size_t i = 0; i < in_order.size(); ++i)
    if (words::limited[i] == word) return in_order[i];
  return std::nullopt;
}

std::optional<Of> code_from(const ValueSet& set, std::string_view code) {
  if (set.kinds.find(code) != nullptr) return Of::kind;
  if (set.families.find(code) != nullptr) return Of::family;
  if (set.parts.find(code) != nullptr) return Of::part;
  return std::nullopt;
}

void complain_of_unknown(Lookup& lookup, const ast::Name& name) {
  std::vector<std::string_view> known;
  if (!name.quoted) known.assign(words::limited.begin(), words::limited.end());
  for (const std::vector<std::string_view>& codes :
       {lookup.set.kinds.codes(), lookup.set.families.codes(), lookup.set.parts.codes()})
    known.insert(known.end(), codes.begin(), codes.end());
  lookup.complain(name.text,
                  {Problem::unknown_limit, quoted("the limit of", name.text),
                   "elements, seconds, under, breath, or a kind, a family or a part of " + lookup.set.name,
                   words::nearest_hint(name.text, known)});
}

bool is_time(Of of) {
  return of == Of::seconds || of == Of::under || of == Of::breath;
}

std::optional<Decimal> read_bound(Lookup& lookup, const ast::Number& typed, Of of, std::string_view what) {
  if (is_time(of)) {
    const std::string expected = "seconds from 0 to " + std::to_string(most_of_anything);
    return lookup.number_between(typed, what, {Decimal(), Decimal::whole(most_of_anything), expected});
  }
  const std::optional<int> count = lookup.whole(typed, what, 0, most_of_anything);
  return count ? std::optional(Decimal::whole(*count)) : std::nullopt;
}

void read_limit(Lookup& lookup, const ast::LimitLine& typed, Routine& routine) {
  const std::optional<Of> of =
      typed.word().empty() ? code_from(lookup.set, typed.name.text) : word_from(typed.word());
  if (!of) return complain_of_unknown(lookup, typed.name);
  OwnLimit limit{*of, typed.name.text, {}, {}};
  if (typed.least) limit.least = read_bound(lookup, *typed.least, *of, "the least");
  if (typed.most) limit.most = read_bound(lookup, *typed.most, *of, "the most");
  if (limit.least && limit.most && *limit.least > *limit.most) {
    lookup.complain(typed.most->text, {Problem::contradiction, "most " + limit.most->text(),
                                       "at least " + limit.least->text() + ", the least of the same limit"});
  }
  routine.limits.push_back(limit);
}

// An option that says nothing of the best mark has that of the element as written, or of the header.
void spread_best_mark(Lookup& lookup, const std::optional<ast::Number>& header, Routine& routine) {
  std::optional<Mark> of_all;
  for (Element& element : routine.elements) {
    if (element.panel == nullptr) continue;
    if (header && !of_all) of_all = lookup.mark(*header, *element.panel, false);
    if (header && !of_all) return;
    std::optional<Mark>& as_written = element.options.front().best;
    if (!as_written) as_written = of_all;
    for (Option& option : element.options) {
      if (!option.best) option.best = as_written;
    }
  }
}

}  // namespace

void read_choosing(Lookup& lookup, const ast::Variant& typed, const Event* event, Option& option) {
  if (!typed.spread) return;
  option.spread = scatter(lookup, *typed.spread, "the spread", width_if_any(lookup, event));
}

void read_choosing(Lookup& lookup, const ast::Element& typed, Element& element) {
  element.optional = !typed.optional.empty();
  element.stays = !typed.stays.empty();
  if (!element.optional || !element.stays) return;
  lookup.complain(std::max(typed.optional, typed.stays, [](auto a, auto b) { return a.data() < b.data(); }),
                  {Problem::contradiction, "an element that is optional and stays",
                   "one of the two: a plan may leave it out, or keeps it as written"});
}

void resolve_choosing(Lookup& lookup, const ast::Sheet& sheet, Routine& routine) {
  const ast::Routine& typed = sheet.routine;
  const std::optional<Decimal> width =
      typed.spread || typed.day ? width_if_any(lookup, routine.event) : std::nullopt;
  if (typed.spread) routine.spread = scatter(lookup, *typed.spread, "the spread", width);
  if (typed.day) routine.day = scatter(lookup, *typed.day, "the spread of the day", width);
  spread_best_mark(lookup, typed.best, routine);
  for (const ast::LimitLine& limit : typed.limits) read_limit(lookup, limit, routine);
  read_errors(lookup, sheet, routine);
  read_risks(lookup, sheet, routine);
}

}  // namespace landdrill
