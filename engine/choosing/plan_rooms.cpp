#include "engine/choosing/plan_rooms.h"

#include <algorithm>

#include "engine/choosing/search/choose_best.h"
#include "engine/routine/routine.h"
#include "engine/routine/timing.h"
#include "engine/routine/wish.h"
#include "tables/decimal.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

// Up to the next whole number, or down to it.
std::int64_t whole_number(Exact value, bool up) {
  const std::int64_t down = round(value, 0, Rounding::down).units() / Decimal::one;
  const Exact back(Decimal::whole(down));
  if (up) return back < value ? down + 1 : down;
  return back > value ? down - 1 : down;
}

bool told_of_the_same(const std::vector<OwnLimit>& told, const OwnLimit& own) {
  return std::any_of(told.begin(), told.end(),
                     [&](const OwnLimit& one) { return one.of == own.of && one.name == own.name; });
}

}  // namespace

Programmes::Programmes(const Routine& routine, const Wish& wish, const PlanWish& how) : routine_(routine) {
  look_into_elements(how.event_limits);
  list_options(wish);
  if (how.event_limits) {
    const std::size_t event = routine.set->events.place(*routine.event);
    for (const Quota& quota : routine.set->quotas) {
      if (quota.event_row == event) add_quota(quota);
    }
    add_families();
    add_time();
  }
  for (const OwnLimit& own : routine.limits) {
    if (!told_of_the_same(how.limits, own)) add_own(own, "the sheet");
  }
  for (const OwnLimit& own : how.limits) add_own(own, "the command line");
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
  move(moved, room, {least, most});
  return moved;
}

Choosing Programmes::loosened() const {
  const Decimal unit = Decimal::whole(1);
  Choosing loose = choosing;
  for (std::size_t room = 0; room < rooms.size(); ++room) {
    Span span{rooms[room].told.least, rooms[room].told.most};
    if (span.least) span.least = *span.least - unit;
    if (span.most) span.most = *span.most + unit;
    move(loose, room, span);
  }
  return loose;
}

void Programmes::move(Choosing& of, std::size_t room, Span span) const {
  if (rooms[room].of == Room::Of::breath) {
    of.chain = chain_of(span);
  } else {
    of.limits[room] = limit_of(rooms[room], span);
  }
}

bool Programmes::allowed(const std::vector<std::size_t>& chosen) const {
  for (std::size_t i = 0; i < chosen.size(); ++i) {
    if (chosen[i] != leave_out && !broken_[i][chosen[i]].empty()) return false;
  }
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
