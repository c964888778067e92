#include "engine/judging/practice.h"

#include <algorithm>
#include <cmath>

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

// A task is weak by how far she was off, but nothing is left out for good.
constexpr double least_weight = 0.1;

double kept_mean(const PanelRule& rule, const JudgeMarks& judges) {
  const KeptMarks kept = keep(rule, judges);
  return binary_mean(kept.sum, kept.count);
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

bool is_of(const PracticeTask& task, const Weakness& weak) {
  if (!weak.kind.empty()) return weak.kind == task.kind;
  return (!weak.from || task.kept >= *weak.from) && (!weak.below || task.kept < *weak.below);
}

// How much the task is wanted: by the mean of what is known of its kind and its level.
double weight_of(const PracticeTask& task, std::span<const Weakness> known) {
  double sum = 0;
  int count = 0;
  for (const Weakness& weak : known) {
    if (!is_of(task, weak)) continue;
    sum += weak.difference;
    ++count;
  }
  return count == 0 ? 1 : least_weight + sum / count;
}

// SplitMix64 (Steele, Lea & Flood 2014): the same numbers on every machine.
class Dice {
 public:
  explicit Dice(std::uint64_t seed) : state_(seed) {}
  double roll() {
    std::uint64_t mixed = state_ += 0x9E3779B97F4A7C15u;
    mixed = (mixed ^ (mixed >> 30)) * 0xBF58476D1CE4E5B9u;
    mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EBu;
    return static_cast<double>((mixed ^ (mixed >> 31)) >> 11) * 0x1.0p-53;
  }

 private:
  std::uint64_t state_;
};

}  // namespace

std::vector<PracticeTask> practice_tasks(const Routine& routine, const RecordedPanel& panel,
                                         std::int64_t block, const std::vector<std::size_t>& options) {
  const Wish wish{options, {}};
  const std::string name =
      std::string(panel.date) + (panel.title.empty() ? "" : " " + std::string(panel.title));
  std::vector<PracticeTask> tasks;
  std::vector<const RecordedElement*> seen(routine.elements.size());
  for (const RecordedElement& one : panel.elements) seen[one.element] = &one;
  for (std::size_t i = 0; i < seen.size(); ++i) {
    if (seen[i] == nullptr) continue;
    const Element& element = routine.elements[i];
    tasks.push_back({block, std::string(routine.title), name, std::to_string(element.number),
                     name_of(element), element.kind->code, chosen(routine, i, wish).declared, element.panel,
                     seen[i]->marks, kept_mean(*element.panel, seen[i]->marks)});
  }
  for (const RecordedAspect& one : panel.aspects) {
    const std::string& title = one.rule->title.empty() ? one.rule->aspect : one.rule->title;
    tasks.push_back({block, std::string(routine.title), name, one.rule->aspect, title, one.rule->aspect,
                     std::nullopt, one.rule, one.marks, kept_mean(*one.rule, one.marks)});
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

std::vector<Weakness> weaknesses(const PracticeReport& so_far) {
  std::vector<Weakness> known;
  for (const PracticeReport::Where& where : so_far.where) {
    if (where.by == PracticeReport::Where::By::kind) known.push_back({where.name, {}, {}, where.difference});
    if (where.by == PracticeReport::Where::By::level)
      known.push_back({"", where.from, where.below, where.difference});
  }
  return known;
}

// Weighted sampling without replacement by keys u^(1/w) (Efraimidis & Spirakis 2006), then in the order of
// the tasks.
std::vector<std::size_t> draw_tasks(std::span<const PracticeTask> tasks, std::span<const Weakness> known,
                                    std::size_t how_many, std::uint64_t seed) {
  Dice dice(seed);
  std::vector<std::pair<double, std::size_t>> keys;
  for (std::size_t i = 0; i < tasks.size(); ++i)
    keys.emplace_back(std::log(std::max(dice.roll(), 1e-300)) / weight_of(tasks[i], known), i);
  std::sort(keys.rbegin(), keys.rend());
  std::vector<std::size_t> drawn;
  for (std::size_t i = 0; i < std::min(how_many, keys.size()); ++i) drawn.push_back(keys[i].second);
  std::sort(drawn.begin(), drawn.end());
  return drawn;
}

}  // namespace landdrill
