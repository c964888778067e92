#include "engine/chances/grid_choice.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <set>

#include "engine/chances/odds.h"
#include "tables/decimal.h"

namespace landdrill {
namespace {

constexpr Chance cut_at = 1e-18;

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

// The widest step that moves nothing.
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

// The values that the pieces in one place of each world can have.
using Values = std::vector<std::vector<std::int64_t>>;
Values values_of(std::span<const World> worlds) {
  Values result;
  for (std::size_t place = 0;; ++place) {
    std::set<std::int64_t> values;
    for (const World& world : worlds) {
      if (place >= world.pieces.size()) continue;
      for (const Odds::Case& one : world.pieces[place]->cases()) values.insert(one.value.units());
    }
    if (values.empty()) return result;
    result.emplace_back(values.begin(), values.end());
  }
}

// The sum of the largest moves on a grid of `whole` / `parts`, or something above `enough`.
Chance moves(const Values& values, Chance whole, std::int64_t parts, Chance enough) {
  const Chance step = whole / static_cast<Chance>(parts);
  Chance sum = 0;
  for (const std::vector<std::int64_t>& piece : values) {
    Chance most = 0;
    for (const std::int64_t value : piece) {
      const Chance at = static_cast<Chance>(value) / step;
      most = std::max(most, std::abs(at - std::nearbyint(at)) * step);
      if (sum + most > enough) return sum + most;
    }
    sum += most;
  }
  return sum;
}

// Of the steps that are a whole part of a power of ten and not below `finest`, the one that moves the values
// least; the widest of those that are nearly as good.
GridStep fitting_step(std::span<const World> worlds, Chance finest) {
  constexpr Chance nearly = 1.1;
  std::int64_t whole = 1000;
  constexpr std::int64_t widest = 1'000'000'000'000'000'000;
  while (whole < widest && static_cast<Chance>(whole) < 1000 * finest) whole *= 10;
  const Values values = values_of(worlds);
  const auto most_parts =
      std::max<std::int64_t>(1, static_cast<std::int64_t>(static_cast<Chance>(whole) / finest));
  Chance best = HUGE_VAL;
  for (std::int64_t parts = most_parts; parts > 0; --parts) {
    best = std::min(best, moves(values, static_cast<Chance>(whole), parts, best));
  }
  for (std::int64_t parts = 1; parts < most_parts; ++parts) {
    if (moves(values, static_cast<Chance>(whole), parts, best * nearly) <= best * nearly)
      return {whole, parts};
  }
  return {whole, most_parts};
}

}  // namespace

WorldSum world_sum(const World& world, GridStep step) {
  WorldSum result;
  bool first = true;
  for (const Odds* piece : in_order(world.pieces)) {
    const Odds worth = without_tails(*piece, cut_at / world.chance, result.lost);
    const Gridded number = gridded(worth, step);
    result.sum = first ? placed(number) : plus(result.sum, number);
    if (!first) result.work += static_cast<std::int64_t>(result.sum.chances.size() * worth.cases().size());
    first = false;
    result.bound += number.largest_move;
    result.lost += cut_tails(result.sum, cut_at / world.chance);
  }
  return result;
}

// Work on a coarse grid, tails cut, tells the work on every other: it goes with the number of points.
GridStep chosen_step(std::span<const World> worlds, const GridWish& wish) {
  constexpr std::int64_t few_points = 2000;
  const std::int64_t span = longest(worlds), fits = span / most_points + 1;
  if (wish.grid) return {std::max(wish.grid->units(), fits)};
  const std::int64_t own = own_step(worlds), pilot = span / few_points + 1;
  if (pilot <= own) return {own};
  std::int64_t needed = 0;
  for (const World& world : worlds) needed += world_sum(world, {pilot}).work;
  const Chance within =
      static_cast<Chance>(pilot) * static_cast<Chance>(needed) / static_cast<Chance>(wish.work);
  const Chance finest = std::max(within, static_cast<Chance>(fits));
  return finest <= static_cast<Chance>(own) ? GridStep{own} : fitting_step(worlds, finest);
}

}  // namespace landdrill
