#include "engine/score/dropped_marks.h"

#include <cassert>
#include <functional>

#include "tables/decimal.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

Mark mean_of_the_others(const PanelRule& rule, std::span<const std::optional<Mark>> marks) {
  Mark sum;
  int given = 0;
  for (const std::optional<Mark>& mark : marks) {
    if (!mark) continue;
    sum += *mark;
    ++given;
  }
  assert(given > 0 && rule.missing_step);
  return Mark(round_to_step(Exact(sum.value()) / Exact(Decimal::whole(given)), *rule.missing_step,
                            rule.rounding_of_missing()));
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

}  // namespace landdrill
