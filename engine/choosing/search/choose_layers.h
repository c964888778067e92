// List after list, all ways to choose so far that leave different room: the few best of each.
//
//   layers(choosing, prices, {6, 45, 1000}, go_on)->best   // at most 1000 of them are carried on
//
// What is dropped because it is too many leaves its bound behind.
#pragma once

#include <cstddef>
#include <cstdint>
#include <functional>
#include <optional>
#include <vector>

#include "engine/choosing/search/choose_prices.h"
#include "engine/choosing/search/choosing.h"

namespace landdrill {

struct LayersResult {
  std::vector<Chosen> best;
  std::int64_t dropped = no_way;  // the highest bound of what was dropped, times the scale
};
// The `how_many` best, of those worth `known` or more.
struct LayersWish {
  std::size_t how_many = 1;
  std::optional<std::int64_t> known;
  std::size_t width = 0;
};
// `go_on` is told how many more were looked at; nothing when it says to stop.
std::optional<LayersResult> layers(const Choosing& choosing, const Prices& prices, const LayersWish& wish,
                                   const std::function<bool(std::uint64_t more)>& go_on);

}  // namespace landdrill
