#include "engine/chances/odds.h"

#include <algorithm>
#include <cassert>
#include <cmath>

#include "tables/binary.h"

namespace landdrill {
namespace {

// A sum that does not lose the small ones among many (Neumaier).
class LongSum {
 public:
  void add(double term) {
    const double sum = sum_ + term;
    rest_ += std::abs(sum_) >= std::abs(term) ? (sum_ - sum) + term : (term - sum) + sum_;
    sum_ = sum;
  }
  double value() const { return sum_ + rest_; }

 private:
  double sum_ = 0, rest_ = 0;
};

Chance sum_of_chances(std::span<const Odds::Case> cases) {
  LongSum sum;
  for (const Odds::Case& one : cases) sum.add(one.chance);
  return sum.value();
}

std::span<const Odds::Case>::iterator first_not_below(std::span<const Odds::Case> cases, Decimal value) {
  return std::lower_bound(cases.begin(), cases.end(), value,
                          [](const Odds::Case& one, Decimal wanted) { return one.value < wanted; });
}

bool rising(const std::vector<Odds::Case>& cases) {
  return std::adjacent_find(cases.begin(), cases.end(), [](const Odds::Case& a, const Odds::Case& b) {
           return a.value >= b.value;
         }) == cases.end();
}

void put_equal_together(std::vector<Odds::Case>& cases) {
  std::stable_sort(cases.begin(), cases.end(),
                   [](const Odds::Case& a, const Odds::Case& b) { return a.value < b.value; });
  std::size_t last = 0;
  for (std::size_t i = 1; i < cases.size(); ++i) {
    if (cases[i].value == cases[last].value) {
      cases[last].chance += cases[i].chance;
    } else {
      cases[++last] = cases[i];
    }
  }
  cases.resize(last + 1);
}

}  // namespace

Odds::Odds(std::vector<Case> cases) : cases_(std::move(cases)) {
  std::erase_if(cases_, [](const Case& one) { return !(one.chance > 0); });
  if (!rising(cases_)) put_equal_together(cases_);
}

Odds Odds::certain(Decimal value) {
  return Odds({{value, 1}});
}

Chance Odds::whole() const {
  return sum_of_chances(cases_);
}

double Odds::mean() const {
  LongSum sum;
  for (const Case& one : cases_) sum.add(one.chance * binary(one.value));
  return sum.value() / whole();
}

double Odds::deviation() const {
  const double middle = mean();
  LongSum squares;
  for (const Case& one : cases_) {
    const double off = binary(one.value) - middle;
    squares.add(one.chance * off * off);
  }
  return std::sqrt(squares.value() / whole());
}

Chance Odds::at_least(Decimal value) const {
  const auto from = first_not_below(cases(), value);
  return sum_of_chances({from, cases().end()});
}

Decimal Odds::quantile(Chance share) const {
  assert(!cases_.empty());
  // Chances that add up to the share but for their last bits reach it.
  constexpr Chance last_bits = 1e-14;
  const Chance wanted = share * whole() - last_bits;
  if (share >= 1) return cases_.back().value;
  LongSum so_far;
  for (const Case& one : cases_) {
    so_far.add(one.chance);
    if (so_far.value() >= wanted) return one.value;
  }
  return cases_.back().value;
}

Odds mixed(std::span<const WeighedOdds> several) {
  std::vector<Odds::Case> cases;
  for (const WeighedOdds& one : several) {
    for (const Odds::Case& each : one.odds->cases()) cases.push_back({each.value, one.chance * each.chance});
  }
  return Odds(std::move(cases));
}

Chance beats(const Odds& a, const Odds& b) {
  return beats_by_more_than(a, b, Decimal());
}

Chance beats_by_more_than(const Odds& a, const Odds& b, Decimal lead) {
  LongSum beaten, sum;
  auto next = b.cases().begin();
  for (const Odds::Case& one : a.cases()) {
    for (; next != b.cases().end() && next->value + lead < one.value; ++next) beaten.add(next->chance);
    sum.add(one.chance * beaten.value());
  }
  return sum.value();
}

Chance equals(const Odds& a, const Odds& b) {
  LongSum sum;
  auto next = b.cases().begin();
  for (const Odds::Case& one : a.cases()) {
    while (next != b.cases().end() && next->value < one.value) ++next;
    if (next != b.cases().end() && next->value == one.value) sum.add(one.chance * next->chance);
  }
  return sum.value();
}

}  // namespace landdrill
