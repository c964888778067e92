// Which programmes reach a total often enough: depth first, beginnings shared.
//
//   Reach reach(pieces, step);
//   reach.walk(openings, {from, 0.75, 20'000}).programmes    // every one that reaches `from` 3 times in 4
//
// A beginning is given up when it falls short although each list behind it has the best of all its choices at
// once, total by total: the highest chance of any to come to that much or more. All on one grid. Only
// plan*.cpp include this.
#pragma once

#include "engine/chances/odds.h"
#include "engine/chances/total_odds.h"
#include "engine/choosing/plan_programme_odds.h"
#include "engine/choosing/search/choose_best.h"
#include "tables/decimal.h"

namespace landdrill {

// Which choices of each list are still open, when some are settled and limits are to be kept.
//
//   Openings openings(choosing);
//   openings.narrow(open)       // false: nothing within the limits is left
//
// Takes out what no programme can hold that keeps one limit, or the chain; it does not look at several
// together. Only plan*.cpp include this.

// The choices of each list that are still open; a list of one is settled.
using OpenLists = std::vector<std::vector<std::size_t>>;

class Openings {
 public:
  explicit Openings(const Choosing& choosing) : choosing_(choosing) {}
  OpenLists all() const;
  bool narrow(OpenLists& open) const;

 private:
  bool narrow_by_limit(OpenLists& open, std::size_t limit, bool& changed) const;
  bool narrow_by_chain(OpenLists& open, bool& changed) const;

  const Choosing& choosing_;
};

struct ReachWish {
  Decimal total;
  Chance often = 0;              // so often it is to be reached, but for the bound of the grid
  std::uint64_t most_steps = 0;  // beginnings that are looked into, and programmes that are found
  std::function<bool()> go_on;
};
struct ReachFound {
  std::vector<std::vector<std::size_t>> programmes;  // one choice for each list
  bool all = true;                                   // false: it had to stop
};

class Reach {
 public:
  Reach(const Pieces& pieces, GridStep step);

  ReachFound walk(const Openings& openings, const ReachWish& wish) const;
  // The total that no programme misses less often than this.
  Decimal most_missed(Chance share) const;
  // No programme reaches the total more often.
  Chance most_often(Decimal total) const;

 private:
  // The chance of every point from `first` on, or of more; 1 below, 0 above.
  struct Tail {
    std::int64_t first = 0;
    std::vector<Chance> at_least;
  };
  using Days = std::vector<GridSum>;
  struct Walk;

  void put_on_grid();
  void look_behind();
  Chance reached(const Days& begun, std::size_t list, std::size_t choice, std::int64_t point) const;
  Days with(const Days& begun, std::size_t list, std::size_t choice) const;
  std::int64_t lowest_point(Decimal total) const;
  GridSum best_total() const;
  void look_into(Walk& walk, const OpenLists& open, const Days& begun, std::size_t place) const;

  const Pieces& pieces_;
  const GridStep step_;
  std::int64_t bound_ = 0;                                  // in millionths
  std::vector<std::size_t> order_;                          // the lists that have more than one choice
  std::vector<std::vector<std::vector<Gridded>>> choices_;  // [list][choice][day]
  Days shared_;                                             // all that no choice changes
  Days best_;                                               // with the best of every list
  std::vector<std::vector<std::vector<Tail>>> tails_;       // [place][choice][day]: with the best behind it
};

}  // namespace landdrill
