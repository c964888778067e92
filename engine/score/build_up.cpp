#include "engine/score/build_up.h"

#include <unordered_set>

#include "engine/routine/difficulty.h"
#include "engine/routine/routine.h"
#include "engine/routine/wish.h"
#include "engine/score/execution.h"
#include "engine/score/sync_errors.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

constexpr int difficulty_places = 2;  // at least

class Story {
 public:
  Story(const Routine& routine, const Wish& wish, const Showing& showing, const Score& score)
      : routine_(routine), wish_(wish), showing_(showing), score_(score), places_(places_of(routine)) {}

  Step total() const;

 private:
  Step element(std::size_t index) const;
  Step difficulty(std::size_t index) const;
  Step credited(std::size_t index) const;
  void add_lost(std::size_t index, Step& step) const;
  Step element_mark(std::size_t index) const;
  Step aspect(std::size_t index) const;
  Step weighted(const WeightedPoints& together) const;
  Step sync() const;
  Step penalties() const;

  std::string off(Points points) const { return (Points() - points).text(places_); }
  Step weight(const PanelRule& rule, const std::string& path) const;
  std::string path_of(std::size_t index) const {
    return "element " + std::to_string(routine_.elements[index].number);
  }

  const Routine& routine_;
  const Wish& wish_;
  const Showing& showing_;
  const Score& score_;
  const int places_;
};

Step Story::weight(const PanelRule& rule, const std::string& path) const {
  return {Role::weight, path + " weight", "weight", {}, rule.weight->text(), {}, {rule.from}};
}

Step part_step(const PartUse& use, const std::string& path) {
  const Part& part = *use.part;
  Step step{Role::part, path + " " + part.code, times_text(part.code, use.times), {}, {}, part.title,
            {part.from}};
  if (!part.value) return step;
  step.value = (*part.value * use.times).text(difficulty_places);
  if (use.times != 1) step.rule = std::to_string(use.times) + " x " + part.value->text(difficulty_places);
  return step;
}

Step Story::difficulty(std::size_t index) const {
  const Option& option = chosen(routine_, index, wish_);
  const Kind& kind = *routine_.elements[index].kind;
  const std::string path = path_of(index);
  Step step{Role::difficulty,
            path + " difficulty",
            "declared difficulty",
            {},
            showing_.elements[index].declared.text(difficulty_places)};
  for (const PartUse& use : option.parts) step.inputs.push_back(part_step(use, path));
  if (option.stated) {
    step.remark = "stated on the sheet, not from the tables";
    return step;
  }
  step.rows = {kind.from};
  step.rule = print(*kind.formula) + " = " + with_numbers(*kind.formula, formula_input(option, kind));
  return step;
}

// The parts whose loss brought the base mark.
void Story::add_lost(std::size_t index, Step& step) const {
  const ExpectedMark& expected = showing_.elements[index].rests_on;
  std::vector<const Run*> runs;
  if (expected.base_run != nullptr) runs.push_back(expected.base_run);
  for (const RunMark& one : expected.runs)
    if (expected.base_run == nullptr) runs.push_back(one.run);
  for (const Run* run : runs) {
    for (const RunElement& seen : run->elements) {
      for (const std::string_view lost : seen.element == index ? seen.lost : std::vector<std::string_view>())
        step.inputs.push_back({Role::note,
                               path_of(index) + " lost " + std::string(lost),
                               "lost " + std::string(lost),
                               {},
                               {},
                               "base mark, in the run of " + std::string(run->date)});
    }
  }
}

Step Story::credited(std::size_t index) const {
  const ShownElement& shown = showing_.elements[index];
  const std::string path = path_of(index);
  if (!shown.base) return difficulty(index);
  const Kind& kind = *routine_.elements[index].kind;
  Step step{Role::credited,
            path + " credited",
            "credited difficulty",
            "the base mark of the kind " + kind.code + " instead of what was declared",
            shown.credited.text(difficulty_places),
            "base mark",
            {kind.from}};
  step.inputs.push_back(difficulty(index));
  add_lost(index, step);
  return step;
}

// The element's mark, with what it rests on: judges, run-throughs, or the coach's word.
Step Story::element_mark(std::size_t index) const {
  const PanelRule& rule = *routine_.elements[index].panel;
  const ShownElement& shown = showing_.elements[index];
  const ExpectedMark& expected = shown.rests_on;
  Step step = mark_step(rule, *shown.marks, shown.judges, path_of(index));
  if (expected.from == ExpectedMark::From::sheet) step.remark = "expected on the sheet";
  if (expected.from == ExpectedMark::From::run)
    step.remark = "from the run of " + std::string(expected.runs.front().run->date);
  if (expected.from == ExpectedMark::From::runs) {
    step.remark = "mean of " + std::to_string(expected.runs.size()) + " runs, in steps of " +
                  rule.step.text() + run_rounding_text(rule);
  }
  for (const RunMark& run : expected.runs) step.inputs.push_back(run_step(run, rule, path_of(index)));
  return step;
}

std::string element_rule(const PanelRule& rule, const ShownElement& shown, const Score& score,
                         std::size_t index) {
  const std::string mark = fraction_text(rule, *shown.marks);
  const std::string weight = rule.weight->text();
  if (rule.use == Use::plain) return mark + " x " + weight + ", " + rounded_text(rule);
  const std::string product = mark + " x " + shown.credited.text(difficulty_places);
  if (score.elements[index]) return product + " x " + weight + ", " + rounded_text(rule);
  return product + ", weighed with the others";
}

