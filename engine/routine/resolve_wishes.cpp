// What a sheet says for choosing: spreads, expected sync errors, chances of penalties, limits of a plan, and
// the elements that it may leave out or has to keep.
#include <algorithm>

#include "engine/routine/reading.h"

namespace landdrill {
namespace {

constexpr int most_of_anything = 10'000;

// Nothing while no event is known.
std::optional<Decimal> width_of_scale(const Reading& reading, const Event* event) {
  return event == nullptr ? std::nullopt : landdrill::width_of_scale(reading.set, *event);
}

std::optional<Decimal> number_between(Reading& reading, const ast::Number& typed, std::string_view what,
                                      Decimal most, std::string_view expected) {
  const std::optional<Decimal> value = reading.number(typed, what);
  if (!value || (*value >= Decimal() && *value <= most)) return value;
  reading.complain(typed.text,
                   {Problem::out_of_range, std::string(what) + " " + value->text(), std::string(expected)});
  return std::nullopt;
}

std::optional<Decimal> scatter(Reading& reading, const ast::Number& typed, std::string_view what,
                               const std::optional<Decimal>& width) {
  const Decimal most = width.value_or(Decimal::whole(most_of_anything));
  return number_between(
      reading, typed, what, most,
      "a standard deviation from 0 to " + most.text() + " marks" + (width ? ", the width of the scale" : ""));
}

// ---- what is expected of the whole ----

void read_errors(Reading& reading, const ast::Sheet& sheet, Routine& routine) {
  for (const ast::ExpectedErrors& typed : sheet.routine.errors) {
    const SyncClass* sync =
        reading.row(typed.sync, reading.set.sync, Problem::unknown_sync, "class of sync error");
    const std::optional<Decimal> number =
        number_between(reading, typed.number, "the expected number", Decimal::whole(1000),
                       "how many sync errors there are on average, from 0 to 1000");
    if (sync == nullptr || !number) continue;
    if (!sync->points) reading.gap(typed.sync.text, {"sync", sync->code, "points"});
    routine.errors.push_back({sync, *number});
  }
}

void read_risks(Reading& reading, const ast::Sheet& sheet, Routine& routine) {
  for (const ast::ExpectedPenalty& typed : sheet.routine.risks) {
    const Penalty* penalty =
        reading.row(typed.penalty, reading.set.penalties, Problem::unknown_penalty, "penalty");
    const std::optional<Decimal> chance = reading.chance(typed.percent);
    if (penalty == nullptr || !chance) continue;
    if (!penalty->points) reading.gap(typed.penalty.text, {"penalties", penalty->code, "points"});
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

void complain_of_unknown(Reading& reading, const ast::Name& name) {
  std::vector<std::string_view> known;
  if (!name.quoted) known.assign(words::limited.begin(), words::limited.end());
  for (const std::vector<std::string_view>& codes :
       {reading.set.kinds.codes(), reading.set.families.codes(), reading.set.parts.codes()})
    known.insert(known.end(), codes.begin(), codes.end());
  reading.complain(name.text,
                   {Problem::unknown_limit, quoted("the limit of", name.text),
                    "elements, seconds, under, breath, or a kind, a family or a part of " + reading.set.name,
                    words::nearest_hint(name.text, known)});
}

bool is_time(Of of) {
  return of == Of::seconds || of == Of::under || of == Of::breath;
}

std::optional<Decimal> read_bound(Reading& reading, const ast::Number& typed, Of of, std::string_view what) {
  if (is_time(of))
    return number_between(reading, typed, what, Decimal::whole(most_of_anything),
                          "seconds from 0 to " + std::to_string(most_of_anything));
  const std::optional<int> count = reading.whole(typed, what, 0, most_of_anything);
  return count ? std::optional(Decimal::whole(*count)) : std::nullopt;
}

void read_limit(Reading& reading, const ast::LimitLine& typed, Routine& routine) {
  const std::optional<Of> of =
      typed.word().empty() ? code_from(reading.set, typed.name.text) : word_from(typed.word());
  if (!of) return complain_of_unknown(reading, typed.name);
  OwnLimit limit{*of, typed.name.text, {}, {}};
  if (typed.least) limit.least = read_bound(reading, *typed.least, *of, "the least");
  if (typed.most) limit.most = read_bound(reading, *typed.most, *of, "the most");
  if (limit.least && limit.most && *limit.least > *limit.most) {
    reading.complain(typed.most->text, {Problem::contradiction, "most " + limit.most->text(),
                                        "at least " + limit.least->text() + ", the least of the same limit"});
  }
  routine.limits.push_back(limit);
}

}  // namespace

void read_wishes(Reading& reading, const ast::Variant& typed, const Event* event, Option& option) {
  if (!typed.spread) return;
  option.spread = scatter(reading, typed.spread->spread, "the spread", width_of_scale(reading, event));
}

void read_wishes(Reading& reading, const ast::Element& typed, Element& element) {
  element.optional = !typed.optional.empty();
  element.stays = !typed.stays.empty();
  if (!element.optional || !element.stays) return;
  reading.complain(std::max(typed.optional, typed.stays, [](auto a, auto b) { return a.data() < b.data(); }),
                   {Problem::contradiction, "an element that is optional and stays",
                    "one of the two: a plan may leave it out, or keeps it as written"});
}

void resolve_wishes(Reading& reading, const ast::Sheet& sheet, Routine& routine) {
  const ast::Routine& typed = sheet.routine;
  const std::optional<Decimal> width =
      typed.spread || typed.day ? width_of_scale(reading, routine.event) : std::nullopt;
  if (typed.spread) routine.spread = scatter(reading, typed.spread->spread, "the spread", width);
  if (typed.day) routine.day = scatter(reading, typed.day->day, "the spread of the day", width);
  for (const ast::LimitLine& limit : typed.limits) read_limit(reading, limit, routine);
  read_errors(reading, sheet, routine);
  read_risks(reading, sheet, routine);
}

}  // namespace landdrill
