// What makes the bound of plan_reach.h low: ties between days, and prices on limits.
//
//   Tightening tightening(reach, choosing, days, patience);
//   tightening.run({open, order, prices, 0.75, 20}).most
//   // no open programme reaches the total more likely
//
// A tie is added to a choice on one day and taken from it on the others (over the days they come to nothing),
// so that no choice is better for being made on some days only. A price is paid for what a choice uses of a
// limit, and paid back for all that may be used. Any ties and prices give a true bound; those that are low
// are found step by step. Only plan*.cpp include this.
#pragma once

#include "engine/chances/odds.h"
#include "engine/choosing/plan_aims.h"
#include "engine/choosing/plan_open.h"
#include "engine/choosing/plan_reach.h"
#include "engine/choosing/search/choose_best.h"

namespace landdrill {

struct TiePrices {
  ByDay tie;
  std::vector<double> most, least;  // one for each limit, 0 or more
};
struct Tightened {
  double most = 0;
  std::vector<std::size_t> order;  // of the lists that are not settled
  std::vector<double> first;       // the bound with each choice of the first of them
  std::vector<std::size_t> then;   // the same lists, the least decided first
  std::shared_ptr<const TiePrices> prices;
};

struct TightenWish {
  const OpenLists& open;
  std::vector<std::size_t> order;  // the lists that are not settled
  std::shared_ptr<const TiePrices> from;
  Chance to_beat = 0;  // lower than this need no bound be
  int steps = 0;
};

// [list][choice]: the mean over the days.
std::vector<std::vector<Chance>> over_days(const ByDay& by_day, const Odds& days);

class Tightening {
 public:
  Tightening(const Reach& reach, const Choosing& choosing, const Odds& days, Patience& patience)
      : reach_(reach), choosing_(choosing), days_(days), patience_(patience) {}
  // Where to begin: days and limits as the programme sees them.
  TiePrices beside(const std::vector<std::size_t>& programme) const;
  // The lowest bound on the way.
  Tightened run(const TightenWish& wish) const;

 private:
  // What is used too much of a limit, or too little.
  struct Excess {
    std::vector<double> most, least;
  };
  ByDay added(const TiePrices& prices) const;
  double paid_back(const TiePrices& prices) const;
  Excess excess(const std::vector<std::vector<Chance>>& taken, const TiePrices& prices) const;
  std::vector<double> widths(const OpenLists& open) const;
  bool step(const OpenLists& open, const ByDay& taken, double over, TiePrices& prices) const;
  void price_limits(const std::vector<std::vector<Chance>>& worth, const std::vector<std::size_t>& programme,
                    TiePrices& prices) const;
  std::vector<std::size_t> least_decided_first(std::vector<std::size_t> order, const ByDay& taken) const;

  const Reach& reach_;
  const Choosing& choosing_;
  const Odds& days_;
  Patience& patience_;
};

}  // namespace landdrill
