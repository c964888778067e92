// Lessons added up one by one, so that what was known on each day of a season is worked out in one go.
//
//   Learning learning;
//   learning.add(lesson);
//   learning.of_kinds().biases       // all, and every kind
//
// Only learning*.cpp and back_test.cpp include this.
#pragma once

#include <map>
#include <set>
#include <string>
#include <utility>

#include "engine/judging/draw_together.h"
#include "engine/judging/lessons.h"

namespace landdrill {

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
