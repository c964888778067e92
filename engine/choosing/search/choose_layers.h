// List after list, all ways to choose so far that leave different room: the few best of each.
//
//   layers(priced, prices, {1, 45, 1000}, budget).best   // at most 1000 of them are carried on
//
// What is dropped because it is too many leaves its bound behind. Only choose_*.cpp include this.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <vector>

#include "engine/choosing/search/choose_best.h"
#include "engine/choosing/search/choose_prices.h"

namespace landdrill {

// How long to go on; shared by all passes.
struct Budget {
  std::uint64_t nodes = 0, most = 0;
  const std::function<bool(std::uint64_t)>* go_on = nullptr;
  bool over = false;
  void count(std::uint64_t more);
};

struct LayersResult {
  std::vector<Chosen> best;       // places in the lists of the choosing, not of `priced`
  std::int64_t dropped = no_way;  // the highest bound of what was dropped, times the scale
};

// The `how_many` best, of those worth `known` or more; at most `width` different rooms are carried on, fewer
// when the budget is over.
struct LayersWish {
  std::size_t how_many = 1;
  std::optional<std::int64_t> known;
  std::size_t width = 0;
};
LayersResult layers(const Priced& priced, const std::vector<Prices>& prices, const LayersWish& wish,
                    Budget& budget);

}  // namespace landdrill
