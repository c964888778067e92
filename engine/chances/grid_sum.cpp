#include "engine/chances/grid_sum.h"

#include <algorithm>
#include <array>
#include <cassert>

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

}  // namespace landdrill
