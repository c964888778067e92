#include "tables/value_set.h"

namespace landdrill {

const PanelRule* ValueSet::element_panel(const Event& event, const Kind& kind) const {
  const std::size_t event_row = events.place(event), kind_row = kinds.place(kind);
  const PanelRule* for_every_kind = nullptr;
  for (const PanelRule& rule : panels) {
    if (!rule.per_element || rule.event_row != event_row) continue;
    if (rule.kind_row == kind_row) return &rule;
    if (rule.kind.empty() && for_every_kind == nullptr) for_every_kind = &rule;
  }
  return for_every_kind;
}

std::vector<const PanelRule*> ValueSet::routine_panels(std::string_view event) const {
  std::vector<const PanelRule*> rules;
  for (const PanelRule& rule : panels) {
    if (!rule.per_element && rule.event == event) rules.push_back(&rule);
  }
  return rules;
}

const SpreadRule* ValueSet::judges_spread(std::string_view aspect, std::string_view kind) const {
  const SpreadRule* best = nullptr;
  int best_named = -1;
  for (const SpreadRule& rule : spreads) {
    const bool applies = rule.what == SpreadRule::What::judges &&
                         (rule.aspect.empty() || rule.aspect == aspect) &&
                         (rule.kind.empty() || rule.kind == kind);
    const int named = (rule.aspect.empty() ? 0 : 2) + (rule.kind.empty() ? 0 : 1);
    if (!applies || named <= best_named) continue;
    best = &rule;
    best_named = named;
  }
  return best;
}

const SpreadRule* ValueSet::day_spread() const {
  for (const SpreadRule& rule : spreads) {
    if (rule.what == SpreadRule::What::day) return &rule;
  }
  return nullptr;
}

Decimal ValueSet::estimate(std::string_view code) const {
  for (const EstimateRule& rule : estimates) {
    if (rule.code == code) return rule.value;
  }
  return {};
}

std::size_t gaps_in(const ValueSet& set) {
  std::size_t gaps = 0;
  for (const Part& part : set.parts) gaps += !part.value;
  for (const Kind& kind : set.kinds) gaps += !kind.formula + !kind.base;
  for (const PanelRule& rule : set.panels) gaps += !rule.weight;
  for (const SyncClass& sync : set.sync) gaps += !sync.points;
  for (const Penalty& penalty : set.penalties) gaps += !penalty.points;
  return gaps;
}

}  // namespace landdrill
