#include "engine/score/bridge.h"

#include <cassert>

namespace landdrill {
namespace {

// Exchanges one thing after another and notes what each does to the total.
class Exchange {
 public:
  Exchange(const Routine& routine, const Showing& from) : routine_(routine), now_(from) {
    bridge_.from = bridge_.to = landdrill::score(routine, from).so_far;
  }
  Showing& showing() { return now_; }
  void note(BridgeStep step) {
    const Points total = landdrill::score(routine_, now_).so_far;
    step.change = total - bridge_.to;
    step.reached = total;
    bridge_.to = total;
    if (step.change != Points() || step.before != step.after) bridge_.steps.push_back(std::move(step));
  }
  Bridge result() && { return std::move(bridge_); }

 private:
  const Routine& routine_;
  Showing now_;
  Bridge bridge_;
};

std::string mark_text(const PanelRule& rule, const std::optional<KeptMarks>& kept) {
  return round(combined(rule, *kept), 4, rule.rounding).text(4);
}

void exchange_elements(const Routine& routine, const Showing& to, Exchange& exchange) {
  for (std::size_t i = 0; i < routine.elements.size(); ++i) {
    ShownElement& now = exchange.showing().elements[i];
    const ShownElement& then = to.elements[i];
    const std::string label = name_of(routine.elements[i]);
    const PanelRule* rule = routine.elements[i].panel;
    if (rule == nullptr) continue;
    BridgeStep difficulty{Cause::difficulty, i, label, now.credited.text(2), then.credited.text(2), {}};
    now.declared = then.declared;
    now.credited = then.credited;
    now.base = then.base;
    exchange.note(std::move(difficulty));
    BridgeStep execution{
        Cause::execution, i, label, mark_text(*rule, now.marks), mark_text(*rule, then.marks), {}};
    now.marks = then.marks;
    exchange.note(std::move(execution));
  }
}

void exchange_aspects(const Showing& to, Exchange& exchange) {
  for (std::size_t i = 0; i < to.aspects.size(); ++i) {
    ShownAspect& now = exchange.showing().aspects[i];
    const PanelRule& rule = *now.rule;
    BridgeStep step{Cause::impression,
                    {},
                    rule.title,
                    mark_text(rule, now.marks),
                    mark_text(rule, to.aspects[i].marks),
                    {}};
    now.marks = to.aspects[i].marks;
    exchange.note(std::move(step));
  }
}

}  // namespace

std::string_view word_of(Cause cause) {
  switch (cause) {
    case Cause::difficulty:
      return "difficulty";
    case Cause::execution:
      return "execution";
    case Cause::impression:
      return "impression";
    case Cause::sync:
      return "sync";
    case Cause::penalty:
      return "penalty";
  }
  return "";
}

Points Bridge::by_cause(Cause cause) const {
  Points sum;
  for (const BridgeStep& step : steps) {
    if (step.cause == cause) sum += step.change;
  }
  return sum;
}

Bridge bridge(const Routine& routine, const Showing& from, const Showing& to) {
  assert(from.elements.size() == to.elements.size() && from.aspects.size() == to.aspects.size());
  Exchange exchange(routine, from);
  exchange_elements(routine, to, exchange);
  exchange_aspects(to, exchange);
  const Score before = score(routine, from), after = score(routine, to);
  exchange.showing().sync = to.sync;
  exchange.note({Cause::sync, {}, "Sync errors", minus_text(before.sync), minus_text(after.sync), {}});
  exchange.showing().penalties = to.penalties;
  exchange.note(
      {Cause::penalty, {}, "Penalties", minus_text(before.penalties), minus_text(after.penalties), {}});
  return std::move(exchange).result();
}

}  // namespace landdrill
