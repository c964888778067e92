#include "engine/score/panel.h"

#include <cassert>
#include <functional>

#include "tables/decimal.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

Exact divided(Exact value, int count) {
  return value / Exact(Decimal::whole(count));
}

Mark mean_of_the_others(const PanelRule& rule, std::span<const std::optional<Mark>> marks) {
  Mark sum;
  int given = 0;
  for (const std::optional<Mark>& mark : marks) {
    if (!mark) continue;
    sum += *mark;
    ++given;
  }
  assert(given > 0 && rule.missing_step);
  return Mark(
      round_to_step(divided(Exact(sum.value()), given), *rule.missing_step, rule.rounding_of_missing()));
}

// Drops the first that comes before all others that are still kept.
void drop_first(std::vector<JudgeMark>& judges, JudgeMark::State state, auto comes_before) {
  JudgeMark* first = nullptr;
  for (JudgeMark& one : judges) {
    if (one.state != JudgeMark::State::kept) continue;
    if (first == nullptr || comes_before(one.mark, first->mark)) first = &one;
  }
  assert(first != nullptr);
  first->state = state;
}

JudgeMark judge_mark(const PanelRule& rule, std::span<const std::optional<Mark>> marks, std::size_t judge) {
  if (marks[judge]) return {*marks[judge]};
  if (rule.missing == Missing::mean) return {mean_of_the_others(rule, marks), JudgeMark::State::kept, true};
  return {{}, JudgeMark::State::absent};
}

}  // namespace

Judged judge(const PanelRule& rule, std::span<const std::optional<Mark>> marks) {
  Judged result;
  for (std::size_t i = 0; i < marks.size(); ++i) result.judges.push_back(judge_mark(rule, marks, i));
  for (int i = 0; i < rule.drop_low; ++i)
    drop_first(result.judges, JudgeMark::State::dropped_low, std::less<>());
  for (int i = 0; i < rule.drop_high; ++i)
    drop_first(result.judges, JudgeMark::State::dropped_high, std::greater_equal<>());
  for (const JudgeMark& one : result.judges) {
    if (one.state != JudgeMark::State::kept) continue;
    result.kept.sum += one.mark;
    ++result.kept.count;
  }
  assert(result.kept.count > 0);
  return result;
}

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
