// A performance drawn at random, judge by judge, with the generators of another library (Boost.Random): what
// a forecast says exactly must come out of many of these. Shares no line with the odds of the engine: normal
// numbers are drawn for the day and for each judge, put on the step, held within the scale, and high and low dropped by keep().
//
//   Draws draws(routine, seed);
//   draws.next()               // 186.4175
#pragma once

#include <boost/random/mersenne_twister.hpp>
#include <optional>
#include <vector>

#include "engine/score/score.h"

namespace landdrill {

// For sheets that say everything themselves: expect, slip, spread, day, impression, errors, risk.
class Draws {
 public:
  Draws(const Routine& routine, unsigned seed);
  std::int64_t next();  // the total, in millionths of a point

 private:
  struct Line {
    const PanelRule* rule = nullptr;
    double expected = 0, spread = 0, base_chance = 0;  // in marks; 0 to 1
    Difficulty declared, base;
    // Points for every kept sum, from the lowest of the scale on, in steps.
    std::vector<std::int64_t> declared_points, base_points;
  };

  Line line(const PanelRule& rule, Mark expected, std::optional<Decimal> spread) const;
  void add_element(const Element& element);
  double day();
  Mark mark(const Line& line, double shift);
  KeptMarks kept(const Line& line, double shift);
  std::int64_t points(const Line& line, double shift);
  std::int64_t weighted_together(double shift);
  std::int64_t taken_off();

  const Routine& routine_;
  boost::random::mt19937_64 random_;
  std::vector<Line> lines_, weighted_;
  double day_;  // spread, in marks
  std::vector<std::optional<Mark>> marks_;
};

}  // namespace landdrill
