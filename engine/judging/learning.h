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

namespace landdrill {

// Means of groups, each drawn towards the mean of all: the fewer its lessons, the closer.
//
//   draw_together(groups, {0.12})     // groups: {-0.40, 2}, {-0.10, 30} ...; 0.12: variance of one lesson
//
// Empirical Bayes for normal means (Efron & Morris, J. Amer. Statist. Assoc. 70, 1975, 311-319), with the
// variance between groups by the method of moments (DerSimonian & Laird, Controlled Clinical Trials 7, 1986,
// 177-188) and, in the standard error, the uncertainty of the common mean (Kackar & Harville, Comm. Statist.
// A 10, 1981, 1249-1261); that of the variances is left out. Nothing is divided by a variance, which may be
// 0.

struct GroupMean {
  double mean = 0;
  double lessons = 0;  // that it is the mean of: its variance is that of one lesson / lessons
};
struct Scatter {
  double within = 0;  // variance of one lesson around the mean of its group
  std::optional<double> between =
      std::nullopt;  // variance between the groups' true means; estimated when empty
  double shared =
      1;  // in how many groups a lesson is on average: the common mean rests on fewer lessons then
};
struct DrawnMean {
  double mean = 0;
  double weight = 0;  // of the group's own mean, 0 to 1
  double error = 0;   // standard error
};
struct DrawnTogether {
  double between = 0;                     // variance between the groups' true means
  double towards = 0, towards_error = 0;  // the common mean and its standard error
  std::vector<DrawnMean> groups;          // in the order given
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

class Learning {
 public:
  void add(const Lesson& lesson);
  std::size_t lessons() const { return all_.count(); }
  Learned of_kinds() const;  // without families, faults and warnings
  Learned of_everything() const;

 private:
  // Of one lesson around the mean of its group.
  struct Spread {
    double variance = 0;
    std::size_t freedom = 0;  // 0: there is none
    bool within = false;      // false: too few lessons for that, it is around the mean of all
  };
  // The groups of one sort; a lesson may be in several of them, or in none.
  struct Sort {
    std::map<std::string, Gathered> groups;
    Gathered lessons;  // each once
    void add(double bias, const std::set<std::string>& codes);
    std::size_t memberships() const;
    Spread spread() const;
    DrawnTogether drawn(const Spread& spread) const;
  };
  static void add_biases(LearnedBias::Of of, const Sort& sort, Learned& learned);
  void add_days(Learned& learned) const;

  Gathered all_;
  Sort kinds_, families_, faults_, days_;
};

// The two ends of the 95 % interval around a mean with this standard error (Student's t); none without any freedom.
using Interval = std::pair<std::optional<double>, std::optional<double>>;
Interval interval_about(double middle, double error, std::size_t freedom);

// What the lessons are too few, or of too few days and kinds, to tell: whole sentences.
std::vector<std::string> warnings_of(const Learned& learned);

}  // namespace landdrill
