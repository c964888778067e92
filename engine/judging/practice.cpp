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

// How a trainee's marks compare with the panel's.

namespace {

// One task she has marked.
struct Marked {
  const PracticeTask* task = nullptr;
  double hers = 0;
  double off() const { return hers - task->kept; }
};

double mean_over(const std::vector<Marked>& marked, auto number) {
  double sum = 0;
  for (const Marked& one : marked) sum += number(one);
  return sum / static_cast<double>(marked.size());
}
double bias_of(const std::vector<Marked>& marked) {
  return mean_over(marked, [](const Marked& one) { return one.off(); });
}
double difference_of(const std::vector<Marked>& marked) {
  return mean_over(marked, [](const Marked& one) { return std::abs(one.off()); });
}
std::optional<double> spread_of(const std::vector<Marked>& marked, auto number) {
  if (marked.size() < 2) return std::nullopt;
  const double mean = mean_over(marked, number);
  double squares = 0;
  for (const Marked& one : marked) squares += (number(one) - mean) * (number(one) - mean);
  return std::sqrt(squares / static_cast<double>(marked.size() - 1));
}
// A hair more than the steps, so that a third of a mark does not fall out by its binary tail.
double share_within(const std::vector<Marked>& marked, int steps) {
  return mean_over(marked, [steps](const Marked& one) {
    return std::abs(one.off()) <= binary(one.task->rule->step) * steps + 1e-9 ? 1.0 : 0.0;
  });
}

std::vector<Marked> part_of(const std::vector<Marked>& marked, std::size_t from, std::size_t to) {
  return {marked.begin() + static_cast<std::ptrdiff_t>(from),
          marked.begin() + static_cast<std::ptrdiff_t>(to)};
}

void compare_spread(const std::vector<Marked>& marked, PracticeReport& report) {
  const auto hers = [](const Marked& one) { return one.hers; };
  const auto kept = [](const Marked& one) { return one.task->kept; };
  const auto by = [](auto number) {
    return [number](const Marked& a, const Marked& b) { return number(a) < number(b); };
  };
  const auto [low, high] = std::minmax_element(marked.begin(), marked.end(), by(hers));
  const auto [panel_low, panel_high] = std::minmax_element(marked.begin(), marked.end(), by(kept));
  report.lowest = hers(*low);
  report.highest = hers(*high);
  report.panel_lowest = kept(*panel_low);
  report.panel_highest = kept(*panel_high);
  report.spread = spread_of(marked, hers);
  report.panel_spread = spread_of(marked, kept);
}

void compare_judges(const std::vector<Marked>& marked, PracticeReport& report) {
  const std::size_t seats = marked.front().task->judges.size();
  for (const Marked& one : marked) {
    if (one.task->judges.size() != seats) return;
  }
  for (std::size_t seat = 0; seat < seats; ++seat) {
    PracticeReport::Against against{seat, 0, 0, 0};
    for (const Marked& one : marked) {
      const std::optional<Mark>& mark = one.task->judges[seat];
      if (!mark) continue;
      const double off = one.hers - binary(*mark);
      against.bias += off;
      against.difference += std::abs(off);
      ++against.tasks;
    }
    if (against.tasks == 0) continue;
    against.bias /= static_cast<double>(against.tasks);
    against.difference /= static_cast<double>(against.tasks);
    report.judges.push_back(against);
  }
}

using Where = PracticeReport::Where;

// Those tasks of which the same is said.
struct Group {
  std::string name;
  std::vector<Marked> marked;
  std::optional<double> from = {}, below = {};
};

void add_groups(Where::By by, const std::vector<Group>& groups, PracticeReport& report) {
  std::vector<Where> found;
  for (const Group& group : groups)
    found.push_back({by, group.name, group.marked.size(), bias_of(group.marked), difference_of(group.marked),
                     group.from, group.below});
  std::stable_sort(found.begin(), found.end(),
                   [](const Where& a, const Where& b) { return a.difference > b.difference; });
  report.where.insert(report.where.end(), found.begin(), found.end());
}

std::vector<Group> by_kind(const std::vector<Marked>& marked) {
  std::map<std::string, std::vector<Marked>> kinds;
  for (const Marked& one : marked) kinds[one.task->kind].push_back(one);
  std::vector<Group> groups;
  for (auto& [kind, its_marks] : kinds) groups.push_back({kind, std::move(its_marks)});
  return groups;
}

// Thirds of the tasks by the panel's mark.
std::vector<Group> by_level(std::vector<Marked> marked) {
  std::stable_sort(marked.begin(), marked.end(),
                   [](const Marked& a, const Marked& b) { return a.task->kept < b.task->kept; });
  const std::size_t third = marked.size() / 3;
  const double low = marked[third].task->kept, high = marked[marked.size() - third].task->kept;
  return {{figure(low) + " to " + figure(high), part_of(marked, third, marked.size() - third), low, high},
          {figure(high) + " and above", part_of(marked, marked.size() - third, marked.size()), high, {}},
          {"below " + figure(low), part_of(marked, 0, third), {}, low}};
}

std::vector<Group> by_time(const std::vector<Marked>& marked) {
  const std::size_t third = marked.size() / 3;
  return {{"first third", part_of(marked, 0, third)},
          {"last third", part_of(marked, marked.size() - third, marked.size())},
          {"middle", part_of(marked, third, marked.size() - third)}};
}

void find_where(const std::vector<Marked>& marked, PracticeReport& report) {
  add_groups(Where::By::kind, by_kind(marked), report);
  if (marked.size() < 3 * least_in_a_group) return;
  add_groups(Where::By::level, by_level(marked), report);
  add_groups(Where::By::time, by_time(marked), report);
}

std::string higher_or_lower(double bias) {
  return figure(std::abs(bias)) + (bias > 0 ? " higher" : " lower");
}

void say(const std::vector<Marked>& marked, PracticeReport& report) {
  const double step = binary(marked.front().task->rule->step);
  std::vector<std::string>& said = report.sentences;
  said.push_back(std::abs(*report.bias) < step / 2
                     ? "On average you mark as the panel does (" + higher_or_lower(*report.bias) + ")."
                     : "On average you mark " + higher_or_lower(*report.bias) + " than the panel.");
  for (const Where& where : report.where) {
    if (where.tasks < least_in_a_group || where.difference < *report.difference + step / 2) continue;
    said.push_back("You are furthest off on " + where.name + ": " + figure(where.difference) +
                   " from the panel on average.");
    break;
  }
  if (report.order.value && *report.order.value < 0.5)
    said.push_back("You rank the elements otherwise than the panel: look at which you find better.");
  if (report.spread && *report.panel_spread > 0 && *report.spread < *report.panel_spread / 2)
    said.push_back("You use less of the scale than the panel: be bolder with high and low marks.");
  if (report.second_half && *report.second_half > *report.first_half + step)
    said.push_back("You drift in the second half: take a breath between elements.");
}

std::vector<Marked> marked_tasks(std::span<const PracticeTask> tasks, std::span<const Practised> done,
                                 PracticeReport& report) {
  std::vector<Marked> marked;
  for (std::size_t i = 0; i < std::min(tasks.size(), done.size()); ++i) {
    if (done[i].late) ++report.late;
    if (done[i].mark) {
      marked.push_back({&tasks[i], binary(*done[i].mark)});
    } else {
      ++report.skipped;
    }
  }
  report.marked = marked.size();
  return marked;
}

void warn_of_corrected(std::span<const PracticeTask> tasks, PracticeReport& report) {
  constexpr std::size_t most_named = 4;
  std::string names;
  for (const PracticeTask& task : tasks) {
    if (!task.corrected) continue;
    if (++report.corrected <= most_named) names += (names.empty() ? "" : ", ") + task.label;
  }
  if (report.corrected == 0) return;
  if (report.corrected > most_named) names += " and others";
  report.warnings.push_back("The panel's marks of " + std::to_string(report.corrected) + " of the " +
                            std::to_string(tasks.size()) +
                            " lines were corrected since this practice began (" + names +
                            "): you are compared with the corrected ones.");
}

}  // namespace

PracticeReport practice_report(std::span<const PracticeTask> tasks, std::span<const Practised> done) {
  PracticeReport report;
  const std::vector<Marked> marked = marked_tasks(tasks, done, report);
  if (marked.size() < least_tasks) {
    report.warnings.push_back(std::to_string(marked.size()) + (marked.size() == 1 ? " mark" : " marks") +
                              ": too few to say much; mark at least " + std::to_string(least_tasks));
  }
  warn_of_corrected(tasks, report);
  if (marked.empty()) return report;
  report.bias = bias_of(marked);
  report.difference = difference_of(marked);
  report.within_one = share_within(marked, 1);
  report.within_two = share_within(marked, 2);
  Pairs pairs;
  for (const Marked& one : marked) pairs.emplace_back(one.hers, one.task->kept);
  report.order = spearman(pairs);
  compare_spread(marked, report);
  compare_judges(marked, report);
  if (marked.size() >= least_tasks) {
    report.first_half = difference_of(part_of(marked, 0, marked.size() / 2));
    report.second_half = difference_of(part_of(marked, marked.size() / 2, marked.size()));
  }
  find_where(marked, report);
  if (marked.size() >= least_tasks) say(marked, report);
  return report;
}

}  // namespace landdrill
