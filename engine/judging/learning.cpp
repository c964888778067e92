#include "engine/judging/learning.h"

#include <algorithm>
#include <cmath>
#include <string_view>
#include <tuple>

#include "engine/judging/enough.h"
#include "engine/judging/lessons.h"
#include "engine/judging/statistics/by_day.h"
#include "engine/judging/statistics/sample.h"

namespace landdrill {

namespace {

LearnedBias plain(LearnedBias::Of of, const std::string& code, const GatheredByDay& group) {
  const Gathered& lessons = group.lessons;
  LearnedBias bias;
  bias.of = of;
  bias.code = code;
  bias.lessons = lessons.count();
  bias.days = group.days();
  bias.bias = bias.towards = bias.shrunk = lessons.mean();
  if (lessons.count() < 2) return bias;
  bias.spread = std::sqrt(lessons.squares() / static_cast<double>(lessons.count() - 1));
  return bias;
}

// A group has so much of a mean, in which it is taken to be `fitted`.
void add_days(const GatheredByDay& group, double part, double fitted, std::vector<DayShare>& days) {
  if (days.size() < group.of_day.size()) days.resize(group.of_day.size());
  const double each = part / static_cast<double>(group.lessons.count());
  for (std::size_t day = 0; day < group.of_day.size(); ++day) {
    const double share = each * static_cast<double>(group.of_day[day].count());
    days[day].share += share;
    days[day].off += share * (group.of_day[day].mean() - fitted);
  }
}

std::optional<DayError> error_of(const std::vector<DayShare>& days) {
  const auto counting =
      std::count_if(days.begin(), days.end(), [](const DayShare& day) { return day.share > 0; });
  if (static_cast<std::size_t>(counting) < least_days) return std::nullopt;
  return error_by_day(days);
}

std::optional<DayError> own_error(const GatheredByDay& group) {
  std::vector<DayShare> days;
  add_days(group, 1, group.lessons.mean(), days);
  return error_of(days);
}

// A drawn mean is a sum of lessons too: what is off on a day is off together, in whatever group.
std::optional<DayError> drawn_error(const DrawnMean& drawn, const GatheredByDay& group,
                                    std::vector<DayShare> common) {
  for (DayShare& day : common) {
    day.share *= 1 - drawn.weight;
    day.off *= 1 - drawn.weight;
  }
  add_days(group, drawn.weight, drawn.mean, common);
  return error_of(common);
}

// And the other groups, towards which it is drawn, differ from it in truth.
double drawn_off(const DrawnTogether& all, const DrawnMean& drawn) {
  double squares = 1 - 2 * drawn.share;
  for (const DrawnMean& one : all.groups) squares += one.share * one.share;
  return (1 - drawn.weight) * std::sqrt(all.between * std::max(squares, 0.0));
}

}  // namespace

Interval interval_about(double middle, const std::optional<DayError>& error, double misses) {
  if (!error) return {};
  const std::optional<double> times = student_quantile(1 - misses / 2, error->freedom);
  if (!times) return {};
  return {middle - *times * error->error, middle + *times * error->error};
}

std::size_t GatheredByDay::days() const {
  return static_cast<std::size_t>(
      std::count_if(of_day.begin(), of_day.end(), [](const Gathered& day) { return day.count() > 0; }));
}

void Learning::Sort::add(double bias, std::size_t day, const std::set<std::string>& codes) {
  for (const std::string& code : codes) groups[code].add(bias, day);
  if (!codes.empty()) lessons.add(bias);
}

void Learning::add(const Lesson& lesson) {
  const double bias = lesson.given - lesson.expected;
  const std::size_t day = days_.try_emplace(lesson.date, days_.size()).first->second;
  all_.add(bias, day);
  kinds_.add(bias, day, {lesson.kind});
  families_.add(bias, day, {lesson.families.begin(), lesson.families.end()});
  faults_.add(bias, day, {lesson.faults.begin(), lesson.faults.end()});
}

Learning::Spread Learning::Sort::spread() const {
  Spread spread;
  spread.within = lessons.count() > groups.size();
  if (spread.within) {
    double squares = 0;
    std::size_t memberships = 0;
    for (const auto& [code, group] : groups) {
      squares += group.lessons.squares();
      memberships += group.lessons.count();
    }
    spread.variance = squares / static_cast<double>(memberships - groups.size());
  } else if (lessons.count() > 1) {
    spread.variance = lessons.squares() / static_cast<double>(lessons.count() - 1);
  }
  return spread;
}

DrawnTogether Learning::Sort::drawn(const Spread& spread) const {
  std::vector<GroupMean> means;
  for (const auto& [code, group] : groups) {
    means.push_back({group.lessons.mean(), static_cast<double>(group.lessons.count())});
  }
  Scatter scatter{spread.variance, {}};
  if (!spread.within) scatter.between = 0;
  return draw_together(means, scatter);
}

std::vector<DayShare> Learning::Sort::common(const DrawnTogether& drawn) const {
  std::vector<DayShare> days;
  auto mean = drawn.groups.begin();
  for (const auto& [code, group] : groups) {
    add_days(group, mean->share, mean->mean, days);
    ++mean;
  }
  return days;
}

namespace {

void add_interval(const GatheredByDay& group, std::optional<DayError> drawn, LearnedBias& bias) {
  std::tie(bias.low, bias.high) = interval_about(bias.bias, own_error(group));
  std::tie(bias.shrunk_low, bias.shrunk_high) = interval_about(bias.shrunk, drawn);
}

}  // namespace

void Learning::add_biases(LearnedBias::Of of, const Sort& sort, Intervals intervals, Learned& learned) {
  const Spread spread = sort.spread();
  const DrawnTogether drawn = sort.drawn(spread);
  const std::vector<DayShare> common =
      intervals == Intervals::too ? sort.common(drawn) : std::vector<DayShare>();
  std::vector<LearnedBias> biases;
  for (const auto& [code, group] : sort.groups) {
    const DrawnMean& mean = drawn.groups[biases.size()];
    LearnedBias& bias = biases.emplace_back(plain(of, code, group));
    bias.towards = drawn.towards;
    bias.shrunk = mean.mean;
    bias.weight = mean.weight;
    if (intervals == Intervals::none) continue;
    std::optional<DayError> error = drawn_error(mean, group, common);
    if (error) error->error = std::hypot(error->error, drawn_off(drawn, mean));
    add_interval(group, error, bias);
  }
  std::stable_sort(biases.begin(), biases.end(),
                   [](const LearnedBias& a, const LearnedBias& b) { return a.lessons > b.lessons; });
  learned.biases.insert(learned.biases.end(), biases.begin(), biases.end());
  if (of != LearnedBias::Of::kind || !spread.within) return;
  learned.within = std::sqrt(spread.variance);
  if (sort.groups.size() > 1) learned.between = std::sqrt(drawn.between);
}

Learned Learning::of_kinds(Intervals intervals) const {
  Learned learned;
  learned.days = days_.size();
  learned.biases.push_back(plain(LearnedBias::Of::all, {}, all_));
  if (intervals == Intervals::too) add_interval(all_, own_error(all_), learned.biases.front());
  add_biases(LearnedBias::Of::kind, kinds_, intervals, learned);
  return learned;
}

Learned Learning::of_kinds() const {
  return of_kinds(Intervals::none);
}

// Each kind that can be looked at has its share of the one in twenty (Bonferroni).
std::vector<SeasonClaim> Learning::claims_of_kinds(const Learned& learned, std::size_t looked_at) const {
  const double misses = 0.05 / static_cast<double>(looked_at);
  std::vector<SeasonClaim> claims;
  for (const LearnedBias& one : learned.biases) {
    if (one.of != LearnedBias::Of::kind || !one.low) continue;
    const auto [low, high] = interval_about(one.bias, own_error(kinds_.groups.at(one.code)), misses);
    if (is_clear(low, high)) claims.push_back({one.code, one.bias, *low, *high});
  }
  return claims;
}

namespace {

bool one_way(const std::vector<SeasonClaim>& claims) {
  return std::all_of(claims.begin(), claims.end(),
                     [&](const SeasonClaim& one) { return (one.bias < 0) == (claims.front().bias < 0); });
}

}  // namespace

// Kinds are looked at only where all together are beyond chance: so a season without any bias has one claimed no more
// often than one in twenty. Then what holds for some kinds alone is said of them alone.
void Learning::add_claims(Learned& learned) const {
  const LearnedBias& all = learned.biases.front();
  if (kinds_.groups.size() == 1) learned.only_kind = kinds_.groups.begin()->first;
  learned.tells = all.lessons >= least_lessons && all.low;
  if (!learned.tells || !is_clear(all.low, all.high)) return;
  const auto looked_at = static_cast<std::size_t>(
      std::count_if(learned.biases.begin(), learned.biases.end(),
                    [](const LearnedBias& one) { return one.of == LearnedBias::Of::kind && one.low; }));
  learned.claims = claims_of_kinds(learned, looked_at);
  const bool of_all = looked_at > 1 && learned.claims.size() == looked_at && one_way(learned.claims);
  if (of_all || learned.claims.empty()) {
    learned.claims = {{learned.only_kind, all.bias, *all.low, *all.high}};
  }
}

Learned Learning::of_everything() const {
  Learned learned = of_kinds(Intervals::too);
  add_biases(LearnedBias::Of::family, families_, Intervals::too, learned);
  add_biases(LearnedBias::Of::fault, faults_, Intervals::too, learned);
  add_claims(learned);
  learned.warnings = warnings_of(learned);
  return learned;
}

Learned learn(std::span<const Lesson> lessons) {
  Learning learning;
  for (const Lesson& lesson : lessons) learning.add(lesson);
  return learning.of_everything();
}

const LearnedBias* added_to(const Learned& learned, std::string_view kind) {
  const LearnedBias& all = learned.biases.front();
  if (all.lessons < least_lessons) return nullptr;
  const auto own = std::find_if(learned.biases.begin(), learned.biases.end(), [&](const LearnedBias& one) {
    return one.of == LearnedBias::Of::kind && one.code == kind;
  });
  return own == learned.biases.end() ? &all : &*own;
}

double calibrated(const Learned& learned, const Lesson& lesson) {
  const LearnedBias* bias = added_to(learned, lesson.kind);
  if (bias == nullptr) return lesson.expected;
  return std::clamp(lesson.expected + bias->shrunk, lesson.least, lesson.most);
}

}  // namespace landdrill
