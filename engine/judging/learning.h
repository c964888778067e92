// Lessons added up one by one, so that what was known on each day of a season is worked out in one go.
//
//   Learning learning;
//   learning.add(lesson);
//   learning.of_kinds().biases       // all, and every kind
//
// Only learning*.cpp and back_test.cpp include this.
#pragma once

#include <map>
#include <optional>
#include <set>
#include <span>
#include <string>
#include <utility>
#include <vector>

#include "engine/judging/lessons.h"
#include "engine/judging/statistics/by_day.h"

namespace landdrill {

// Means of groups, each drawn towards the mean of all: the fewer its lessons, the closer.
//
//   draw_together(groups, {0.12})     // groups: {-0.40, 2}, {-0.10, 30} ...; 0.12: variance of one lesson
//
// Empirical Bayes for normal means (Efron & Morris, J. Amer. Statist. Assoc. 70, 1975, 311-319), with the
// variance between groups by the method of moments (DerSimonian & Laird, Controlled Clinical Trials 7, 1986,
// 177-188). Nothing is divided by a variance, which may be 0.

struct GroupMean {
  double mean = 0;
  double lessons = 0;  // that it is the mean of: its variance is that of one lesson / lessons
};
struct Scatter {
  double within = 0;  // variance of one lesson around the mean of its group
  std::optional<double> between =
      std::nullopt;  // variance between the groups' true means; estimated when empty
};
struct DrawnMean {
  double mean = 0;
  double weight = 0;  // of the group's own mean, 0 to 1
  double share = 0;   // of the group in the common mean; all together have 1
};
struct DrawnTogether {
  double between = 0;             // variance between the groups' true means
  double towards = 0;             // the common mean
  std::vector<DrawnMean> groups;  // in the order given
};
// A single group is its own common mean, with weight 1. No group: nothing.
DrawnTogether draw_together(std::span<const GroupMean> groups, const Scatter& scatter);

// Mean and squares of a group as numbers come in (Welford, Technometrics 4, 1962, 419-420).
class Gathered {
 public:
  void add(double number) {
    const double off = number - mean_;
    mean_ += off / static_cast<double>(++count_);
    squares_ += off * (number - mean_);
  }
  std::size_t count() const { return count_; }
  double mean() const { return mean_; }
  double squares() const { return squares_; }  // sum of squared distances from the mean

 private:
  std::size_t count_ = 0;
  double mean_ = 0, squares_ = 0;
};

// The lessons of a group, all of them and day by day; days have numbers, in the order they came in.
struct GatheredByDay {
  Gathered lessons;
  std::vector<Gathered> of_day;
  void add(double bias, std::size_t day) {
    lessons.add(bias);
    if (of_day.size() <= day) of_day.resize(day + 1);
    of_day[day].add(bias);
  }
  std::size_t days() const;
};

class Learning {
 public:
  void add(const Lesson& lesson);
  std::size_t lessons() const { return all_.lessons.count(); }
  // Of kinds alone, for calibrating: no intervals, no families, faults, claims and warnings.
  Learned of_kinds() const;
  Learned of_everything() const;

 private:
  // Of one lesson around the mean of its group.
  struct Spread {
    double variance = 0;
    bool within = false;  // false: too few lessons for that, it is around the mean of all
  };
  // The groups of one sort; a lesson may be in several of them, or in none.
  struct Sort {
    std::map<std::string, GatheredByDay> groups;
    Gathered lessons;  // each once
    void add(double bias, std::size_t day, const std::set<std::string>& codes);
    Spread spread() const;
    DrawnTogether drawn(const Spread& spread) const;
    // What the days have of the common mean.
    std::vector<DayShare> common(const DrawnTogether& drawn) const;
  };
  enum class Intervals { none, too };
  Learned of_kinds(Intervals intervals) const;
  static void add_biases(LearnedBias::Of of, const Sort& sort, Intervals intervals, Learned& learned);
  std::vector<SeasonClaim> claims_of_kinds(const Learned& learned, std::size_t looked_at) const;
  void add_claims(Learned& learned) const;

  std::map<std::string, std::size_t> days_;  // their numbers
  GatheredByDay all_;
  Sort kinds_, families_, faults_;
};

// The two ends of the interval around a mean with this standard error (Student's t) that the truth misses so often;
// none without any freedom.
using Interval = std::pair<std::optional<double>, std::optional<double>>;
Interval interval_about(double middle, const std::optional<DayError>& error, double misses = 0.05);
// Whether all of it is on one side of nothing.
inline bool is_clear(const std::optional<double>& low, const std::optional<double>& high) {
  return low && high && (*low > 0 || *high < 0);
}

// What the lessons are too few, or of too few days and kinds, to tell: whole sentences.
std::vector<std::string> warnings_of(const Learned& learned);

}  // namespace landdrill