Step Story::element(std::size_t index) const {
  const Element& element = routine_.elements[index];
  const ShownElement& shown = showing_.elements[index];
  const std::string title(element.title.empty() ? std::string_view(element.kind->title) : element.title);
  Step step{Role::element, path_of(index), title, {}, {}, {}, {}, {}};
  step.inputs.push_back(credited(index));
  const PanelRule* rule = element.panel;
  if (rule == nullptr) step.remark = "not marked by itself in this event";
  if (rule != nullptr && !shown.marks) step.remark = "no mark yet";
  if (rule == nullptr || !shown.marks) return step;
  step.inputs.push_back(element_mark(index));
  step.inputs.push_back(weight(*rule, path_of(index)));
  step.rule = element_rule(*rule, shown, score_, index);
  step.rows = {rule->from};
  if (score_.elements[index]) step.value = score_.elements[index]->text(rule->places);
  return step;
}

Step Story::weighted(const WeightedPoints& together) const {
  const PanelRule& rule = *together.rule;
  Step step{Role::weighted, "elements", "Elements together", {}, {}, {}, {rule.from}};
  std::string merits, difficulties;
  for (std::size_t i = 0; i < routine_.elements.size(); ++i) {
    const ShownElement& shown = showing_.elements[i];
    if (routine_.elements[i].panel != &rule || !shown.marks) continue;
    const std::string plus = merits.empty() ? "" : " + ";
    merits += plus + fraction_text(rule, *shown.marks) + " x " + shown.credited.text();
    difficulties += plus + shown.credited.text();
  }
  step.rule =
      "(" + merits + ") / (" + difficulties + ") x " + rule.weight->text() + ", " + rounded_text(rule);
  if (together.points) step.value = together.points->text(rule.places);
  if (!together.points) step.remark = "every credited difficulty is 0";
  return step;
}

Step Story::aspect(std::size_t index) const {
  const ShownAspect& shown = showing_.aspects[index];
  const PanelRule& rule = *shown.rule;
  Step step{Role::aspect, rule.aspect, rule.title, {}, {}, {}, {rule.from}};
  if (!shown.marks) {
    step.remark = "no mark yet";
    return step;
  }
  step.inputs.push_back(mark_step(rule, *shown.marks, shown.judges, rule.aspect));
  step.inputs.push_back(weight(rule, rule.aspect));
  const std::string mark = fraction_text(rule, *shown.marks);
  step.rule = mark + " x " + rule.weight->text() + ", " + rounded_text(rule);
  step.value = score_.aspects[index]->text(rule.places);
  return step;
}

Step Story::sync() const {
  Step step{Role::sync, "sync", "Sync errors", {}, off(score_.sync)};
  for (const SyncUse& use : showing_.sync) {
    step.inputs.push_back({Role::sync_error,
                           "sync " + use.sync->code,
                           times_text(use.sync->title, use.times),
                           std::to_string(use.times) + " x " + use.sync->points->text(),
                           off(points_of(use)),
                           {},
                           {use.sync->from}});
  }
  return step;
}

Step Story::penalties() const {
  Step step{Role::penalty, "penalties", "Penalties", {}, off(score_.penalties)};
  for (const PenaltyUse& use : showing_.penalties) {
    const Penalty& penalty = *use.penalty;
    const int times = times_counted(use);
    step.inputs.push_back({Role::penalty_line,
                           "penalties " + penalty.code,
                           times_text(penalty.title, use.times),
                           std::to_string(times) + " x " + penalty.points->text(),
                           off(points_of(use)),
                           times < use.times ? "counted at most x" + std::to_string(times) : "",
                           {penalty.from}});
  }
  return step;
}

// "23.1 + 18.2 - 0.7": the values of the steps below.
std::string written_sum(const std::vector<Step>& steps) {
  std::string sum;
  for (const Step& step : steps) {
    if (step.value.empty()) continue;
    const bool minus = step.value.front() == '-';
    if (sum.empty()) {
      sum = step.value;
    } else {
      sum += (minus ? " - " : " + ") + step.value.substr(minus ? 1 : 0);
    }
  }
  return sum;
}

Step Story::total() const {
  Step step{Role::total, "total", "Total"};
  for (std::size_t i = 0; i < routine_.elements.size(); ++i) step.inputs.push_back(element(i));
  for (const WeightedPoints& together : score_.weighted) step.inputs.push_back(weighted(together));
  for (std::size_t i = 0; i < showing_.aspects.size(); ++i) step.inputs.push_back(aspect(i));
  if (!showing_.sync.empty()) step.inputs.push_back(sync());
  if (!showing_.penalties.empty()) step.inputs.push_back(penalties());
  step.rule = written_sum(step.inputs);
  step.value = score_.so_far.text(places_);
  if (!score_.total) step.remark = "not complete: marks are missing";
  return step;
}

// A part may be swum twice in two places, a fault be seen in two sizes, or a part bear the name of a step:
// the second such path gets " 2" behind it, so that every step can be asked for.
void make_paths_distinct(Step& step, std::unordered_set<std::string>& taken) {
  const std::string wanted = step.path;
  for (int again = 2; !taken.insert(step.path).second; ++again)
    step.path = wanted + " " + std::to_string(again);
  for (Step& input : step.inputs) make_paths_distinct(input, taken);
}

Step with_distinct_paths(Step total) {
  std::unordered_set<std::string> taken;
  make_paths_distinct(total, taken);
  return total;
}

}  // namespace

Step build_up(const Routine& routine, const Wish& wish, const Showing& showing, const Score& score) {
  return with_distinct_paths(Story(routine, wish, showing, score).total());
}

}  // namespace landdrill
