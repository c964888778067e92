#include "engine/chances/total_odds.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <numeric>

#include "engine/chances/grid_choice.h"
#include "engine/chances/grid_sum.h"
#include "engine/chances/odds.h"
#include "tables/decimal.h"

namespace landdrill {
namespace {

Odds as_odds(const GridSum& sum, GridStep step) {
  std::vector<Odds::Case> cases;
  cases.reserve(sum.chances.size());
  for (std::size_t i = 0; i < sum.chances.size(); ++i) {
    if (!(sum.chances[i] > 0)) continue;
    cases.push_back({value_at(sum.first + static_cast<std::int64_t>(i), step), sum.chances[i]});
  }
  return Odds(std::move(cases));
}

}  // namespace

TotalOdds total_odds(std::span<const World> worlds, const GridWish& wish,
                     const std::function<void(std::size_t)>& done) {
  return total_odds(worlds, chosen_step(worlds, wish), done);
}

TotalOdds total_odds(std::span<const World> worlds, GridStep step,
                     const std::function<void(std::size_t)>& done) {
  TotalOdds result;
  GridSum total;
  std::int64_t bound = 0;
  for (std::size_t i = 0; i < worlds.size(); ++i) {
    const WorldSum world = world_sum(worlds[i], step);
    mix_in(total, world.sum, worlds[i].chance);
    bound = std::max(bound, world.bound);
    result.lost += worlds[i].chance * world.lost;
    if (done) done(i + 1);
  }
  result.odds = as_odds(total, step);
  result.grid = value_at(1, step);
  // Points between two millionths are told to the nearest.
  result.bound = Decimal::from_units(step.millionths % step.parts == 0 ? bound : bound + 1);
  return result;
}

Odds without_tails(const Odds& odds, Chance cut, Chance& lost) {
  std::span<const Odds::Case> cases = odds.cases();
  Chance below = 0, above = 0;
  while (cases.size() > 1 && below + cases.front().chance < cut) {
    below += cases.front().chance;
    cases = cases.subspan(1);
  }
  while (cases.size() > 1 && above + cases.back().chance < cut) {
    above += cases.back().chance;
    cases = cases.first(cases.size() - 1);
  }
  lost += below + above;
  return Odds({cases.begin(), cases.end()});
}

}  // namespace landdrill
