// What programmes are worth where elements are weighted by difficulty together, and a line above it that adds
// up element by element.
//
//   Weighing weighing(inputs);
//   weighing.value({0, 2, 1})                                // the expected total of these choices, exact
//   WeighingLine line = line_above(weighing, bands, near);
//   // whoever reaches near.level has worths that add up to line.need or more
//
// Only plan*.cpp include this.
#pragma once

#include "engine/chances/risk.h"
#include "engine/choosing/plan_aims.h"
#include "tables/decimal.h"
#include "tables/value_set.h"

namespace landdrill {

// One choice for an element.
struct WeighingWay {
  std::size_t rule = 0;  // by its place; the number of rules where it is under none
  Exact own;             // expected points that are not weighted
  TogetherElement together;
  Exact credited, variance;  // what is credited, as expected, and its variance, rounded up
};

class Weighing {
 public:
  explicit Weighing(const AimInputs& inputs);

  const std::vector<const PanelRule*>& rules() const { return rules_; }
  const std::vector<std::vector<WeighingWay>>& ways() const { return ways_; }  // [element][choice]
  Exact fixed() const { return fixed_; }  // what all programmes have: whole-routine marks less penalties
  // Whether there is more to add than the points of one rule.
  bool is_mixed() const { return is_mixed_; }
  // Empty when there is none, see risk.h.
  std::optional<Exact> value(const std::vector<std::size_t>& choices) const;
  // What a choice adds to what a rule credits, as expected, in millionths, rounded down.
  std::int64_t credited(std::size_t rule, std::size_t element, std::size_t choice) const;

 private:
  void add_ways(const AimInputs& inputs);

  std::vector<const PanelRule*> rules_;
  std::vector<std::vector<WeighingWay>> ways_;
  Exact fixed_;
  bool is_mixed_ = false;
};

// What a rule credits in all, in the millionths of `credited`; or it has no element at all.
struct WeighingBand {
  std::int64_t least = 1, most = 1;
  bool absent = false;
};
using WeighingBands = std::vector<WeighingBand>;  // one for each rule

// Where a line is to lie closely above what programmes are worth.
struct WeighingAim {
  std::optional<Exact> level;                         // a total
  const std::vector<std::size_t>* choices = nullptr;  // of a programme worth about as much
};
// Worths in thousand-millionths of a point.
struct WeighingLine {
  std::vector<std::vector<std::int64_t>> worths;  // [element][choice]
  std::int64_t need = 0;                          // who reaches the level has worths of so much or more
  Exact level;                                    // the aim's, or one that suits the highest marks
  // What a programme is worth at most whose worths add up to `sum`.
  Exact at_most(std::int64_t sum) const;
};
// Above all programmes within the bands: the narrower they are, the closer.
WeighingLine line_above(const Weighing& weighing, const WeighingBands& bands, const WeighingAim& aim);

}  // namespace landdrill
