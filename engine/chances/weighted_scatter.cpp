#include "engine/chances/weighted_scatter.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "engine/chances/odds.h"
#include "tables/binary.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {
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
