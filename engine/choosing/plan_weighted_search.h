// The best programmes by expected total where elements are weighted by difficulty together.
//
//   WeightedSearch search(weighing, inputs);
//   search.best(choosing, 6)
//
// All programmes within the limits are worked out exactly where they are few; else those that are worth most near
// the best one known, and near what that finds, until nothing better is found. Only plan*.cpp include this.
#pragma once

#include <map>

#include "engine/choosing/plan_aims.h"
#include "engine/choosing/plan_weighing.h"
#include "engine/choosing/search/choose_best.h"
#include "tables/decimal.h"

namespace landdrill {

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
