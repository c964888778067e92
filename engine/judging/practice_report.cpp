// How a trainee's marks compare with the panel's.
#include <algorithm>
#include <cmath>
#include <map>

#include "engine/judging/enough.h"
#include "engine/judging/practice.h"
#include "engine/judging/statistics/agreement.h"
#include "engine/judging/statistics/figures.h"
#include "tables/binary.h"
#include "tables/quantity.h"

namespace landdrill {
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
