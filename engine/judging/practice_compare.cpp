#include "engine/judging/practice_compare.h"

#include <fmt/format.h>

#include <cmath>
#include <map>
#include <utility>

#include "engine/judging/enough.h"
#include "engine/judging/practice_report.h"
#include "engine/judging/practice_words.h"
#include "engine/judging/statistics/agreement.h"
#include "engine/judging/statistics/figures.h"
#include "tables/binary.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

using LineOfPanel = std::pair<std::int64_t, std::string>;

// What she marked when she met it first.
std::map<LineOfPanel, double> first_marks(const TraineeMarks& trainee) {
  std::map<LineOfPanel, double> marks;
  for (std::size_t i = 0; i < trainee.tasks.size(); ++i)
    if (trainee.done[i].mark && !trainee.tasks[i].again)
      marks.try_emplace({trainee.tasks[i].block, trainee.tasks[i].line}, binary(*trainee.done[i].mark));
  return marks;
}

std::vector<double> offs_of(const TraineeMarks& trainee) {
  std::vector<double> offs;
  for (std::size_t i = 0; i < trainee.tasks.size(); ++i)
    if (trainee.done[i].mark && !trainee.tasks[i].again)
      offs.push_back(binary(*trainee.done[i].mark) - trainee.tasks[i].kept);
  return offs;
}

std::vector<double> apart_on_common_lines(const TraineeMarks& one, const TraineeMarks& other) {
  const std::map<LineOfPanel, double> hers = first_marks(other);
  std::vector<double> offs;
  for (const auto& [line, mark] : first_marks(one))
    if (const auto same = hers.find(line); same != hers.end()) offs.push_back(mark - same->second);
  return offs;
}

double mean_distance(const std::vector<double>& offs) {
  double sum = 0;
  for (double off : offs) sum += std::abs(off);
  return sum / static_cast<double>(offs.size());
}

double step_of(const TraineeMarks& trainee) {
  return trainee.tasks.empty() ? 0 : binary(trainee.tasks.front().rule->step);
}

// What may be told, and the numbers it rests on.
struct Claim {
  std::vector<double> offs;
  double step = 0;
  std::string one, other;
};

void say_what_is_sure(const std::vector<Claim>& claims, PracticeComparison& comparison) {
  for (const Claim& claim : claims) {
    const double chance = told_by_chance / static_cast<double>(claims.size());
    const Statistic bias = mean_with_interval(claim.offs, 1 - chance);
    if (!is_sure(bias, claim.step)) continue;
    comparison.sentences.push_back(fmt::format(
        "{} marks {} {} than {} on average, over {} lines.", claim.one, figure(std::abs(*bias.value)),
        *bias.value < 0 ? "lower" : "higher", claim.other, claim.offs.size()));
  }
  if (claims.empty() || !comparison.sentences.empty()) return;
  comparison.sentences.push_back("No difference here is larger than chance makes them.");
}

std::string marks_words(std::size_t number) {
  return number == 1 ? "1 mark" : fmt::format("{} marks", number);
}

void compare_each(std::span<const TraineeMarks> trainees, PracticeComparison& comparison,
                  std::vector<Claim>& claims) {
  for (const TraineeMarks& trainee : trainees) {
    const PracticeReport report = practice_report(trainee.tasks, trainee.done, comparison.reference);
    comparison.ones.push_back({trainee.name, report.marked, report.again, report.bias, report.difference,
                               report.within_one, report.order});
    if (report.bias.rows < least_tasks)
      comparison.warnings.push_back(fmt::format("{} has {} to compare: too few to say much of.", trainee.name,
                                                marks_words(report.bias.rows)));
    else
      claims.push_back({offs_of(trainee), step_of(trainee), trainee.name, comparison.reference});
  }
}

void compare_pairs(std::span<const TraineeMarks> trainees, PracticeComparison& comparison,
                   std::vector<Claim>& claims) {
  for (std::size_t one = 0; one < trainees.size(); ++one) {
    for (std::size_t other = one + 1; other < trainees.size(); ++other) {
      std::vector<double> offs = apart_on_common_lines(trainees[one], trainees[other]);
      if (offs.size() < least_in_a_group) continue;
      comparison.pairs.push_back({one, other, mean_with_interval(offs), mean_distance(offs)});
      if (offs.size() >= least_tasks)
        claims.push_back({std::move(offs), step_of(trainees[one]), trainees[one].name, trainees[other].name});
    }
  }
}

}  // namespace

PracticeComparison compare_trainees(std::span<const TraineeMarks> trainees, std::string_view reference) {
  PracticeComparison comparison;
  comparison.reference = reference;
  std::vector<Claim> claims;
  compare_each(trainees, comparison, claims);
  compare_pairs(trainees, comparison, claims);
  say_what_is_sure(claims, comparison);
  return comparison;
}

}  // namespace landdrill
