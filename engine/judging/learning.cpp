#include "engine/judging/learning.h"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "engine/judging/enough.h"
#include "engine/judging/statistics/quantile.h"

namespace landdrill {
namespace {

constexpr double upper = 0.975;

LearnedBias plain(LearnedBias::Of of, const std::string& code, const Gathered& group) {
  LearnedBias bias;
  bias.of = of;
  bias.code = code;
  bias.lessons = group.count();
  bias.bias = bias.towards = bias.shrunk = group.mean();
  if (group.count() < 2) return bias;
  const auto count = static_cast<double>(group.count());
  bias.spread = std::sqrt(group.squares() / (count - 1));
  std::tie(bias.low, bias.high) =
      interval_about(group.mean(), *bias.spread / std::sqrt(count), group.count() - 1);
  return bias;
}

LearnedBias of_all(const Gathered& all) {
  LearnedBias bias = plain(LearnedBias::Of::all, {}, all);
  bias.shrunk_low = bias.low;
  bias.shrunk_high = bias.high;
  return bias;
}

}  // namespace

Interval interval_about(double middle, double error, std::size_t freedom) {
  const std::optional<double> times = student_quantile(upper, static_cast<double>(freedom));
  if (!times) return {};
  return {middle - *times * error, middle + *times * error};
}

void Learning::Sort::add(double bias, const std::set<std::string>& codes) {
  for (const std::string& code : codes) groups[code].add(bias);
  if (!codes.empty()) lessons.add(bias);
}

std::size_t Learning::Sort::memberships() const {
  std::size_t sum = 0;
  for (const auto& [code, group] : groups) sum += group.count();
  return sum;
}

void Learning::add(const Lesson& lesson) {
  const double bias = lesson.given - lesson.expected;
  all_.add(bias);
  kinds_.add(bias, {lesson.kind});
  families_.add(bias, {lesson.families.begin(), lesson.families.end()});
  faults_.add(bias, {lesson.faults.begin(), lesson.faults.end()});
  days_.add(bias, {lesson.date});
}

// A lesson in several groups must not make the spread look surer than the lessons are: it counts once in the
// degrees of freedom.
Learning::Spread Learning::Sort::spread() const {
  Spread spread;
  const std::size_t count = lessons.count();
  spread.within = count > groups.size();
  if (spread.within) {
    double squares = 0;
    for (const auto& [code, group] : groups) squares += group.squares();
    spread.variance = squares / static_cast<double>(memberships() - groups.size());
    spread.freedom = count - groups.size();
  } else if (count > 1) {
    spread.variance = lessons.squares() / static_cast<double>(count - 1);
    spread.freedom = count - 1;
  }
  return spread;
}

DrawnTogether Learning::Sort::drawn(const Spread& spread) const {
  std::vector<GroupMean> means;
  for (const auto& [code, group] : groups) {
    means.push_back({group.mean(), static_cast<double>(group.count())});
  }
  Scatter scatter{spread.variance, {}, 1};
  if (!spread.within) scatter.between = 0;
  if (lessons.count() > 0) {
    scatter.shared = static_cast<double>(memberships()) / static_cast<double>(lessons.count());
  }
  return draw_together(means, scatter);
}

void Learning::add_biases(LearnedBias::Of of, const Sort& sort, Learned& learned) {
  const Spread spread = sort.spread();
  const DrawnTogether drawn = sort.drawn(spread);
  std::vector<LearnedBias> biases;
  for (const auto& [code, group] : sort.groups) {
    const DrawnMean& mean = drawn.groups[biases.size()];
    LearnedBias bias = plain(of, code, group);
    bias.towards = drawn.towards;
    bias.shrunk = mean.mean;
    bias.weight = mean.weight;
    std::tie(bias.shrunk_low, bias.shrunk_high) = interval_about(mean.mean, mean.error, spread.freedom);
    biases.push_back(std::move(bias));
  }
  std::stable_sort(biases.begin(), biases.end(),
                   [](const LearnedBias& a, const LearnedBias& b) { return a.lessons > b.lessons; });
  learned.biases.insert(learned.biases.end(), biases.begin(), biases.end());
  if (of != LearnedBias::Of::kind || !spread.within) return;
  learned.within = std::sqrt(spread.variance);
  if (sort.groups.size() > 1) learned.between = std::sqrt(drawn.between);
}

Learned Learning::of_kinds() const {
  Learned learned;
  learned.days = days_.groups.size();
  learned.biases.push_back(of_all(all_));
  add_biases(LearnedBias::Of::kind, kinds_, learned);
  return learned;
}

// How far marks of one day hang together, and what that does to a mean (Kish, Survey Sampling, 1965, 5.4).
void Learning::add_days(Learned& learned) const {
  const Spread spread = days_.spread();
  if (!spread.within || days_.groups.size() < 2) return;
  const double between = days_.drawn(spread).between;
  learned.between_days = std::sqrt(between);
  if (between == 0) return;
  double squares = 0;
  for (const auto& [date, day] : days_.groups) squares += static_cast<double>(day.count() * day.count());
  const double in_a_day = squares / static_cast<double>(lessons());
  learned.wider = std::sqrt(1 + (in_a_day - 1) * between / (between + spread.variance));
}

Learned Learning::of_everything() const {
  Learned learned = of_kinds();
  add_biases(LearnedBias::Of::family, families_, learned);
  add_biases(LearnedBias::Of::fault, faults_, learned);
  add_days(learned);
  learned.warnings = warnings_of(learned);
  return learned;
}

Learned learn(std::span<const Lesson> lessons) {
  Learning learning;
  for (const Lesson& lesson : lessons) learning.add(lesson);
  return learning.of_everything();
}

double calibrated(const Learned& learned, const Lesson& lesson) {
  const LearnedBias& all = learned.biases.front();
  if (all.lessons < least_lessons) return lesson.expected;
  const auto of_its_kind = std::find_if(
      learned.biases.begin(), learned.biases.end(),
      [&](const LearnedBias& one) { return one.of == LearnedBias::Of::kind && one.code == lesson.kind; });
  const double bias = of_its_kind == learned.biases.end() ? all.shrunk : of_its_kind->shrunk;
  return std::clamp(lesson.expected + bias, lesson.least, lesson.most);
}

}  // namespace landdrill
