// How far the points of elements that are weighted by difficulty together usually lie from what can be
// expected.
//
//   WeightedScatter scatter(rule);
//   scatter.add_day(0.2, {{kept_heron, {2.1, 0.5, 0.1}}, {kept_otter, {1.4, 0.5, 0}}});
//   scatter.deviation()        // of the quotient, in points, before it is rounded
//
// Means and squares suffice for it, kept apart by what is credited in all; weighted_odds.h works out every
// case.
#pragma once

#include <vector>

#include "engine/chances/odds.h"
#include "engine/chances/weighted_odds.h"
#include "tables/value_set.h"

namespace landdrill {

class WeightedScatter {
 public:
  explicit WeightedScatter(const PanelRule& rule) : rule_(rule) {}

  // A kind of day with its chance. Whatever is credited is more than 0.
  void add_day(Chance chance, const std::vector<WeightedElement>& elements);
  double deviation() const;

 private:
  const PanelRule& rule_;
  double from_ = 0;  // marks are counted from here, so that squares stay small
  bool has_days_ = false;
  double whole_ = 0, mean_ = 0, squares_ = 0;  // of sum(c (m - from)) / sum(c)
};

}  // namespace landdrill
