#include <array>

#include "engine/routine/routine.h"
#include "engine/score/build_up.h"
#include "engine/score/execution.h"
#include "engine/score/panel.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

constexpr std::array<std::string_view, 19> role_words = {
    "total", "element",    "difficulty", "credited",     "part",     "base",     "mark",
    "judge", "deduction",  "run",        "weight",       "combined", "weighted", "aspect",
    "sync",  "sync-error", "penalty",    "penalty-line", "note"};

}  // namespace

std::string_view word_of(Role role) {
  return role_words[static_cast<std::size_t>(role)];
}

const Step* Step::at(std::string_view wanted_path) const {
  if (path == wanted_path) return this;
  for (const Step& step : inputs) {
    if (const Step* found = step.at(wanted_path)) return found;
  }
  return nullptr;
}

namespace {

std::string filled_text(const PanelRule& rule) {
  const std::string given = "missing: given the mean of the others";
  if (!rule.missing_rounding) return given;
  return given + ", rounded " + std::string(word_of(*rule.missing_rounding)) + " to steps of " +
         rule.missing_step->text();
}

std::string remark_of(const JudgeMark& judge, const PanelRule& rule) {
  std::string remark = judge.filled ? filled_text(rule) : "";
  const auto add = [&](std::string_view text) { remark += (remark.empty() ? "" : "; ") + std::string(text); };
  if (judge.state == JudgeMark::State::dropped_high) add("dropped: highest");
  if (judge.state == JudgeMark::State::dropped_low) add("dropped: lowest");
  if (judge.state == JudgeMark::State::absent) add("missing");
  return remark;
}

std::vector<Step> judge_steps(const PanelRule& rule, const std::vector<JudgeMark>& judges,
                              const std::string& path) {
  std::vector<Step> steps;
  for (std::size_t i = 0; i < judges.size(); ++i) {
    const JudgeMark& one = judges[i];
    Step step{Role::judge, path + " judge " + std::to_string(i + 1), "judge " + std::to_string(i + 1)};
    if (one.state != JudgeMark::State::absent) step.value = one.mark.text(rule.step.places_used());
    step.remark = remark_of(one, rule);
    steps.push_back(std::move(step));
  }
  return steps;
}

std::string kept_rule(const PanelRule& rule, const KeptMarks& kept) {
  const std::string sum = kept.sum.text(rule.step.places_used());
  const std::string count = std::to_string(kept.count);
  if (rule.combine == Combine::sum) return "sum of " + count + " kept marks";
  return "mean of " + count + " kept marks: " + sum + " / " + count;
}

std::string size_text(const FaultUse& use) {
  return times_text(use.fault->title + ", " + std::string(word_of(use.size)), use.times);
}

}  // namespace

std::string times_text(std::string_view code, int times) {
  return std::string(code) + (times == 1 ? "" : " x" + std::to_string(times));
}

std::string rounded_text(const PanelRule& rule) {
  return "rounded " + std::string(word_of(rule.rounding)) + " to " + std::to_string(rule.places) + " places";
}

std::string run_rounding_text(const PanelRule& rule) {
  return rule.run_rounding ? ", rounded " + std::string(word_of(*rule.run_rounding)) : "";
}

// "(22 / 3)": what goes into the product, before any rounding.
std::string fraction_text(const PanelRule& rule, const KeptMarks& kept) {
  const std::string sum = kept.sum.text();
  if (rule.combine == Combine::sum || kept.count == 1) return sum;
  return "(" + sum + " / " + std::to_string(kept.count) + ")";
}

Step mark_step(const PanelRule& rule, const KeptMarks& kept, const std::vector<JudgeMark>& judges,
               const std::string& path) {
  Step step{Role::mark, path + " mark", "mark", {}, {}, {}, {rule.from}};
  const PanelMark mark = panel_mark(rule, kept);
  step.value = mark.value.text(mark.places);
  if (!judges.empty()) {
    step.rule = kept_rule(rule, kept);
    step.inputs = judge_steps(rule, judges, path);
  } else if (rule.combine == Combine::sum) {
    step.rule = std::to_string(kept.count) + " kept marks as expected";
  }
  return step;
}

namespace {

std::string run_rule(const RunMark& mark, const PanelRule& rule) {
  if (mark.seen->mark) return "given in the run";
  const std::string best = mark.best.text(rule.step.places_used());
  const std::string from = mark.best_from == RunMark::Best::nobody  ? rule.most.text()
                           : mark.best_from == RunMark::Best::sheet ? "best " + best
                                                                    : "best " + best + " of the set";
  return from + " less the deductions, in steps of " + rule.step.text() + run_rounding_text(rule);
}

}  // namespace

Step run_step(const RunMark& mark, const PanelRule& rule, const std::string& path) {
  const std::string date(mark.run->date);
  Step step{Role::run,
            path + " run " + date,
            "run " + date,
            run_rule(mark, rule),
            mark.mark->text(rule.step.places_used()),
            std::string(mark.run->title)};
  for (const Deduction& deduction : mark.deductions) {
    Step line{Role::deduction,
              path + " " + deduction.use.fault->code,
              size_text(deduction.use),
              {},
              (Mark() - deduction.taken).text(),
              deduction.capped ? "no more than " + deduction.use.fault->cap->text() + " for this fault" : "",
              {deduction.use.fault->from}};
    step.inputs.push_back(std::move(line));
  }
  return step;
}

}  // namespace landdrill
