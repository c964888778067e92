// What programmes are worth where elements are weighted by difficulty together.
//
//   Weighing weighing(inputs);
//   weighing.value({0, 2, 1})                                // the expected total of these choices, exact
//   weighing.highest()                                       // no programme is worth more
//
// Only plan*.cpp include this.
#pragma once

#include <map>

#include "engine/chances/risk.h"
#include "engine/choosing/plan_aims.h"
#include "engine/choosing/search/choose_best.h"
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

// The best programmes by expected total.
//
//   WeightedSearch search(weighing, inputs);
//   search.best(choosing, 6)
//
// All programmes within the limits are worked out exactly where they are few; else those that are worth most near
// the best one known, and near what that finds, until nothing better is found.
class WeightedSearch {
 public:
  WeightedSearch(const Weighing& weighing, const AimInputs& inputs) : weighing_(weighing), inputs_(inputs) {}

  AimedBest best(const Choosing& choosing, std::size_t how_many);

 private:
  struct Worked {
    std::vector<std::size_t> choices;
    Exact value;
  };

  BestChoices chosen(const Choosing& choosing, std::size_t how_many) const;
  bool work_out(const std::vector<Chosen>& found);
  bool keep(const std::vector<std::size_t>& choices, Exact value);

  const Weighing& weighing_;
  const AimInputs& inputs_;
  // What was worked out once, for every choosing.
  std::map<std::vector<std::size_t>, std::optional<Exact>> known_;
  // Of the choosing that is looked at.
  std::size_t how_many_ = 1, tried_ = 0;
  std::vector<Worked> best_;  // best first
};

}  // namespace landdrill
