#include "engine/learning.h"

#include <algorithm>
#include <cmath>
#include <string_view>

#include "engine/draw_together.h"
#include "engine/quantile.h"

namespace landdrill {
namespace {

constexpr double upper = 0.975;

// What a sort of groups shares: the spread of one lesson around the mean of its group.
struct Pool {
  double variance = 0;
  std::size_t freedom = 0;  // 0: there is no spread
  bool within = true;       // false: no group has two lessons, the spread is around the mean of all
};

template <class Groups>
Pool pooled(const Groups& groups) {
  Pool pool;
  Gathered means;
  double squares = 0;
  for (const auto& [code, group] : groups) {
    pool.freedom += group.count() - 1;
    squares += group.squares();
    means.add(group.mean());
  }
  pool.within = pool.freedom > 0;
  if (!pool.within && means.count() > 0) {
    pool.freedom = means.count() - 1;
    squares = means.squares();
  }
  if (pool.freedom > 0) pool.variance = squares / static_cast<double>(pool.freedom);
  return pool;
}

void put_interval(double middle, double error, std::size_t freedom, std::optional<double>& low,
                  std::optional<double>& high) {
  const std::optional<double> times = student_quantile(upper, static_cast<double>(freedom));
  if (!times) return;
  low = middle - *times * error;
  high = middle + *times * error;
}

LearnedBias plain(LearnedBias::Of of, const std::string& code, const Gathered& group) {
  LearnedBias bias;
  bias.of = of;
  bias.code = code;
  bias.lessons = group.count();
  bias.bias = bias.towards = bias.shrunk = group.mean();
  if (group.count() < 2) return bias;
  const auto count = static_cast<double>(group.count());
  bias.spread = std::sqrt(group.squares() / (count - 1));
  put_interval(group.mean(), *bias.spread / std::sqrt(count), group.count() - 1, bias.low, bias.high);
  return bias;
}

LearnedBias of_all(const Gathered& all) {
  LearnedBias bias = plain(LearnedBias::Of::all, {}, all);
  bias.shrunk_low = bias.low;
  bias.shrunk_high = bias.high;
  return bias;
}

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

// Of lessons that are enough in number, what they still cannot tell.
void add_warnings_of_groups(const Learned& learned, std::size_t kinds, std::vector<std::string>& warnings) {
  if (learned.days == 1) {
    warnings.push_back("all lessons are of one day: a strict or a kind panel that day would look the same");
  }
  if (kinds == 1) {
    warnings.push_back("all lessons are of one kind: of other kinds nothing is known but this");
  }
  if (kinds > 1 && !learned.within) {
    warnings.push_back("no kind has two lessons: every kind is drawn to the mean of all");
  }
  const std::string once = seen_once(learned.biases);
  if (!once.empty()) warnings.push_back("one lesson only of " + once + ": too few to tell from chance");
}

std::vector<std::string> warnings_of(const Learned& learned, std::size_t kinds) {
  const std::size_t lessons = learned.biases.front().lessons;
  if (lessons == 0) return {"no lessons: no panel marked an element that had an expected mark by then"};
  std::vector<std::string> warnings;
  if (lessons < least_lessons) {
    warnings.push_back(std::to_string(lessons) + (lessons == 1 ? " lesson" : " lessons") +
                       " in all, fewer than " + std::to_string(least_lessons) +
                       ": too few to learn from, expected marks are left as they are");
  }
  add_warnings_of_groups(learned, kinds, warnings);
  return warnings;
}

}  // namespace

void Learning::add(const Lesson& lesson) {
  const double bias = lesson.given - lesson.expected;
  all_.add(bias);
  kinds_[lesson.kind].add(bias);
  for (const std::string& family : std::set(lesson.families.begin(), lesson.families.end())) {
    families_[family].add(bias);
  }
  for (const std::string& fault : std::set(lesson.faults.begin(), lesson.faults.end())) {
    faults_[fault].add(bias);
  }
  days_.insert(lesson.date);
}

void Learning::add_biases(LearnedBias::Of of, const Groups& groups, Learned& learned) const {
  const Pool pool = pooled(groups);
  std::vector<GroupMean> means;
  std::vector<LearnedBias> biases;
  for (const auto& [code, group] : groups) {
    means.push_back({group.mean(), static_cast<double>(group.count())});
    biases.push_back(plain(of, code, group));
  }
  const DrawnTogether drawn = draw_together(means, pool.variance);
  for (std::size_t i = 0; i < biases.size(); ++i) {
    biases[i].towards = drawn.towards;
    biases[i].shrunk = drawn.groups[i].mean;
    biases[i].weight = drawn.groups[i].weight;
    put_interval(drawn.groups[i].mean, drawn.groups[i].error, pool.freedom, biases[i].shrunk_low,
                 biases[i].shrunk_high);
  }
  std::stable_sort(biases.begin(), biases.end(),
                   [](const LearnedBias& a, const LearnedBias& b) { return a.lessons > b.lessons; });
  learned.biases.insert(learned.biases.end(), biases.begin(), biases.end());
  if (of != LearnedBias::Of::kind || !pool.within) return;
  learned.within = std::sqrt(pool.variance);
  if (groups.size() > 1) learned.between = std::sqrt(drawn.between);
}

Learned Learning::of_kinds() const {
  Learned learned;
  learned.days = days_.size();
  learned.biases.push_back(of_all(all_));
  add_biases(LearnedBias::Of::kind, kinds_, learned);
  return learned;
}

Learned Learning::of_everything() const {
  Learned learned = of_kinds();
  add_biases(LearnedBias::Of::family, families_, learned);
  add_biases(LearnedBias::Of::fault, faults_, learned);
  learned.warnings = warnings_of(learned, kinds_.size());
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
