#include "engine/score/bridge.h"

#include <cassert>

#include "engine/score/panel.h"
#include "tables/decimal.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

// Notes one exchange after another, and what each does to the total.
class Steps {
 public:
  explicit Steps(Points from) { bridge_.from = bridge_.to = from; }
  void note(BridgeStep step, Points change) {
    step.change = change;
    bridge_.to += change;
    step.reached = bridge_.to;
    if (change != Points() || step.before != step.after) bridge_.steps.push_back(std::move(step));
  }
  Bridge result() && { return std::move(bridge_); }

 private:
  Bridge bridge_;
};

constexpr int mark_places = 4;

Decimal mark_of(const PanelRule& rule, const std::optional<KeptMarks>& kept) {
  return panel_mark(rule, *kept).value;
}

void exchange_elements(const Routine& routine, const Scored& from, const Scored& to, Steps& steps) {
  Showing now;
  now.elements = from.showing.elements;
  for (std::size_t i = 0; i < routine.elements.size(); ++i) {
    const PanelRule* rule = routine.elements[i].panel;
    if (rule == nullptr) continue;
    const ShownElement &before = from.showing.elements[i], &after = to.showing.elements[i];
    const std::string label = name_of(routine.elements[i]);
    const Points at_first = share_of(routine, now, i);
    now.elements[i].credited = after.credited;
    const Points credited = share_of(routine, now, i);
    steps.note({Cause::difficulty, i, label, before.credited.value(), after.credited.value(), 2},
               credited - at_first);
    now.elements[i].marks = after.marks;
    steps.note(
        {Cause::execution, i, label, mark_of(*rule, before.marks), mark_of(*rule, after.marks), mark_places},
        share_of(routine, now, i) - credited);
  }
}

void exchange_aspects(const Scored& from, const Scored& to, Steps& steps) {
  for (std::size_t i = 0; i < to.showing.aspects.size(); ++i) {
    const ShownAspect &before = from.showing.aspects[i], &after = to.showing.aspects[i];
    const PanelRule& rule = *before.rule;
    steps.note({Cause::impression,
                {},
                rule.title,
                mark_of(rule, before.marks),
                mark_of(rule, after.marks),
                mark_places},
               *to.score.aspects[i] - *from.score.aspects[i]);
  }
}

struct Deducted {
  Points before, after;
};
void exchange_deductions(Cause cause, std::string label, Deducted points, Steps& steps) {
  const Points nothing;
  steps.note(
      {cause, {}, std::move(label), (nothing - points.before).value(), (nothing - points.after).value()},
      points.before - points.after);
}

}  // namespace

std::string_view word_of(Cause cause) {
  constexpr std::string_view words[] = {"difficulty", "execution", "impression", "sync", "penalty"};
  return words[static_cast<std::size_t>(cause)];
}

Points Bridge::by_cause(Cause cause) const {
  Points sum;
  for (const BridgeStep& step : steps) {
    if (step.cause == cause) sum += step.change;
  }
  return sum;
}

Bridge bridge(const Routine& routine, const Scored& from, const Scored& to) {
  assert(from.showing.elements.size() == to.showing.elements.size() &&
         from.showing.aspects.size() == to.showing.aspects.size());
  const Score &before = from.score, &after = to.score;
  Steps steps(before.so_far);
  exchange_elements(routine, from, to, steps);
  exchange_aspects(from, to, steps);
  exchange_deductions(Cause::sync, "Sync errors", {before.sync, after.sync}, steps);
  exchange_deductions(Cause::penalty, "Penalties", {before.penalties, after.penalties}, steps);
  return std::move(steps).result();
}

}  // namespace landdrill
