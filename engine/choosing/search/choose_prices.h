// Prices on limits (Lagrange multipliers): what every choice is worth less the price of what it uses bounds
// what any choice is worth.
//
//   Prices prices(choosing);
//   prices.bound(0, start, 0, nothing_used)     // no choice is worth more, times prices.scale
//
// Any prices give a true bound, so whole numbers suffice and nothing is rounded the wrong way.
#pragma once

#include <cstddef>
#include <cstdint>
#include <limits>
#include <span>
#include <vector>

#include "engine/choosing/search/choosing.h"

namespace landdrill {

constexpr std::int64_t no_way = std::numeric_limits<std::int64_t>::min() / 4;

// What the lists from one on may use of a limit in all.
struct UseRange {
  std::int64_t least = 0, most = 0;
};

class Prices {
 public:
  // Looks for prices with a low bound. Throws Overflow when sums leave 2^55.
  explicit Prices(const Choosing& choosing);

  // What any completion is worth at most, times the scale; no_way when there is none. The lists up to `list`
  // have a choice each.
  std::int64_t bound(std::size_t list, std::uint32_t state, std::int64_t worth,
                     std::span<const std::int64_t> used) const;
  // What it costs to end off the limits when the lists behind are chosen by the prices: a fourth of the widest
  // worths in a list for the widest step. A guess, no bound.
  std::int64_t off(std::size_t list, std::span<const std::int64_t> used) const;

  std::int64_t scale = 1;                   // prices and bounds are in so manieth parts of a worth
  std::vector<std::vector<UseRange>> rest;  // [list][limit]; one more than lists

 private:
  void measure();
  void find();
  void put_on();
  std::int64_t off_side(std::size_t limit) const;
  bool step(std::int64_t above, int halved);
  std::int64_t side(std::size_t limit) const;

  const Choosing& choosing_;
  const std::size_t states_;
  std::int64_t step_worth_ = 0;
  std::vector<std::int64_t> of_;      // one for each limit: above 0 for its most, below 0 for its least
  std::vector<std::int64_t> top_;     // so that nothing overflows
  std::vector<std::int64_t> widest_;  // the largest difference in one list
  std::vector<std::vector<std::int64_t>>
      usual_;                         // [list][limit]: what the choices by the prices use from there on
  std::vector<std::int64_t> behind_;  // [list * states + state]: the most that lists from there on are worth
};

}  // namespace landdrill
