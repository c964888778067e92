#include "engine/plan_rooms.h"

#include <algorithm>

#include "engine/timing.h"

namespace landdrill {
namespace {

std::string row_of(const Provenance& from) {
  return std::string(from.table) + ".csv line " + std::to_string(from.line);
}

std::string amount(Decimal number, const Room& room) {
  return number.text() + " " + (number == Decimal::whole(1) ? room.what_if_one : room.what);
}

std::string words_of(const Room& room) {
  const std::optional<Decimal>& least = room.told.least;
  const std::optional<Decimal>& most = room.told.most;
  if (!least || !most) return room.side(most.has_value());
  const std::string event = room.event.empty() ? "" : room.event + ": ";
  if (*least == *most) return event + "exactly " + amount(*most, room);
  return event + least->text() + " to " + amount(*most, room);
}

bool holds_family(const Option& option, std::size_t row) {
  return std::any_of(option.parts.begin(), option.parts.end(),
                     [&](const PartUse& use) { return use.part->family_row == row; });
}

std::int64_t counts_of(const CountUses& uses, bool only_under) {
  std::int64_t sum = 0;
  for (const CountUse& use : uses) sum += !only_under || use.under ? use.counts : 0;
  return sum;
}

std::optional<Decimal> whole(std::optional<int> number) {
  if (!number) return std::nullopt;
  return Decimal::whole(*number);
}

// Up to the next whole number, or down to it.
std::int64_t whole_number(Exact value, bool up) {
  const std::int64_t down = round(value, 0, Rounding::down).units() / Decimal::one;
  const Exact back(Decimal::whole(down));
  if (up) return back < value ? down + 1 : down;
  return back > value ? down - 1 : down;
}

std::string place_of(const Element& element) {
  return "element " + std::to_string(element.number) +
         (element.title.empty() ? "" : " \"" + std::string(element.title) + "\"");
}

// An element that the event marks needs a mark.
bool has_mark(const Routine& routine, std::size_t element, std::size_t option, const Wish& wish) {
  const Element& of = routine.elements[element];
  return of.panel == nullptr ||
         expected_mark(routine, element, of.options[option], wish.runs).mark.has_value();
}

Room room_of(Room::Of of, std::string event, std::string from, std::string what, std::string what_if_one) {
  Room room;
  room.of = of;
  room.event = std::move(event);
  room.told.from = std::move(from);
  room.what = std::move(what);
  room.what_if_one = what_if_one.empty() ? room.what : std::move(what_if_one);
  return room;
}

}  // namespace

std::string Room::side(bool most) const {
  return (event.empty() ? "" : event + ": ") + (most ? "at most " : "at least ") +
         amount(most ? *told.most : *told.least, *this);
}

Programmes::Programmes(const Routine& routine, const Wish& wish, const PlanWish& how) : routine_(routine) {
  for (const Element& element : routine.elements) {
    for (const Option& option : element.options) has_counts_ |= counts_of(option.counts, false) > 0;
  }
  for (const Passage& passage : routine.passages) has_counts_ |= counts_of(passage.counts, false) > 0;
  list_options(wish);
  if (how.event_limits) {
    const std::size_t event = routine.set->events.place(*routine.event);
    for (const Quota& quota : routine.set->quotas) {
      if (quota.event_row == event) add_quota(quota);
    }
    add_families();
    add_time();
  }
  for (const OwnLimit& own : routine.limits) add_own(own);
  std::stable_partition(rooms.begin(), rooms.end(),
                        [](const Room& one) { return one.of != Room::Of::breath; });
  for (std::size_t i = 0; i < options.size(); ++i) {
    auto& list = choosing.lists.emplace_back();
    for (const std::size_t option : options[i]) list.push_back({0, uses(i, option)});
  }
  for (const Room& room : rooms) {
    if (room.of == Room::Of::breath) {
      choosing.chain = chain_of({room.told.least, room.told.most});
    } else {
      choosing.limits.push_back(limit_of(room, {room.told.least, room.told.most}));
    }
  }
}

void Programmes::list_options(const Wish& wish) {
  for (std::size_t i = 0; i < routine_.elements.size(); ++i) {
    const Element& element = routine_.elements[i];
    const std::size_t written = i < wish.options.size() ? wish.options[i] : 0;
    auto& list = options.emplace_back();
    for (std::size_t option = 0; option < element.options.size(); ++option) {
      if (element.stays && option != written) continue;
      if (has_mark(routine_, i, option, wish)) {
        list.push_back(option);
      } else if (element.options.size() > 1 && !element.stays) {
        const std::string_view title = element.options[option].title;
        notes.push_back((title.empty() ? "as written" : "\"" + std::string(title) + "\"") + " of " +
                        place_of(element) +
                        " has no expected mark and is left out of the plan: add `expect`");
      }
    }
    if (element.optional) {
      list.push_back(leave_out);
    } else if (list.empty()) {
      obstacles.push_back(place_of(element) + " has no expected mark" +
                          (element.options.size() > 1 && !element.stays ? " in any option" : "") +
                          ": add `expect`, or a run");
    }
  }
}

void Programmes::add(Room room, Span span, Counter counter) {
  if (!span.least && !span.most) return;
  room.told.least = span.least;
  room.told.most = span.most;
  room.told.words = words_of(room);
  if (room.of != Room::Of::breath) counters_.push_back(std::move(counter));
  rooms.push_back(std::move(room));
}

void Programmes::add_quota(const Quota& quota) {
  std::string kind = quota.kind.empty() ? "" : quota.kind + " ";
  std::string family = quota.family.empty() ? "" : " with a part of " + quota.family;
  const ValueSet& set = *routine_.set;
  add(room_of(Room::Of::elements, quota.event, row_of(quota.from), kind + "elements" + family,
              kind + "element" + family),
      {whole(quota.least), whole(quota.most)},
      [&set, &quota](const Element& element, const Option& option) -> std::int64_t {
        const bool is_kind = quota.kind.empty() || set.kinds.place(*element.kind) == quota.kind_row;
        return is_kind && (quota.family.empty() || holds_family(option, quota.family_row)) ? 1 : 0;
      });
}

void Programmes::add_families() {
  const std::vector<Family>& families = routine_.set->families.all();
  for (std::size_t row = 0; row < families.size(); ++row) {
    const Family& family = families[row];
    add(room_of(Room::Of::elements, "", row_of(family.from), "parts of " + family.code + " in the routine",
                "part of " + family.code + " in the routine"),
        {std::nullopt, whole(family.most_in_routine)}, [row](const Element&, const Option& option) {
          std::int64_t sum = 0;
          for (const PartUse& use : option.parts) sum += use.part->family_row == row ? use.times : 0;
          return sum;
        });
  }
}

void Programmes::add_time() {
  const Event& event = *routine_.event;
  if (!event.seconds) return;
  if (!routine_.tempo || !has_counts_) {
    notes.push_back(std::string(routine_.tempo ? "no element has counts" : "the sheet has no tempo") +
                    ": the plan does not look at the time of " + event.code);
    return;
  }
  const Decimal tolerance = event.tolerance.value_or(Decimal());
  Room room = room_of(Room::Of::seconds, event.code, row_of(event.from), "s", "");
  for (const Passage& passage : routine_.passages) room.fixed += counts_of(passage.counts, false);
  add(std::move(room), {*event.seconds - tolerance, *event.seconds + tolerance},
      [](const Element&, const Option& option) { return counts_of(option.counts, false); });
}

void Programmes::add_own(const OwnLimit& own) {
  using Of = OwnLimit::Of;
  const std::string name(own.name);
  const Span span{own.least, own.most};
  const ValueSet& set = *routine_.set;
  if (own.of == Of::elements) {
    add(room_of(Room::Of::elements, "", "the sheet", "elements", "element"), span,
        [](const Element&, const Option&) -> std::int64_t { return 1; });
  } else if (own.of == Of::kind) {
    const Kind* kind = set.kinds.find(own.name);
    add(room_of(Room::Of::elements, "", "the sheet", name + " elements", name + " element"), span,
        [kind](const Element& element, const Option&) -> std::int64_t {
          return element.kind == kind ? 1 : 0;
        });
  } else if (own.of == Of::family) {
    const std::size_t row = set.families.place_of(own.name);
    add(room_of(Room::Of::elements, "", "the sheet", "elements with a part of " + name,
                "element with a part of " + name),
        span, [row](const Element&, const Option& option) -> std::int64_t {
          return holds_family(option, row) ? 1 : 0;
        });
  } else if (own.of == Of::part) {
    const Part* part = set.parts.find(own.name);
    add(room_of(Room::Of::elements, "", "the sheet", "uses of " + name, "use of " + name), span,
        [part](const Element&, const Option& option) {
          std::int64_t sum = 0;
          for (const PartUse& use : option.parts) sum += use.part == part ? use.times : 0;
          return sum;
        });
  } else {
    add_seconds(own, room_of(Room::Of::seconds, "", "the sheet", "s", ""));
  }
}

void Programmes::add_seconds(const OwnLimit& own, Room room) {
  const Span span{own.least, own.most};
  const bool only_under = own.of != OwnLimit::Of::seconds;
  if (only_under) room.what = room.what_if_one = "s under water";
  if (own.of == OwnLimit::Of::breath) {
    room.of = Room::Of::breath;
    room.what = room.what_if_one = "s under water in one go";
  }
  if (!routine_.tempo) {
    room.told.least = own.least;
    room.told.most = own.most;
    notes.push_back("the sheet has no tempo: the plan does not look at the limit of " + words_of(room));
    return;
  }
  for (const Passage& passage : routine_.passages) room.fixed += counts_of(passage.counts, only_under);
  add(std::move(room), span,
      [only_under](const Element&, const Option& option) { return counts_of(option.counts, only_under); });
}

std::vector<std::int64_t> Programmes::uses(std::size_t element, std::size_t option) const {
  std::vector<std::int64_t> result(counters_.size());
  if (option == leave_out) return result;
  const Element& of = routine_.elements[element];
  for (std::size_t j = 0; j < result.size(); ++j) result[j] = counters_[j](of, of.options[option]);
  return result;
}

ChoiceLimit Programmes::limit_of(const Room& room, Span span) const {
  const auto counts = [&](const std::optional<Decimal>& side, bool up) -> std::optional<std::int64_t> {
    if (!side) return std::nullopt;
    Exact value(*side);
    if (room.of != Room::Of::elements) value = value * Exact(*routine_.tempo) / Exact(Decimal::whole(60));
    return whole_number(value, up) - room.fixed;
  };
  return {room.told.words, counts(span.least, true), counts(span.most, false)};
}

Choosing Programmes::with(std::size_t room, std::optional<Decimal> least, std::optional<Decimal> most) const {
  Choosing moved = choosing;
  if (rooms[room].of == Room::Of::breath) {
    moved.chain = chain_of({least, most});
  } else {
    moved.limits[room] = limit_of(rooms[room], {least, most});
  }
  return moved;
}

bool Programmes::allowed(const std::vector<std::size_t>& chosen) const {
  for (std::size_t index = 0; index < rooms.size(); ++index) {
    const Room& room = rooms[index];
    Room counted = room;
    counted.fixed = 0;
    const ChoiceLimit limit = limit_of(counted, {room.told.least, room.told.most});
    std::int64_t sum = room.fixed;
    if (room.of == Room::Of::breath) {
      sum = longest_under(chosen);
    } else {
      for (std::size_t i = 0; i < chosen.size(); ++i) sum += uses(i, chosen[i])[index];
    }
    if ((limit.least && sum < *limit.least) || (limit.most && sum > *limit.most)) return false;
  }
  return true;
}

Decimal Programmes::used(const Room& room, std::size_t index, const std::vector<std::size_t>& chosen) const {
  std::int64_t sum = room.fixed;
  if (room.of == Room::Of::breath) {
    sum = longest_under(chosen);
  } else {
    for (std::size_t i = 0; i < chosen.size(); ++i) sum += uses(i, chosen[i])[index];
  }
  if (room.of == Room::Of::elements) return Decimal::whole(sum);
  return round(seconds_of(static_cast<int>(sum), *routine_.tempo), 1, Rounding::half_up);
}

int Programmes::longest_under(const std::vector<std::size_t>& chosen) const {
  const Programme programme = programme_of(routine_, {}, chosen);
  return timing(programme.routine, programme.wish).longest_under;
}

std::vector<std::size_t> Programmes::options_of(const std::vector<std::size_t>& choices) const {
  std::vector<std::size_t> result;
  for (std::size_t i = 0; i < choices.size(); ++i) result.push_back(options[i][choices[i]]);
  return result;
}

}  // namespace landdrill
