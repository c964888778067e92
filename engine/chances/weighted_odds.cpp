#include "engine/chances/weighted_odds.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <map>
#include <numeric>

#include "engine/chances/odds.h"
#include "tables/binary.h"
#include "tables/decimal.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

// Sum of kept marks x difficulty, in millionths of millionths.
std::int64_t merit_of(Decimal kept, Difficulty difficulty) {
  std::int64_t merit = 0;
  if (__builtin_mul_overflow(kept.units(), difficulty.value().units(), &merit)) throw Overflow();
  return merit;
}

std::int64_t common_merit(const std::vector<WeightedElement>& elements) {
  std::int64_t step = 0;
  for (const WeightedElement& element : elements) {
    for (const Odds::Case& one : element.kept->cases()) {
      step = std::gcd(step, merit_of(one.value, element.credited.declared));
      if (element.credited.chance > 0) step = std::gcd(step, merit_of(one.value, element.credited.base));
    }
  }
  return step == 0 ? 1 : step;
}

}  // namespace

Gridded WeightedOdds::merits(const Odds& kept, Difficulty difficulty, Chance chance) {
  const std::int64_t step = own_step_ * wider_;
  Gridded result;
  for (const Odds::Case& one : kept.cases()) {
    const std::int64_t merit = merit_of(one.value, difficulty), point = (merit + step / 2) / step;
    result.largest_move = std::max(result.largest_move, std::abs(merit - point * step));
    if (!result.cases.empty() && result.cases.back().point == point) {
      result.cases.back().chance += chance * one.chance;
    } else {
      result.cases.push_back({point, chance * one.chance});
    }
  }
  return result;
}

// False when there are too many states.
bool WeightedOdds::add(States& states, const WeightedElement& element, Told& told) {
  States after;
  std::size_t count = 0;
  std::int64_t moved = 0;
  const auto credit = [&](Difficulty difficulty, Chance chance) {
    if (!(chance > 0)) return true;
    const Gridded more = merits(*element.kept, difficulty, chance);
    moved = std::max(moved, more.largest_move);
    for (const auto& [credited, sum] : states) {
      if (static_cast<std::size_t>(more.span()) > most_states_) return false;
      GridSum next = plus(sum, more);
      told.lost += cut_tails(next, not_worth_reckoning);
      count += next.chances.size();
      if (count > most_states_) return false;
      mix_in(after[credited + difficulty], next, 1);
    }
    return true;
  };
  const Credited& credited = element.credited;
  if (!credit(credited.declared, 1 - credited.chance) || !credit(credited.base, credited.chance))
    return false;
  states = std::move(after);
  moved_ += moved;
  return true;
}

Decimal WeightedOdds::points(Difficulty difficulty, std::int64_t merit) {
  const auto [known, is_new] = known_[difficulty].try_emplace(merit);
  if (!is_new) return known->second;
  // merit x step is in millionths of millionths: a millionth for each of the two.
  Exact sum = Exact(Decimal::from_units(merit)) * Exact(Decimal::from_units(own_step_ * wider_));
  if (rule_.combine == Combine::mean) {
    sum = sum / Exact(Decimal::whole(rule_.judges - rule_.drop_high - rule_.drop_low));
  }
  known->second = weighted_points(rule_, sum, difficulty).value();
  return known->second;
}

// Empty when there are too many.
std::optional<WeightedOdds::States> WeightedOdds::states_of(const std::vector<WeightedElement>& elements,
                                                            Told& told) {
  States states = {{Difficulty(), {0, {1.0}}}};
  moved_ = 0;
  told.lost = 0;
  for (const WeightedElement& element : elements) {
    if (!add(states, element, told)) return std::nullopt;
  }
  return states;
}

// A merit that is moved moves the quotient most where least is credited; and then it may be rounded to the next.
Decimal WeightedOdds::bound_of(const States& states) const {
  if (moved_ == 0) return {};
  double credited = binary(states.begin()->first) * 1e6;
  if (rule_.combine == Combine::mean) credited *= rule_.judges - rule_.drop_high - rule_.drop_low;
  const double points = static_cast<double>(moved_) / credited * binary(*rule_.weight);
  Decimal last_place = Decimal::whole(1);
  for (int i = 0; i < rule_.places; ++i) last_place = Decimal::from_units(last_place.units() / 10);
  return Decimal::from_units(static_cast<std::int64_t>(std::ceil(points)) + 1) + last_place;
}

std::optional<WeightedOdds::Told> WeightedOdds::odds(const std::vector<WeightedElement>& elements) {
  constexpr std::int64_t widest = 1'000'000;
  const std::int64_t step = common_merit(elements);
  if (step != own_step_) known_.clear();
  own_step_ = step;
  Told told;
  std::optional<States> states;
  while (!(states = states_of(elements, told))) {
    if (wider_ > widest) return std::nullopt;
    wider_ *= 2;
    known_.clear();
  }
  std::vector<Odds::Case> cases;
  for (const auto& [difficulty, sum] : *states) {
    for (std::size_t i = 0; i < sum.chances.size(); ++i) {
      if (!(sum.chances[i] > 0)) continue;
      cases.push_back({points(difficulty, sum.first + static_cast<std::int64_t>(i)), sum.chances[i]});
    }
  }
  told.odds = Odds(std::move(cases));
  told.bound = bound_of(*states);
  return told;
}

namespace {

// A chance, with the mean and the mean square of a sum in the cases it stands for, both times the chance.
struct Moments {
  double chance = 0, sum = 0, square = 0;
  // With an independent number more.
  Moments plus(double mean, double variance, double likely) const {
    return {likely * chance, likely * (sum + chance * mean),
            likely * (square + 2 * sum * mean + chance * (variance + mean * mean))};
  }
  void operator+=(const Moments& other) {
    chance += other.chance;
    sum += other.sum;
    square += other.square;
  }
};

}  // namespace

void WeightedScatter::add_day(Chance chance, const std::vector<WeightedElement>& elements) {
  if (!has_days_ && !elements.empty()) from_ = elements.front().kept->mean();
  has_days_ = true;
  std::map<Difficulty, Moments> parts{{Difficulty(), {chance, 0, 0}}};
  for (const WeightedElement& element : elements) {
    const double mean = element.kept->mean() - from_, spread = element.kept->deviation();
    std::map<Difficulty, Moments> after;
    const auto credit = [&](const auto& before, Difficulty credited, double likely) {
      if (!(likely > 0)) return;
      const auto& [difficulty, part] = before;
      const double weight = binary(credited);
      after[difficulty + credited] += part.plus(weight * mean, weight * weight * spread * spread, likely);
    };
    for (const auto& before : parts) {
      credit(before, element.credited.declared, 1 - element.credited.chance);
      credit(before, element.credited.base, element.credited.chance);
    }
    parts = std::move(after);
  }
  for (const auto& [difficulty, part] : parts) {
    const double divisor = binary(difficulty);
    whole_ += part.chance;
    mean_ += part.sum / divisor;
    squares_ += part.square / (divisor * divisor);
  }
}

double WeightedScatter::deviation() const {
  if (!(whole_ > 0)) return 0;
  const double mean = mean_ / whole_, variance = squares_ / whole_ - mean * mean;
  const int kept = rule_.combine == Combine::mean ? rule_.judges - rule_.drop_high - rule_.drop_low : 1;
  return std::sqrt(std::max(variance, 0.0)) * binary(*rule_.weight) / kept;
}

}  // namespace landdrill
