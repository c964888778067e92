#include "engine/score/panel.h"

#include "tables/decimal.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

Exact divided(Exact value, int count) {
  return value / Exact(Decimal::whole(count));
}

}  // namespace

KeptMarks all_giving(const PanelRule& rule, Mark mark) {
  const int kept = rule.judges - rule.drop_high - rule.drop_low;
  return {mark * kept, kept};
}

Decimal mean_mark(const KeptMarks& kept) {
  return round(divided(Exact(kept.sum.value()), kept.count), Decimal::places, Rounding::half_up);
}

Exact combined(const PanelRule& rule, const KeptMarks& kept) {
  const Exact sum(kept.sum.value());
  return rule.combine == Combine::mean ? divided(sum, kept.count) : sum;
}

PanelMark panel_mark(const PanelRule& rule, const KeptMarks& kept) {
  constexpr int places = 4;
  return {round(combined(rule, kept), places, rule.rounding), rule.step.places_used()};
}

Points element_points(const PanelRule& rule, const KeptMarks& kept, Difficulty credited) {
  const Exact merit = kept.sum * credited * *rule.weight;
  const Exact exact = rule.combine == Combine::mean ? divided(merit, kept.count) : merit;
  return Points(round(exact, rule.places, rule.rounding));
}

Points weighted_points(const PanelRule& rule, Exact merit, Difficulty difficulty) {
  return Points(round(merit / Exact(difficulty.value()) * *rule.weight, rule.places, rule.rounding));
}

Points plain_points(const PanelRule& rule, const KeptMarks& kept) {
  return Points(round(combined(rule, kept) * *rule.weight, rule.places, rule.rounding));
}

}  // namespace landdrill
