#include "engine/score/panel.h"

#include <algorithm>
#include <array>
#include <cassert>

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
  return Mark(round_to_step(divided(Exact(sum.value()), given), *rule.missing_step, rule.rounding));
}

// Marks the `count` judges at the front of `order` as dropped.
void drop(std::vector<JudgeMark>& judges, std::span<const std::size_t> order, JudgeMark::State state) {
  for (std::size_t judge : order) judges[judge].state = state;
}

std::vector<std::size_t> lowest_first(const std::vector<JudgeMark>& judges) {
  std::vector<std::size_t> order;
  for (std::size_t judge = 0; judge < judges.size(); ++judge) {
    if (judges[judge].state == JudgeMark::State::kept) order.push_back(judge);
  }
  std::stable_sort(order.begin(), order.end(),
                   [&](std::size_t a, std::size_t b) { return judges[a].mark < judges[b].mark; });
  return order;
}

}  // namespace

Judged judge(const PanelRule& rule, std::span<const std::optional<Mark>> marks) {
  Judged result;
  for (const std::optional<Mark>& mark : marks) {
    JudgeMark one;
    one.filled = !mark && rule.missing == Missing::mean;
    if (mark) one.mark = *mark;
    if (one.filled) one.mark = mean_of_the_others(rule, marks);
    if (!mark && !one.filled) one.state = JudgeMark::State::absent;
    result.judges.push_back(one);
  }
  const std::vector<std::size_t> order = lowest_first(result.judges);
  const auto low = static_cast<std::size_t>(rule.drop_low), high = static_cast<std::size_t>(rule.drop_high);
  assert(order.size() > low + high);
  drop(result.judges, std::span(order).first(low), JudgeMark::State::dropped_low);
  drop(result.judges, std::span(order).last(high), JudgeMark::State::dropped_high);
  for (const JudgeMark& one : result.judges) {
    if (one.state != JudgeMark::State::kept) continue;
    result.kept.sum += one.mark;
    ++result.kept.count;
  }
  return result;
}

KeptMarks keep(const PanelRule& rule, std::span<const std::optional<Mark>> marks) {
  std::array<Mark, 16> given;
  if (marks.size() > given.size()) return judge(rule, marks).kept;
  std::size_t count = 0;
  for (const std::optional<Mark>& mark : marks) {
    if (mark) given[count++] = *mark;
    if (!mark && rule.missing == Missing::mean) given[count++] = mean_of_the_others(rule, marks);
  }
  std::sort(given.begin(), given.begin() + static_cast<std::ptrdiff_t>(count));
  assert(count > static_cast<std::size_t>(rule.drop_low + rule.drop_high));
  KeptMarks kept;
  for (auto i = static_cast<std::size_t>(rule.drop_low); i + static_cast<std::size_t>(rule.drop_high) < count;
       ++i) {
    kept.sum += given[i];
    ++kept.count;
  }
  return kept;
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
