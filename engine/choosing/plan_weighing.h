// What programmes are worth where elements are weighted by difficulty together.
//
//   Weighing weighing(inputs);
//   weighing.value({0, 2, 1})                                // the expected total of these choices, exact
//   weighing.highest()                                       // no programme is worth more
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
  Exact credited;  // as expected
};

class Weighing {
 public:
  explicit Weighing(const AimInputs& inputs);

  const std::vector<const PanelRule*>& rules() const { return rules_; }
  const std::vector<std::vector<WeighingWay>>& ways() const { return ways_; }  // [element][choice]
  // Empty when there is none, see risk.h.
  std::optional<Exact> value(const std::vector<std::size_t>& choices) const;
  // What no programme exceeds, were there no limits.
  Exact highest() const;
  // By how many millionths each choice makes a programme better that is much like this one.
  std::vector<std::vector<std::int64_t>> worths_near(
      const std::vector<std::size_t>& choices) const;  // [element][choice]

 private:
  void add_ways(const AimInputs& inputs);
  Exact highest_of(std::size_t rule) const;

  std::vector<const PanelRule*> rules_;
  std::vector<std::vector<WeighingWay>> ways_;
  Exact fixed_;  // what all programmes have: whole-routine marks less penalties
};

}  // namespace landdrill
