#include "engine/plan_bounds.h"

#include <algorithm>
#include <cmath>

namespace landdrill {
namespace {

// Tails of less than this are no part of a bound; what is told apart is far coarser.
constexpr Chance cut = 1e-15;

Gridded on_grid(const Odds& odds, std::int64_t step) {
  Chance lost = 0;
  return gridded(without_tails(odds, cut, lost), {step});
}

// Odds with the lowest distribution function of all: at least as good as each of them.
Gridded at_least_as_good(const std::vector<Gridded>& several) {
  std::map<std::int64_t, std::vector<Chance>> at;
  for (std::size_t i = 0; i < several.size(); ++i) {
    for (const Gridded::Case& one : several[i].cases) {
      auto& here = at[one.point];
      here.resize(several.size());
      here[i] += one.chance;
    }
  }
  Gridded result;
  std::vector<Chance> below(several.size());
  Chance reached = 0;
  for (const auto& [point, chances] : at) {
    for (std::size_t i = 0; i < below.size(); ++i) below[i] += chances[i];
    const Chance lowest = std::min(*std::min_element(below.begin(), below.end()), 1.0);
    if (lowest > reached) result.cases.push_back({point, lowest - reached});
    reached = std::max(reached, lowest);
  }
  for (const Gridded& one : several) result.largest_move = std::max(result.largest_move, one.largest_move);
  return result;
}

}  // namespace

OddsBounds::Survival::Survival(const GridSum& sum) : first(sum.first), at_least(sum.chances) {
  for (std::size_t i = at_least.size() - 1; i-- > 0;) at_least[i] += at_least[i + 1];
}

Chance OddsBounds::Survival::of(std::int64_t point) const {
  if (point <= first) return at_least.front();
  const auto place = static_cast<std::size_t>(point - first);
  return place < at_least.size() ? at_least[place] : 0;
}

OddsBounds::OddsBounds(const Pieces& pieces) : pieces_(pieces) {
  constexpr std::int64_t points = 1'500;
  step_ = std::max<std::int64_t>(span() / points, 1);
  lay_out();
  add_up();
}

// From the worst total to the best.
std::int64_t OddsBounds::span() const {
  std::int64_t sum = 0;
  for (const auto& list : pieces_.choices) {
    Decimal low = list.front().front().cases().front().value, high = low;
    for (const auto& choice : list) {
      for (const Odds& odds : choice) {
        low = std::min(low, odds.cases().front().value);
        high = std::max(high, odds.cases().back().value);
      }
    }
    sum += (high - low).units();
  }
  for (const auto& piece : pieces_.shared) {
    sum += (piece.front().cases().back().value - piece.front().cases().front().value).units();
  }
  return sum;
}

void OddsBounds::lay_out() {
  for (const auto& list : pieces_.choices) {
    auto& here = gridded_.emplace_back();
    std::int64_t largest = 0;
    for (const auto& choice : list) {
      auto& by_day = here.emplace_back();
      for (const Odds& odds : choice) {
        by_day.push_back(on_grid(odds, step_));
        largest = std::max(largest, by_day.back().largest_move);
      }
    }
    bound_ += largest;
  }
}

GridSum OddsBounds::shared_on(std::size_t day, std::int64_t& moved) const {
  GridSum sum{0, {1.0}};
  std::int64_t here = 0;
  for (std::size_t i = 0; i < pieces_.shared.size(); ++i) {
    const Gridded number = on_grid(pieces_.shared_on(i, day), step_);
    here += number.largest_move;
    sum = plus(sum, number);
  }
  moved = std::max(moved, here);
  return sum;
}

void OddsBounds::add_up() {
  rest_.resize(gridded_.size() + 1);
  std::int64_t moved = 0;
  for (std::size_t day = 0; day < days(); ++day) {
    GridSum sum = shared_on(day, moved);
    rest_.back().emplace_back(sum);
    for (std::size_t i = gridded_.size(); i-- > 0;) {
      std::vector<Gridded> several;
      for (const auto& choice : gridded_[i]) several.push_back(choice[day]);
      sum = plus(sum, at_least_as_good(several));
      rest_[i].emplace_back(sum);
    }
  }
  bound_ += moved;
}

OddsBounds::Sums OddsBounds::with(const Sums& before, std::size_t list, std::size_t choice) const {
  Sums sums;
  for (std::size_t day = 0; day < days(); ++day)
    sums.push_back(plus(before[day], gridded_[list][choice][day]));
  return sums;
}

Chance OddsBounds::reach(const Sums& before, std::size_t list, std::size_t choice, std::int64_t point,
                         Known& known) const {
  Chance sum = 0;
  for (std::size_t day = 0; day < days(); ++day) {
    const Survival& rest = rest_[list + 1][day];
    Chance on_day = 0;
    for (const Gridded::Case& one : gridded_[list][choice][day].cases) {
      const auto [place, is_new] = known[day].try_emplace(point - one.point, 0.0);
      for (std::size_t i = 0; is_new && i < before[day].chances.size(); ++i) {
        place->second +=
            before[day].chances[i] * rest.of(place->first - before[day].first - static_cast<std::int64_t>(i));
      }
      on_day += one.chance * place->second;
    }
    sum += pieces_.days.cases()[day].chance * on_day;
  }
  return sum;
}

std::int64_t OddsBounds::point_of(double millionths) const {
  return static_cast<std::int64_t>(
      std::floor((millionths - static_cast<double>(bound_)) / static_cast<double>(step_)));
}

Decimal OddsBounds::highest_quantile(Chance share) const {
  std::int64_t low = rest_[0][0].first, high = low;
  for (const Survival& day : rest_[0]) {
    low = std::min(low, day.first);
    high = std::max(high, day.first + static_cast<std::int64_t>(day.at_least.size()));
  }
  // The highest point that is reached often enough.
  while (high - low > 1) {
    const std::int64_t middle = low + (high - low) / 2;
    Chance reached = 0;
    for (std::size_t day = 0; day < days(); ++day) {
      reached += pieces_.days.cases()[day].chance * rest_[0][day].of(middle);
    }
    (reached > 1 - share - 1e-12 ? low : high) = middle;
  }
  return Decimal::from_units(low * step_ + bound_);
}

}  // namespace landdrill
