#include "engine/judging/practice.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "engine/judging/enough.h"
#include "engine/judging/statistics/agreement.h"
#include "engine/judging/statistics/figures.h"
#include "engine/routine/routine.h"
#include "engine/routine/wish.h"
#include "engine/score/panel.h"
#include "grammar/words.h"
#include "tables/binary.h"
#include "tables/decimal.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

double kept_mean(const PanelRule& rule, const JudgeMarks& judges) {
  const KeptMarks kept = keep(rule, judges);
  return binary_mean(kept.sum, kept.count);
}

PracticeTask marked_by(const PanelRule& rule, const JudgeMarks& judges, PracticeTask task) {
  task.rule = &rule;
  task.judges = judges;
  task.kept = kept_mean(rule, judges);
  return task;
}

std::string_view without_blanks(std::string_view text) {
  const std::size_t first = text.find_first_not_of(" \t\r\n");
  if (first == std::string_view::npos) return {};
  return text.substr(first, text.find_last_not_of(" \t\r\n") - first + 1);
}

Answer complaint(std::string_view typed, const PanelRule& rule) {
  Answer answer;
  answer.complaint = "found \"" + std::string(typed) + "\"; expected a mark from " + rule.least.text() +
                     " to " + rule.most.text() + " in steps of " + rule.step.text() + ", or b, s, p or ?";
  return answer;
}

std::string words_of(const PartUses& parts) {
  std::string text;
  for (const PartUse& use : parts)
    text += (text.empty() ? "" : ", ") + use.part->code +
            (use.times == 1 ? "" : " x" + std::to_string(use.times));
  return text;
}

}  // namespace

std::vector<PracticeTask> practice_tasks(const Routine& routine, const RecordedPanel& panel,
                                         std::int64_t block, const std::vector<std::size_t>& options) {
  const Wish wish{options, {}};
  PracticeTask of_panel;
  of_panel.block = block;
  of_panel.routine = routine.title;
  of_panel.panel = std::string(panel.date) + (panel.title.empty() ? "" : " " + std::string(panel.title));
  of_panel.event = routine.event->code;
  std::vector<PracticeTask> tasks;
  std::vector<const RecordedElement*> seen(routine.elements.size());
  for (const RecordedElement& one : panel.elements) seen[one.element] = &one;
  for (std::size_t i = 0; i < seen.size(); ++i) {
    if (seen[i] == nullptr) continue;
    const Element& element = routine.elements[i];
    PracticeTask task = marked_by(*element.panel, seen[i]->marks, of_panel);
    task.line = std::to_string(element.number);
    task.label = name_of(element);
    task.kind = element.kind->code;
    task.declared = chosen(routine, i, wish).declared;
    task.parts = words_of(chosen(routine, i, wish).parts);
    tasks.push_back(std::move(task));
  }
  for (const RecordedAspect& one : panel.aspects) {
    PracticeTask task = marked_by(*one.rule, one.marks, of_panel);
    task.line = task.kind = one.rule->aspect;
    task.label = one.rule->title.empty() ? one.rule->aspect : one.rule->title;
    tasks.push_back(std::move(task));
  }
  return tasks;
}

Answer read_answer(std::string_view typed, const PracticeTask& task) {
  const std::string word = words::lower(without_blanks(typed));
  Answer answer;
  if (word == "b" || word == "back") answer.does = Answer::Does::back;
  if (word == "s" || word == "skip" || word == "-") answer.does = Answer::Does::skip;
  if (word == "p" || word == "pause" || word == "q") answer.does = Answer::Does::pause;
  if (word == "?" || word == "h" || word == "help") answer.does = Answer::Does::help;
  if (answer.does != Answer::Does::nothing) return answer;
  const PanelRule& rule = *task.rule;
  const std::optional<Decimal> number = Decimal::parse(word);
  if (!number || Mark(*number) < rule.least || Mark(*number) > rule.most ||
      !(*number - rule.least.value()).is_multiple_of(rule.step)) {
    return complaint(without_blanks(typed), rule);
  }
  answer.does = Answer::Does::mark;
  answer.mark = Mark(*number);
  return answer;
}

}  // namespace landdrill
