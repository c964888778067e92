#include "engine/judging/learning.h"

#include <algorithm>
#include <cmath>
#include <string_view>
#include <tuple>

#include "engine/judging/enough.h"
#include "engine/judging/lessons.h"
#include "engine/judging/statistics/sample.h"

namespace landdrill {
namespace {

// Variances below are what rounding of binary numbers leaves of equal marks.
constexpr double rounding = 1e-18, rounding_share = 1e-9;

struct Weighed {
  double weight = 0, mean = 0;
};

template <class WeightOf>
Weighed weighed(std::span<const GroupMean> groups, WeightOf weight_of) {
  Weighed sum;
  for (const GroupMean& group : groups) sum.weight += weight_of(group);
  for (const GroupMean& group : groups) sum.mean += weight_of(group) / sum.weight * group.mean;
  return sum;
}

double between_variance(std::span<const GroupMean> groups, double within) {
  const Weighed fixed = weighed(groups, [](const GroupMean& group) { return group.lessons; });
  double scatter = 0, squares = 0;
  for (const GroupMean& group : groups) {
    scatter += group.lessons * (group.mean - fixed.mean) * (group.mean - fixed.mean);
    squares += group.lessons * group.lessons;
  }
  const double excess = scatter - static_cast<double>(groups.size() - 1) * within;
  if (groups.size() < 2 || excess <= scatter * rounding_share) return 0;
  const double between = excess / (fixed.weight - squares / fixed.weight);
  return between < rounding ? 0 : between;
}

DrawnMean drawn(const GroupMean& group, double within, const DrawnTogether& all) {
  const double own = group.lessons * all.between;
  DrawnMean result;
  result.weight = own + within > 0 ? own / (own + within) : 0;
  result.mean = all.towards + result.weight * (group.mean - all.towards);
  const double left = 1 - result.weight;
  result.error =
      std::sqrt(result.weight * within / group.lessons + left * left * all.towards_error * all.towards_error);
  return result;
}

}  // namespace

DrawnTogether draw_together(std::span<const GroupMean> groups, const Scatter& scatter) {
  DrawnTogether result;
  if (groups.empty()) return result;
  const double within = scatter.within;
  result.between = scatter.between ? *scatter.between : between_variance(groups, within);
  const bool same = result.between == 0 && within == 0;
  const Weighed common = weighed(groups, [&](const GroupMean& group) {
    return same ? group.lessons : group.lessons / (group.lessons * result.between + within);
  });
  result.towards = common.mean;
  result.towards_error = same ? 0 : std::sqrt(scatter.shared / common.weight);
  for (const GroupMean& group : groups) result.groups.push_back(drawn(group, within, result));
  if (groups.size() == 1) result.groups.front().weight = 1;
  return result;
}

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

// What the lessons of a season cannot tell.

namespace {

// Intervals that are this many tenths wider are worth a word.
constexpr long worth_a_word = 12;

std::string_view word_of(LearnedBias::Of of) {
  switch (of) {
    case LearnedBias::Of::all:
      return "all";
    case LearnedBias::Of::kind:
      return "kind";
    case LearnedBias::Of::family:
      return "family";
    case LearnedBias::Of::fault:
      return "fault";
  }
  return "";
}

// "kind lift, fault splash"; empty for none.
std::string seen_once(const std::vector<LearnedBias>& biases) {
  std::string list;
  for (const LearnedBias& bias : biases) {
    if (bias.of == LearnedBias::Of::all || bias.lessons != 1) continue;
    list += (list.empty() ? "" : ", ") + std::string(word_of(bias.of)) + " " + bias.code;
  }
  return list;
}

std::string too_few(std::size_t lessons) {
  return std::to_string(lessons) + (lessons == 1 ? " lesson" : " lessons") + " in all, fewer than " +
         std::to_string(least_lessons) + ": too few to learn from, expected marks are left as they are";
}

void warn_of_days(const Learned& learned, std::vector<std::string>& warnings) {
  if (learned.days == 1) {
    warnings.push_back("all lessons are of one day: a strict or a kind panel that day would look the same");
  }
  const long tenths = std::lround(learned.wider * 10);
  if (tenths >= worth_a_word) {
    warnings.push_back("marks of one day hang together: read the intervals as " +
                       std::to_string(tenths / 10) + "." + std::to_string(tenths % 10) + " times as wide");
  }
}

void warn_of_groups(const Learned& learned, std::vector<std::string>& warnings) {
  const auto kinds = std::count_if(learned.biases.begin(), learned.biases.end(),
                                   [](const LearnedBias& one) { return one.of == LearnedBias::Of::kind; });
  if (kinds == 1) {
    warnings.push_back("all lessons are of one kind: of other kinds nothing is known but this");
  }
  if (kinds > 1 && !learned.within) {
    warnings.push_back("no kind has two lessons: every kind is drawn to the mean of all");
  }
  const std::string once = seen_once(learned.biases);
  if (!once.empty()) warnings.push_back("one lesson only of " + once + ": too few to tell from chance");
}

}  // namespace

std::vector<std::string> warnings_of(const Learned& learned) {
  const std::size_t lessons = learned.biases.front().lessons;
  if (lessons == 0) return {"no lessons: no panel marked an element that had an expected mark by then"};
  std::vector<std::string> warnings;
  if (lessons < least_lessons) warnings.push_back(too_few(lessons));
  warn_of_days(learned, warnings);
  warn_of_groups(learned, warnings);
  return warnings;
}

}  // namespace landdrill
