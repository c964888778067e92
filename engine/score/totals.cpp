#include "engine/score/totals.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/routine/wish.h"
#include "engine/score/score.h"
#include "tables/decimal.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

// No sport has such numbers; below them no sum of a routine can leave the range, so it is not tried.
const Decimal large = Decimal::whole(1'000);

bool is_large(const Option& option) {
  return option.declared && option.declared->value() > large;
}

bool is_large(const PanelRule& rule) {
  return rule.most.value() > large || (rule.weight && rule.weight->value() > large);
}

template <class Uses>
bool has_large_points(const Uses& uses, auto row) {
  return std::any_of(uses.begin(), uses.end(), [&](const auto& use) {
    return use.times > 100 || ((use.*row)->points && (use.*row)->points->value() > large);
  });
}

template <class Occasion>
bool has_large_points(const Occasion& occasion) {
  return has_large_points(occasion.sync, &SyncUse::sync) ||
         has_large_points(occasion.penalties, &PenaltyUse::penalty);
}

bool has_large_numbers(const Routine& routine) {
  for (const Element& element : routine.elements) {
    for (const Option& option : element.options) {
      if (is_large(option)) return true;
    }
  }
  const std::size_t event = routine.set->events.place(*routine.event);
  for (const PanelRule& rule : routine.set->panels) {
    if (rule.event_row == event && is_large(rule)) return true;
  }
  return std::any_of(routine.runs.begin(), routine.runs.end(),
                     [](const Run& run) { return has_large_points(run); }) ||
         std::any_of(routine.panels.begin(), routine.panels.end(),
                     [](const RecordedPanel& panel) { return has_large_points(panel); });
}

// Full marks for everything: no account of the routine adds up more.
Showing at_best(const Routine& routine, const Wish& wish) {
  Showing showing = expected(routine, wish);
  for (std::size_t i = 0; i < showing.elements.size(); ++i) {
    const PanelRule* rule = routine.elements[i].panel;
    if (rule != nullptr) showing.elements[i].marks = all_giving(*rule, rule->most);
  }
  return showing;
}

void score_everything(const Routine& routine) {
  std::size_t most_options = 0;
  for (const Element& element : routine.elements)
    most_options = std::max(most_options, element.options.size());
  for (std::size_t option = 0; option < most_options; ++option) {
    Wish wish;
    for (const Element& element : routine.elements) {
      wish.options.push_back(std::min(option, element.options.size() - 1));
    }
    score(routine, at_best(routine, wish));
    for (const RecordedPanel& panel : routine.panels) score(routine, recorded(routine, panel, wish));
  }
}

}  // namespace

bool stays_exact(const Routine& routine) {
  if (!has_large_numbers(routine)) return true;
  try {
    score_everything(routine);
    return true;
  } catch (const Overflow&) {
    return false;
  }
}

Totals totals(const Routine& routine, const Wish& wish, std::optional<std::size_t> panel) {
  const Score estimate = score(routine, expected(routine, wish));
  Totals result{estimate.credited, estimate.total, {}, {}, {}, places_of(routine)};
  if (!panel) return result;
  const RecordedPanel& seen = routine.panels[*panel];
  result.recorded = score(routine, recorded(routine, seen, wish)).total;
  result.announced = seen.result;
  if (result.estimate && result.recorded) result.difference = *result.recorded - *result.estimate;
  return result;
}

namespace {

constexpr int places_of_difficulty = 2;

std::optional<Decimal> amount_of(const std::optional<Points>& points) {
  return points ? std::optional(points->value()) : std::nullopt;
}

}  // namespace

std::optional<Decimal> SheetMove::change() const {
  if (!before || !after) return std::nullopt;
  return *after - *before;
}

std::vector<SheetMove> moves(const PricedSheet& before, const PricedSheet& after) {
  std::vector<SheetMove> found;
  const auto add = [&](std::string line, std::optional<Decimal> a, std::optional<Decimal> b, int places) {
    if (a != b) found.push_back({std::move(line), a, b, places});
  };
  const Showing was = expected(before.routine, before.wish), is = expected(after.routine, after.wish);
  for (std::size_t i = 0; i < was.elements.size(); ++i) {
    const Element& element = before.routine.elements[i];
    add(fmt::format("{} {}", element.number, element.title), was.elements[i].declared.value(),
        is.elements[i].declared.value(), places_of_difficulty);
  }
  const Totals from = totals(before.routine, before.wish, {}), to = totals(after.routine, after.wish, {});
  add("difficulty, all elements", from.difficulty.value(), to.difficulty.value(), places_of_difficulty);
  add("total, as estimated", amount_of(from.estimate), amount_of(to.estimate), from.places);
  return found;
}

}  // namespace landdrill
