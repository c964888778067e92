#include <algorithm>

#include "grammar/diagnostics.h"
#include "tables/complaints.h"
#include "tables/decimal.h"
#include "tables/problems.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

bool is_about(const PanelRule& panel, const SpreadRule& rule) {
  if (!rule.aspect.empty() && panel.aspect != rule.aspect) return false;
  if (rule.kind.empty()) return true;
  return panel.per_element && (panel.kind.empty() || panel.kind == rule.kind);
}

void complain_of_no_panel(const ValueSet& set, const SpreadRule& rule, Complaints& complaints) {
  const bool aspect_known = std::any_of(set.panels.begin(), set.panels.end(),
                                        [&](const PanelRule& panel) { return panel.aspect == rule.aspect; });
  if (!rule.aspect.empty() && !aspect_known)
    return complaints.at(rule.from, "aspect",
                         {Problem::never_counts, "the aspect " + in_quotes(rule.aspect),
                          "an aspect that a row of panels.csv marks"});
  complaints.at(rule.from, "kind",
                {Problem::never_counts, "a spread for the kind " + in_quotes(rule.kind),
                 "a kind that a panel marks for each element" +
                     (rule.aspect.empty() ? "" : " with the aspect " + in_quotes(rule.aspect))});
}

void check_width(const SpreadRule& rule, Decimal width, Complaints& complaints) {
  const bool scale_is_wrong = width <= Decimal();  // said at the panel
  if (rule.spread <= width || scale_is_wrong) return;
  complaints.at(rule.from, "spread",
                {Problem::contradiction, "the spread " + rule.spread.text(),
                 "at most " + width.text() + ", the width of the scale of marks"});
}

void check_spread(const ValueSet& set, const SpreadRule& rule, Complaints& complaints) {
  std::optional<Decimal> width;
  for (const PanelRule& panel : set.panels) {
    if (!is_about(panel, rule)) continue;
    const Decimal of_panel = panel.most.value() - panel.least.value();
    width = std::max(width.value_or(of_panel), of_panel);
  }
  if (width) return check_width(rule, *width, complaints);
  if (!complaints.is_incomplete("panels") && !set.panels.empty()) complain_of_no_panel(set, rule, complaints);
}

// The day is shared by all marks.
void check_day(const SpreadRule& rule, Complaints& complaints) {
  for (const auto& [column, cell] : {std::pair("aspect", &rule.aspect), std::pair("kind", &rule.kind)}) {
    if (!cell->empty())
      complaints.at(rule.from, column,
                    {Problem::contradiction, in_quotes(*cell) + " in a row for the day",
                     "an empty cell, since all marks share the day, or judges"});
  }
}

}  // namespace

void check_spreads(const ValueSet& set, Complaints& complaints) {
  for (const SpreadRule& rule : set.spreads) {
    const bool is_day = rule.what == SpreadRule::What::day;
    if (is_day && !(rule.aspect.empty() && rule.kind.empty()))
      check_day(rule, complaints);
    else
      check_spread(set, rule, complaints);
  }
}

}  // namespace landdrill
