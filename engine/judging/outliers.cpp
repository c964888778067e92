#include "engine/judging/outliers.h"

#include <algorithm>
#include <cmath>

#include "engine/judging/enough.h"
#include "engine/judging/statistics/agreement.h"
#include "engine/judging/statistics/sample.h"
#include "tables/binary.h"
#include "tables/claims.h"

namespace landdrill {
namespace {

std::size_t who_marked(const std::vector<JudgeView>& judges) {
  return static_cast<std::size_t>(
      std::count_if(judges.begin(), judges.end(), [](const JudgeView& one) { return one.marks > 0; }));
}

double median_of(std::vector<double> numbers) {
  const auto middle = numbers.begin() + static_cast<std::ptrdiff_t>(numbers.size() / 2);
  std::nth_element(numbers.begin(), middle, numbers.end());
  const double upper = *middle;
  return numbers.size() % 2 == 1 ? upper : (upper + *std::max_element(numbers.begin(), middle)) / 2;
}

// Line by line: how far a judge lies off the middle one of her distances from the others.
std::vector<std::optional<double>> off_her_usual(const MarkSheet& sheet, std::size_t judge) {
  std::vector<std::optional<double>> off;
  std::vector<double> differences;
  for (const MarkedLine& line : sheet.lines) {
    const Others others = others_of(line, judge);
    const bool there = line.marks[judge] && others.count > 0;
    off.push_back(there ? std::optional(others.below(*line.marks[judge])) : std::nullopt);
    if (there) differences.push_back(*off.back());
  }
  if (differences.empty()) return off;
  const double usual = median_of(differences);
  for (std::optional<double>& one : off)
    if (one) one = std::abs(*one - usual);
  return off;
}

using Offs = std::vector<std::vector<std::optional<double>>>;  // by judge and line

Statistic further_off(const Offs& offs, std::size_t judge, double confidence) {
  std::vector<double> further;
  for (std::size_t line = 0; line < offs[judge].size(); ++line) {
    std::vector<double> others;
    for (std::size_t other = 0; other < offs.size(); ++other)
      if (other != judge && offs[other][line]) others.push_back(*offs[other][line]);
    if (offs[judge][line] && !others.empty()) further.push_back(*offs[judge][line] - mean_of(others));
  }
  return mean_with_interval(further, confidence);
}

}  // namespace

std::optional<std::size_t> scatters_most(const MarkSheet& sheet, const std::vector<JudgeView>& judges) {
  const std::size_t marked = who_marked(judges);
  if (marked < 3) return std::nullopt;
  const double confidence = 1 - binary(claim("judge-scatter")) / static_cast<double>(marked);
  const double lines = binary(claim("scatter-lines"));
  Offs offs;
  for (const JudgeView& one : judges) offs.push_back(off_her_usual(sheet, one.judge));
  std::optional<std::size_t> most;
  for (const JudgeView& one : judges) {
    if (!one.spread || static_cast<double>(one.bias.rows) < lines) continue;
    if (further_off(offs, one.judge, confidence).low.value_or(0) <= 0) continue;
    if (!most || *one.spread > *judges[*most].spread) most = one.judge;
  }
  return most;
}

std::optional<std::size_t> dropped_most(const std::vector<JudgeView>& judges) {
  const double share = binary(claim("judge-dropped")) / static_cast<double>(who_marked(judges));
  std::optional<std::size_t> most;
  for (const JudgeView& one : judges) {
    if (one.marks < least_marks) continue;
    const double chance = one.dropped_by_chance / static_cast<double>(one.marks);
    const std::optional<double> as_many = binomial_at_least(one.dropped(), one.marks, chance);
    if (one.dropped() < one.dropped_by_chance + 1 || as_many.value_or(1) > share) continue;
    if (!most || one.dropped() > judges[*most].dropped()) most = one.judge;
  }
  return most;
}

}  // namespace landdrill
