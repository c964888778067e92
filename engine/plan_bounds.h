// Bounds on what any programme can still reach: at every list, odds that are at least as good as those of any
// option that is open, day by day.
//
//   OddsBounds bounds(pieces);
//   bounds.reach(before, 2, 1, point, known)     // the chance that any programme has that chose so far, and
//   this
//
// On a grid of its own, coarse enough for a sum of all elements to have few points. Only plan_odds.cpp uses
// it.
#pragma once

#include <map>

#include "engine/grid_sum.h"
#include "engine/plan_pieces.h"

namespace landdrill {

class OddsBounds {
 public:
  explicit OddsBounds(const Pieces& pieces);

  // What was chosen so far, one sum for each day.
  using Sums = std::vector<GridSum>;
  Sums nothing() const { return Sums(days(), GridSum{0, {1.0}}); }
  Sums with(const Sums& before, std::size_t list, std::size_t choice) const;
  // An upper bound on the chance to reach the point with a choice after what was chosen, and any after it.
  // What is worked out for one choice of a list is `known` for the others.
  using Known = std::vector<std::map<std::int64_t, Chance>>;
  Known nothing_known() const { return Known(days()); }
  Chance reach(const Sums& before, std::size_t list, std::size_t choice, std::int64_t point,
               Known& known) const;
  // The point of the grid that is reached whenever the value, in millionths, is.
  std::int64_t point_of(double millionths) const;
  // No programme has a higher quantile.
  Decimal highest_quantile(Chance share) const;

 private:
  // What a day's odds add up to from each point on.
  struct Survival {
    std::int64_t first = 0;
    std::vector<Chance> at_least;  // [0]: of `first` or more
    explicit Survival(const GridSum& sum);
    Chance of(std::int64_t point) const;
  };
  std::size_t days() const { return pieces_.days.cases().size(); }
  std::int64_t span() const;
  void lay_out();
  void add_up();
  GridSum shared_on(std::size_t day, std::int64_t& moved) const;

  const Pieces& pieces_;
  std::int64_t step_ = 1, bound_ = 0;  // of the grid, and how far it moves a total at most; in millionths
  std::vector<std::vector<std::vector<Gridded>>> gridded_;  // [list][choice][day]
  std::vector<std::vector<Survival>> rest_;                 // [list][day]
};

}  // namespace landdrill
