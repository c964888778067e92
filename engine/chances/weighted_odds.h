// How likely elements that are weighted by difficulty together give how many points: the whole quotient, with
// every way in which base marks can fall.
//
//   WeightedOdds session(rule);
//   session.odds({{kept_heron, {2.1, 0.5, 0.1}}, {kept_otter, {1.4, 0.5, 0}}})->odds    // points of the two
//
// The states are what is credited in all, and the sum of marks x credited difficulty: exact, unless they were more than
// are wished. Then every mark x difficulty is moved to the nearest of fewer, and the bound says how far points can be off.
#pragma once

#include <unordered_map>
#include <vector>

#include "engine/chances/mark_odds.h"
#include "engine/chances/odds.h"
#include "engine/chances/total_odds.h"
#include "tables/decimal.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {

struct WeightedElement {
  const Odds* kept = nullptr;
  Credited credited;
};

class WeightedOdds {
 public:
  struct Told {
    Odds odds;
    Decimal bound;    // in points: no case lies further than that from where it truly is
    Chance lost = 0;  // tails that were cut off
  };

  // `states`: no more are reckoned with, over all sums of difficulty.
  explicit WeightedOdds(const PanelRule& rule, std::size_t states = 2'000'000)
      : rule_(rule), most_states_(states) {}

  // Empty when there are too many sums of difficulty. Whatever is credited is more than 0.
  std::optional<Told> odds(const std::vector<WeightedElement>& elements);

 private:
  // By what is credited in all: the chances of each merit, in steps of merit.
  using States = std::map<Difficulty, GridSum>;

  bool add(States& states, const WeightedElement& element, Told& told);
  Gridded merits(const Odds& kept, Difficulty difficulty, Chance chance);
  std::optional<States> states_of(const std::vector<WeightedElement>& elements, Told& told);
  Decimal bound_of(const States& states) const;
  Decimal points(Difficulty difficulty, std::int64_t merit);

  const PanelRule& rule_;
  const std::size_t most_states_;
  std::int64_t own_step_ = 0;  // all merits are multiples of it; in millionths of millionths
  std::int64_t wider_ = 1;     // so many of its own make a step
  std::int64_t moved_ = 0;     // the largest moves of all elements, in millionths of millionths
  // The same states come back every day.
  std::map<Difficulty, std::unordered_map<std::int64_t, Decimal>> known_;
};

// How far the points of elements that are weighted by difficulty together usually lie from what can be
// expected.
//
//   WeightedScatter scatter(rule);
//   scatter.add_day(0.2, {{kept_heron, {2.1, 0.5, 0.1}}, {kept_otter, {1.4, 0.5, 0}}});
//   scatter.deviation()        // of the quotient, in points, before it is rounded
//
// Means and squares suffice for it, kept apart by what is credited in all; weighted_odds.h works out every
// case.

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
