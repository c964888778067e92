#include "engine/judging/practice_report.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <string>
#include <tuple>

#include "engine/judging/enough.h"
#include "engine/judging/practice_places.h"
#include "engine/judging/practice_words.h"
#include "engine/judging/statistics/agreement.h"
#include "engine/judging/statistics/less_alike.h"
#include "tables/binary.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

double mean_over(std::span<const MarkedTask> marked, auto number) {
  double sum = 0;
  for (const MarkedTask& one : marked) sum += number(one);
  return sum / static_cast<double>(marked.size());
}
double difference_of(std::span<const MarkedTask> marked) {
  return mean_over(marked, [](const MarkedTask& one) { return std::abs(one.off()); });
}
std::optional<double> spread_of(std::span<const MarkedTask> marked, auto number) {
  if (marked.size() < 2) return std::nullopt;
  const double mean = mean_over(marked, number);
  double squares = 0;
  for (const MarkedTask& one : marked) squares += (number(one) - mean) * (number(one) - mean);
  return std::sqrt(squares / static_cast<double>(marked.size() - 1));
}
// A hair more than the steps, so that a third of a mark does not fall out by its binary tail.
double share_within(std::span<const MarkedTask> marked, int steps) {
  return mean_over(marked, [steps](const MarkedTask& one) {
    return std::abs(one.off()) <= binary(one.task->rule->step) * steps + 1e-9 ? 1.0 : 0.0;
  });
}

void compare_spread(const std::vector<MarkedTask>& marked, PracticeReport& report) {
  const auto hers = [](const MarkedTask& one) { return one.hers; };
  const auto kept = [](const MarkedTask& one) { return one.task->kept; };
  const auto by = [](auto number) {
    return [number](const MarkedTask& a, const MarkedTask& b) { return number(a) < number(b); };
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

void compare_judges(const std::vector<MarkedTask>& marked, PracticeReport& report) {
  std::map<std::tuple<std::string, std::string, bool, std::size_t>, std::vector<double>> offs;
  for (const MarkedTask& one : marked) {
    const PracticeTask& task = *one.task;
    for (std::size_t seat = 0; seat < task.judges.size(); ++seat)
      if (task.judges[seat])
        offs[{task.panel, task.event, task.line == task.kind, seat}].push_back(one.hers -
                                                                               binary(*task.judges[seat]));
  }
  for (const auto& [name, off] : offs) {
    if (off.size() < least_in_a_group) continue;
    const auto& [panel, event, of_aspects, seat] = name;
    double distance = 0;
    for (double number : off) distance += std::abs(number);
    report.judges.push_back({panel, event, !of_aspects, seat, mean_with_interval(off),
                             distance / static_cast<double>(off.size())});
  }
}

// Each judge with the mean of the others who sat beside her, seat by seat.
std::vector<Pairs> judges_beside_the_others(const std::vector<MarkedTask>& marked) {
  std::vector<Pairs> judges;
  for (const MarkedTask& one : marked) {
    const JudgeMarks& marks = one.task->judges;
    if (marks.size() > judges.size()) judges.resize(marks.size());
    double sum = 0, count = 0;
    for (const std::optional<Mark>& mark : marks) {
      sum += mark ? binary(*mark) : 0;
      count += mark ? 1 : 0;
    }
    for (std::size_t seat = 0; seat < marks.size() && count > 1; ++seat)
      if (marks[seat])
        judges[seat].emplace_back(binary(*marks[seat]), (sum - binary(*marks[seat])) / (count - 1));
  }
  std::erase_if(judges, [&](const Pairs& one) { return one.size() < marked.size(); });
  return judges;
}

std::vector<MarkedTask> marked_tasks(std::span<const PracticeTask> tasks, std::span<const Practised> done,
                                     PracticeReport& report) {
  std::vector<MarkedTask> marked;
  for (std::size_t i = 0; i < std::min(tasks.size(), done.size()); ++i) {
    if (done[i].late) ++report.late;
    if (!done[i].mark) ++report.skipped;
    if (!done[i].mark) continue;
    ++report.marked;
    if (tasks[i].again) ++report.again;
    if (!tasks[i].again) marked.push_back({&tasks[i], binary(*done[i].mark)});
  }
  return marked;
}

PracticeFaults faults_beyond_chance(const std::vector<MarkedTask>& marked, const Pairs& pairs) {
  PracticeFaults faults;
  std::vector<double> offs;
  for (const MarkedTask& one : marked) offs.push_back(one.off());
  faults.bias = mean_with_interval(offs, 1 - told_by_chance_of_each);
  faults.order = ranks_less_alike(pairs, judges_beside_the_others(marked), told_by_chance_of_each);
  faults.scale = spreads_less(pairs, told_by_chance_of_each);
  return faults;
}

void compare(const std::vector<MarkedTask>& marked, PracticeReport& report) {
  std::vector<double> offs;
  std::set<std::string> meets;
  Pairs pairs;
  for (const MarkedTask& one : marked) {
    offs.push_back(one.off());
    pairs.emplace_back(one.hers, one.task->kept);
    meets.insert(one.task->panel);
  }
  report.meets = meets.size();
  report.bias = mean_with_interval(offs);
  report.difference = difference_of(marked);
  report.within_one = share_within(marked, 1);
  report.within_two = share_within(marked, 2);
  report.order = spearman(pairs);
  compare_spread(marked, report);
  compare_judges(marked, report);
  const PlacesApart apart = find_places(marked, report);
  if (marked.size() < least_tasks) return;
  const std::span<const MarkedTask> all(marked);
  report.first_half = difference_of(all.first(marked.size() / 2));
  report.second_half = difference_of(all.subspan(marked.size() / 2));
  PracticeFaults faults = faults_beyond_chance(marked, pairs);
  faults.places = apart;
  say_faults(faults, binary(marked.front().task->rule->step), report);
}

}  // namespace

PracticeReport practice_report(std::span<const PracticeTask> tasks, std::span<const Practised> done,
                               std::string_view reference) {
  PracticeReport report;
  report.reference = reference;
  const std::vector<MarkedTask> marked = marked_tasks(tasks, done, report);
  warn_of_practice(tasks, report);
  if (!marked.empty()) compare(marked, report);
  return report;
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

}  // namespace landdrill
