#include "engine/choosing/plan_rooms.h"

#include <algorithm>

#include "engine/chances/obstacle.h"
#include "engine/choosing/search/choose_best.h"
#include "engine/routine/routine.h"
#include "engine/routine/timing.h"
#include "engine/routine/wish.h"
#include "engine/score/option_limits.h"
#include "tables/decimal.h"
#include "tables/value_set.h"

namespace landdrill {

// What each element can be in a plan: its options with a mark that keep the limits within one element.

namespace {

std::string place_of(const Element& element) {
  return "element " + std::to_string(element.number) +
         (element.title.empty() ? "" : " \"" + std::string(element.title) + "\"");
}

std::string way_of(const Element& element, std::size_t option) {
  const std::string_view title = element.options[option].title;
  return title.empty() ? place_of(element) + " as written"
                       : "\"" + std::string(title) + "\" of " + place_of(element);
}

// An element that the event marks needs a mark.
bool has_mark(const Routine& routine, std::size_t element, std::size_t option, const Wish& wish) {
  const Element& of = routine.elements[element];
  return of.panel == nullptr ||
         expected_mark(routine, element, of.options[option], wish.runs).mark.has_value();
}

}  // namespace

void Programmes::look_into_elements(bool heed_limits) {
  for (const Element& element : routine_.elements) {
    auto& here = broken_.emplace_back(element.options.size());
    for (std::size_t option = 0; heed_limits && option < here.size(); ++option) {
      for (const Objection& limit : objections_to(element.options[option], *element.kind, *routine_.set)) {
        here[option] += (here[option].empty() ? "" : "; ") + limit.words();
      }
    }
  }
}

// Why an option is none to choose from, or nothing.
std::string Programmes::why_not(std::size_t element, std::size_t option, const Wish& wish) const {
  if (!has_mark(routine_, element, option, wish)) return "it has no expected mark; add `expect`";
  return broken_[element][option];
}

void Programmes::list_options(const Wish& wish) {
  for (std::size_t i = 0; i < routine_.elements.size(); ++i) {
    const Element& element = routine_.elements[i];
    const std::size_t written = i < wish.options.size() ? wish.options[i] : 0;
    std::vector<std::size_t> asked, fitting;
    std::vector<std::string> left_out;
    for (std::size_t option = 0; option < element.options.size(); ++option) {
      if (element.stays && option != written) continue;
      asked.push_back(option);
      const std::string why = why_not(i, option, wish);
      if (why.empty()) {
        fitting.push_back(option);
      } else {
        left_out.push_back(way_of(element, option) + " is left out of the plan: " + why);
      }
    }
    // Of equal programmes the first is taken: the one with fewer changes.
    const auto here = std::find(fitting.begin(), fitting.end(), written);
    if (here != fitting.end()) std::rotate(fitting.begin(), here, here + 1);
    if (element.optional) fitting.push_back(leave_out);
    if (fitting.empty()) {
      tell_empty(i, asked);
    } else {
      notes.insert(notes.end(), left_out.begin(), left_out.end());
    }
    options.push_back(std::move(fitting));
  }
}

// Nothing to choose from is a conflict when a limit is to blame, and else something is missing.
void Programmes::tell_empty(std::size_t element, const std::vector<std::size_t>& asked) {
  const Element& of = routine_.elements[element];
  std::string reasons;
  for (const std::size_t option : asked) {
    const std::string& words = broken_[element][option];
    if (words.empty()) continue;
    const std::string_view title = of.options[option].title;
    const std::string name = title.empty() ? "as written" : "\"" + std::string(title) + "\"";
    reasons += (reasons.empty() ? "" : "; ") + (asked.size() == 1 ? "" : name + " has ") + words;
  }
  if (reasons.empty()) {
    obstacles.push_back({Obstacle::Of::element_unmarked,
                         {.elements = {of.number},
                          .names = {std::string(of.title)},
                          .most = static_cast<std::int64_t>(asked.size())}});
  } else {
    conflict.push_back(place_of(of) + ": " + reasons);
  }
}

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

std::vector<std::size_t> Programmes::places_of(const std::vector<std::size_t>& chosen) const {
  std::vector<std::size_t> places;
  for (std::size_t i = 0; i < chosen.size(); ++i) {
    const auto at = std::find(options[i].begin(), options[i].end(), chosen[i]);
    places.push_back(static_cast<std::size_t>(at - options[i].begin()));
  }
  return places;
}

bool Programmes::has_choices(const std::vector<std::size_t>& chosen) const {
  const std::vector<std::size_t> places = places_of(chosen);
  for (std::size_t i = 0; i < places.size(); ++i) {
    if (places[i] == options[i].size()) return false;
  }
  return true;
}

// A routine cut down to one programme.

namespace {

// The new index of each element; leave_out for those that are gone.
std::vector<std::size_t> new_places(const std::vector<std::size_t>& options) {
  std::vector<std::size_t> places;
  std::size_t next = 0;
  for (const std::size_t option : options) places.push_back(option == leave_out ? leave_out : next++);
  return places;
}

template <class Seen>
void renumber(std::vector<Seen>& seen, const std::vector<std::size_t>& places) {
  std::erase_if(seen, [&](const Seen& one) { return places[one.element] == leave_out; });
  for (Seen& one : seen) one.element = places[one.element];
}

}  // namespace

Programme programme_of(const Routine& routine, const Wish& wish, const std::vector<std::size_t>& options) {
  Programme result{routine, {{}, wish.runs}};
  const std::vector<std::size_t> places = new_places(options);
  for (const std::size_t option : options) {
    if (option != leave_out) result.wish.options.push_back(option);
  }
  if (result.wish.options.size() == options.size()) return result;
  std::vector<Element>& elements = result.routine.elements;
  for (std::size_t i = 0; i < options.size(); ++i) {
    if (options[i] != leave_out && places[i] != i) elements[places[i]] = std::move(elements[i]);
  }
  elements.erase(elements.begin() + static_cast<std::ptrdiff_t>(result.wish.options.size()), elements.end());
  std::vector<Item>& order = result.routine.order;
  std::erase_if(order, [&](const Item& item) { return item.is_element && places[item.index] == leave_out; });
  for (Item& item : order) item.index = item.is_element ? places[item.index] : item.index;
  for (Run& run : result.routine.runs) renumber(run.elements, places);
  for (RecordedPanel& panel : result.routine.panels) renumber(panel.elements, places);
  return result;
}

}  // namespace landdrill
