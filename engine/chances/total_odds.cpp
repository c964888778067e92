#include "engine/chances/total_odds.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>
#include <set>

#include "engine/chances/odds.h"
#include "tables/decimal.h"

namespace landdrill {
namespace {

Int128 divided_down(Int128 a, Int128 b) {
  return a / b - (a % b < 0 ? 1 : 0);
}

// Half-way to the even one.
std::int64_t nearest_point(std::int64_t value, GridStep step) {
  const Int128 twice = Int128{2} * value * step.parts + step.millionths,
               two_steps = Int128{2} * step.millionths;
  const Int128 point = divided_down(twice, two_steps);
  const bool tie = point * two_steps == twice;
  return static_cast<std::int64_t>(tie && point % 2 != 0 ? point - 1 : point);
}

std::int64_t move_of(std::int64_t value, std::int64_t point, GridStep step) {
  const Int128 off = Int128{value} * step.parts - Int128{point} * step.millionths;
  return static_cast<std::int64_t>(-divided_down(off < 0 ? off : -off, step.parts));
}

// Eight cases at a time: the sums then wait for arithmetic and not for memory.
constexpr std::size_t at_once = 8;
constexpr std::size_t block = 2048;
struct Eight {
  std::array<Chance, at_once> chance{};
  std::array<const Chance*, at_once> from{};
};

void add_eight(Chance* __restrict to, const Eight& eight, std::size_t count) {
  const auto [c0, c1, c2, c3, c4, c5, c6, c7] = eight.chance;
  const auto [p0, p1, p2, p3, p4, p5, p6, p7] = eight.from;
  for (std::size_t i = 0; i < count; ++i) {
    to[i] += ((c0 * p0[i] + c1 * p1[i]) + (c2 * p2[i] + c3 * p3[i])) +
             ((c4 * p4[i] + c5 * p5[i]) + (c6 * p6[i] + c7 * p7[i]));
  }
}

// The cases in eights; those missing to the last eight have no chance.
std::vector<Eight> in_eights(const Gridded& number, const Chance* padded) {
  std::vector<Eight> eights((number.cases.size() + at_once - 1) / at_once);
  for (Eight& one : eights) one.from.fill(padded);
  for (std::size_t i = 0; i < number.cases.size(); ++i) {
    const std::int64_t back = number.cases.back().point - number.cases[i].point;
    eights[i / at_once].chance[i % at_once] = number.cases[i].chance;
    eights[i / at_once].from[i % at_once] = padded + back;
  }
  return eights;
}

}  // namespace

Decimal value_at(std::int64_t point, GridStep step) {
  const Int128 twice = Int128{2} * point * step.millionths + step.parts;
  return Decimal::from_units(static_cast<std::int64_t>(divided_down(twice, Int128{2} * step.parts)));
}

Gridded gridded(const Odds& odds, GridStep step) {
  Gridded result;
  for (const Odds::Case& one : odds.cases()) {
    const std::int64_t point = nearest_point(one.value.units(), step);
    result.largest_move = std::max(result.largest_move, move_of(one.value.units(), point, step));
    if (!result.cases.empty() && result.cases.back().point == point) {
      result.cases.back().chance += one.chance;
    } else {
      result.cases.push_back({point, one.chance});
    }
  }
  return result;
}

GridSum placed(const Gridded& number) {
  GridSum sum{number.cases.front().point, {}};
  sum.chances.resize(static_cast<std::size_t>(number.span()) + 1);
  for (const Gridded::Case& one : number.cases) {
    sum.chances[static_cast<std::size_t>(one.point - sum.first)] = one.chance;
  }
  return sum;
}

GridSum plus(const GridSum& sum, const Gridded& number) {
  const auto span = static_cast<std::size_t>(number.span());
  std::vector<Chance> padded(sum.chances.size() + 2 * span);
  std::copy(sum.chances.begin(), sum.chances.end(), padded.begin() + static_cast<std::ptrdiff_t>(span));
  const std::vector<Eight> eights = in_eights(number, padded.data());
  GridSum result{sum.first + number.cases.front().point, std::vector<Chance>(sum.chances.size() + span)};
  for (std::size_t at = 0; at < result.chances.size(); at += block) {
    const std::size_t count = std::min(block, result.chances.size() - at);
    for (Eight eight : eights) {
      for (const Chance*& from : eight.from) from += at;
      add_eight(result.chances.data() + at, eight, count);
    }
  }
  return result;
}

void mix_in(GridSum& total, const GridSum& sum, Chance chance) {
  if (total.chances.empty()) total.first = sum.first;
  const std::int64_t before = std::max<std::int64_t>(0, total.first - sum.first);
  total.chances.insert(total.chances.begin(), static_cast<std::size_t>(before), 0.0);
  total.first -= before;
  const auto at = static_cast<std::size_t>(sum.first - total.first);
  total.chances.resize(std::max(total.chances.size(), at + sum.chances.size()));
  for (std::size_t i = 0; i < sum.chances.size(); ++i) total.chances[at + i] += chance * sum.chances[i];
}

Chance cut_tails(GridSum& sum, Chance cut) {
  Chance lost_below = 0, lost_above = 0;
  std::size_t first = 0, end = sum.chances.size();
  while (end - first > 1 && lost_below + sum.chances[first] < cut) lost_below += sum.chances[first++];
  while (end - first > 1 && lost_above + sum.chances[end - 1] < cut) lost_above += sum.chances[--end];
  sum.chances.resize(end);
  sum.chances.erase(sum.chances.begin(), sum.chances.begin() + static_cast<std::ptrdiff_t>(first));
  sum.first += static_cast<std::int64_t>(first);
  return lost_below + lost_above;
}

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

TotalOdds on_grid(std::span<const World> worlds, GridStep step,
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

}  // namespace

TotalOdds total_odds(std::span<const World> worlds, const GridWish& wish,
                     const std::function<void(std::size_t)>& done) {
  TotalOdds total = on_grid(worlds, chosen_step(worlds, wish), done);
  total.lattice = Decimal::from_units(own_step(worlds));
  return total;
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
  // So many values lie near no grid.
  std::size_t number = 0;
  for (const std::vector<std::int64_t>& piece : values) number += piece.size();
  if (number > 50'000) return {whole, most_parts};
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
