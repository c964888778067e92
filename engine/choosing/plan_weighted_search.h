// The best programmes by expected total where elements are weighted by difficulty together.
//
//   WeightedSearch search(weighing, inputs);
//   search.best(choosing, 6)
//
// Dinkelbach's method: the best by a line above all values (plan_weighing.h) are worked out exactly, the line
// is laid to the best of them, and so on until nothing else reaches it. Only plan*.cpp include this.
#pragma once

#include <map>

#include "engine/choosing/plan_aims.h"
#include "engine/choosing/plan_weighing.h"
#include "engine/choosing/search/choose_best.h"
#include "tables/decimal.h"

namespace landdrill {

class WeightedSearch {
 public:
  WeightedSearch(const Weighing& weighing, const AimInputs& inputs);

  AimedBest best(const Choosing& choosing, std::size_t how_many);

 private:
  // Programmes within bands; a band that is not `limited` holds all of them.
  struct Node {
    WeighingBands bands;
    std::vector<bool> limited;
    std::optional<Exact> at_most;  // what one of them is worth at most
  };
  struct Worked {
    std::vector<std::size_t> choices;
    Exact value;
  };

  void begin();
  WeighingBand whole_band(std::size_t rule) const;
  bool may_be_absent(std::size_t rule) const;
  void look_into(Node node);
  std::optional<std::size_t> widest(const Node& node) const;
  void split(Node node, std::size_t rule);
  Choosing within(const Node& node) const;
  BestChoices chosen(const Choosing& choosing, std::size_t how_many) const;
  bool work_out(const std::vector<Chosen>& found);
  bool keep(const std::vector<std::size_t>& choices, Exact value);
  std::optional<Exact> level() const;
  AimedBest gathered() const;

  const Weighing& weighing_;
  const AimInputs& inputs_;
  const bool has_risk_;
  // What was worked out once, for every choosing.
  std::map<std::vector<std::size_t>, std::optional<Exact>> known_;
  // Of the choosing that is looked at.
  const Choosing* choosing_ = nullptr;
  std::size_t how_many_ = 1, looked_into_ = 0;
  std::vector<Worked> best_;       // best first
  std::vector<Node> open_, left_;  // to look into; given up
};

// Whether one choice for each list keeps all limits.
bool meets(const Choosing& choosing, const std::vector<std::size_t>& choices);

}  // namespace landdrill
