// The limits of a plan: what each counts, its words, and where it is from.
#include <algorithm>

#include "engine/choosing/plan_rooms.h"
#include "engine/routine/routine.h"
#include "tables/decimal.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

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

std::optional<Decimal> decimal_of(std::optional<int> number) {
  if (!number) return std::nullopt;
  return Decimal::whole(*number);
}

// Whether anything says how long it takes.
bool has_counts(const Routine& routine) {
  std::int64_t counts = 0;
  for (const Element& element : routine.elements) {
    for (const Option& option : element.options) counts += counts_in(option.counts);
  }
  for (const Passage& passage : routine.passages) counts += counts_in(passage.counts);
  return counts > 0;
}

struct RoomWords {
  std::string event, from, what, what_if_one = what;
};
Room room_of(Room::Of of, RoomWords words) {
  Room room;
  room.of = of;
  room.event = std::move(words.event);
  room.told.from = std::move(words.from);
  room.what = std::move(words.what);
  room.what_if_one = std::move(words.what_if_one);
  return room;
}

}  // namespace

std::string Room::side(bool most) const {
  return (event.empty() ? "" : event + ": ") + (most ? "at most " : "at least ") +
         amount(most ? *told.most : *told.least, *this);
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
  add(room_of(Room::Of::elements,
              {quota.event, row_of(quota.from), kind + "elements" + family, kind + "element" + family}),
      {decimal_of(quota.least), decimal_of(quota.most)},
      [&set, &quota](const Element& element, const Option& option) -> std::int64_t {
        const bool is_kind = quota.kind.empty() || set.kinds.place(*element.kind) == quota.kind_row;
        return is_kind && (quota.family.empty() || holds_family(option, quota.family_row)) ? 1 : 0;
      });
}

void Programmes::add_families() {
  const std::vector<Family>& families = routine_.set->families.all();
  for (std::size_t row = 0; row < families.size(); ++row) {
    const Family& family = families[row];
    add(room_of(Room::Of::elements, {"", row_of(family.from), "parts of " + family.code + " in the routine",
                                     "part of " + family.code + " in the routine"}),
        {std::nullopt, decimal_of(family.most_in_routine)}, [row](const Element&, const Option& option) {
          std::int64_t sum = 0;
          for (const PartUse& use : option.parts) sum += use.part->family_row == row ? use.times : 0;
          return sum;
        });
  }
}

void Programmes::add_time() {
  const Event& event = *routine_.event;
  if (!event.seconds) return;
  if (!routine_.tempo || !has_counts(routine_)) {
    notes.push_back(std::string(routine_.tempo ? "no element has counts" : "the sheet has no tempo") +
                    ": the plan does not look at the time of " + event.code);
    return;
  }
  const Decimal tolerance = event.tolerance.value_or(Decimal());
  Room room = room_of(Room::Of::seconds, {event.code, row_of(event.from), "s"});
  for (const Passage& passage : routine_.passages) room.fixed += counts_in(passage.counts);
  add(std::move(room), {*event.seconds - tolerance, *event.seconds + tolerance},
      [](const Element&, const Option& option) { return counts_in(option.counts); });
}

void Programmes::add_own(const OwnLimit& own, const std::string& from) {
  using Of = OwnLimit::Of;
  const std::string name(own.name);
  const Span span{own.least, own.most};
  const ValueSet& set = *routine_.set;
  if (own.of == Of::elements) {
    add(room_of(Room::Of::elements, {"", from, "elements", "element"}), span,
        [](const Element&, const Option&) -> std::int64_t { return 1; });
  } else if (own.of == Of::kind) {
    const Kind* kind = set.kinds.find(own.name);
    add(room_of(Room::Of::elements, {"", from, name + " elements", name + " element"}), span,
        [kind](const Element& element, const Option&) -> std::int64_t {
          return element.kind == kind ? 1 : 0;
        });
  } else if (own.of == Of::family) {
    const std::size_t row = set.families.place_of(own.name);
    add(room_of(Room::Of::elements,
                {"", from, "elements with a part of " + name, "element with a part of " + name}),
        span, [row](const Element&, const Option& option) -> std::int64_t {
          return holds_family(option, row) ? 1 : 0;
        });
  } else if (own.of == Of::part) {
    const Part* part = set.parts.find(own.name);
    add(room_of(Room::Of::elements, {"", from, "uses of " + name, "use of " + name}), span,
        [part](const Element&, const Option& option) {
          std::int64_t sum = 0;
          for (const PartUse& use : option.parts) sum += use.part == part ? use.times : 0;
          return sum;
        });
  } else {
    add_seconds(own, room_of(Room::Of::seconds, {"", from, "s"}));
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
  for (const Passage& passage : routine_.passages) room.fixed += counts_in(passage.counts, only_under);
  add(std::move(room), span,
      [only_under](const Element&, const Option& option) { return counts_in(option.counts, only_under); });
}

}  // namespace landdrill
