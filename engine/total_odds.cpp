#include "engine/total_odds.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <numeric>

#include "engine/grid_sum.h"

namespace landdrill {
namespace {

constexpr Chance cut_at = 1e-18;
constexpr std::int64_t largest_step = 1'000'000'000'000'000;

std::int64_t span_of(const Odds& odds) {
  return (odds.cases().back().value - odds.cases().front().value).units();
}

// The piece of most cases first: it is only put down, and not multiplied. Then short ones before long ones,
// so that the sum stays short for long.
std::vector<const Odds*> in_order(std::vector<const Odds*> pieces) {
  std::stable_sort(pieces.begin(), pieces.end(),
                   [](const Odds* a, const Odds* b) { return span_of(*a) < span_of(*b); });
  const auto most = std::max_element(pieces.begin(), pieces.end(), [](const Odds* a, const Odds* b) {
    return a->cases().size() < b->cases().size();
  });
  if (most != pieces.end()) std::rotate(pieces.begin(), most, most + 1);
  return pieces;
}

// The sum of all pieces of one world, its largest move and its work.
struct WorldSum {
  GridSum sum{0, {1.0}};
  std::int64_t bound = 0, work = 0;
  Chance lost = 0;
};

WorldSum world_sum(const World& world, std::int64_t step) {
  WorldSum result;
  bool first = true;
  for (const Odds* piece : in_order(world.pieces)) {
    const Gridded number = gridded(without_tails(*piece, cut_at / world.chance, result.lost), step);
    result.sum = first ? placed(number) : plus(result.sum, number);
    if (!first) result.work += static_cast<std::int64_t>(result.sum.chances.size() * number.cases.size());
    first = false;
    result.bound += number.largest_move;
    result.lost += cut_tails(result.sum, cut_at / world.chance);
  }
  return result;
}

// The finest step that moves nothing.
std::int64_t own_step(std::span<const World> worlds) {
  std::int64_t step = 0;
  for (const World& world : worlds) {
    for (const Odds* piece : world.pieces) {
      for (const Odds::Case& one : piece->cases()) step = std::gcd(step, one.value.units());
    }
  }
  return step == 0 ? Decimal::one : step;
}

std::int64_t longest(std::span<const World> worlds) {
  std::int64_t most = 0;
  for (const World& world : worlds) {
    std::int64_t span = 0;
    for (const Odds* piece : world.pieces) span += span_of(*piece);
    most = std::max(most, span);
  }
  return most;
}

// 1, 2 or 5 of a decimal place, at least `least`.
std::int64_t round_step(std::int64_t least) {
  for (std::int64_t place = 1; place < largest_step; place *= 10) {
    for (std::int64_t digit : {1, 2, 5}) {
      if (digit * place >= least) return digit * place;
    }
  }
  return largest_step;
}

// What a total on this step costs, were no tail cut.
std::int64_t work_at(std::span<const World> worlds, std::int64_t step) {
  std::int64_t work = 0;
  for (const World& world : worlds) {
    std::int64_t span = 0;
    bool first = true;
    for (const Odds* piece : in_order(world.pieces)) {
      span += span_of(*piece) / step + 1;
      if (!first) work += span * static_cast<std::int64_t>(piece->cases().size());
      first = false;
    }
  }
  return work;
}

// Work on a coarse grid, tails cut, tells the work on every other: both go with the number of points.
std::int64_t step_within(std::span<const World> worlds, std::int64_t own, std::int64_t work) {
  constexpr std::int64_t coarser = 16;
  std::int64_t pilot = own;
  while (pilot < largest_step && work_at(worlds, pilot) > work / coarser) pilot = round_step(pilot + 1);
  if (pilot == own) return own;
  std::int64_t needed = 1;
  for (const World& world : worlds) needed += world_sum(world, pilot).work;
  const auto finest = static_cast<double>(pilot) * static_cast<double>(needed) / static_cast<double>(work);
  if (finest <= static_cast<double>(own)) return own;
  return std::max(own, round_step(static_cast<std::int64_t>(finest)));
}

std::int64_t chosen_step(std::span<const World> worlds, const GridWish& wish) {
  const std::int64_t fits = longest(worlds) / most_points + 1;
  if (wish.grid) return std::max(wish.grid->units(), fits == 1 ? 1 : round_step(fits));
  const std::int64_t own = own_step(worlds);
  const std::int64_t step = step_within(worlds, own, wish.work);
  return step >= fits ? step : round_step(fits);
}

Odds as_odds(const GridSum& sum, std::int64_t step) {
  std::vector<Odds::Case> cases;
  cases.reserve(sum.chances.size());
  for (std::size_t i = 0; i < sum.chances.size(); ++i) {
    const std::int64_t point = sum.first + static_cast<std::int64_t>(i);
    if (sum.chances[i] > 0) cases.push_back({Decimal::from_units(point * step), sum.chances[i]});
  }
  return Odds(std::move(cases));
}

}  // namespace

TotalOdds total_odds(std::span<const World> worlds, const GridWish& wish,
                     const std::function<void(std::size_t)>& done) {
  const std::int64_t step = chosen_step(worlds, wish);
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
  result.grid = Decimal::from_units(step);
  result.bound = Decimal::from_units(bound);
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
