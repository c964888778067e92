// A routine cut down to one programme.
#include <algorithm>

#include "engine/choosing/plan.h"
#include "engine/choosing/plan_rooms.h"
#include "engine/routine/routine.h"
#include "engine/routine/wish.h"
#include "engine/score/objections.h"
#include "grammar/diagnostics.h"

namespace landdrill {
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

Diagnostics objections_with(const Routine& routine, const Wish& wish, const PlanChoice& choice,
                            const Diagnostics& of_sheet) {
  const Programme programme = programme_of(routine, wish, choice.options);
  return objections_with(programme.routine, programme.wish, of_sheet);
}

}  // namespace landdrill
