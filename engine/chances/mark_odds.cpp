#include "engine/chances/mark_odds.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numeric>

#include "tables/binary.h"
#include "tables/decimal.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

// The chance that a standard normal number is at least `from`: exact far out, where 1 - erf is not.
Chance above(double from) {
  return std::erfc(from / std::sqrt(2.0)) / 2;
}

// The chance of [from, to), from the side on which both tails are small.
Chance between(double from, double to) {
  return from > 0 ? above(from) - above(to) : above(-to) - above(-from);
}

// The nearest step of the scale, half-way upwards, within the scale.
Decimal nearest(const PanelRule& rule, Decimal mark) {
  const Decimal least = rule.least.value();
  const Exact off(std::max(mark - least, Decimal()));
  return std::min(least + round_to_step(off, rule.step, Rounding::half_up), rule.most.value());
}

void scale_to_one(std::vector<Odds::Case>& cases) {
  const Chance whole = Odds(cases).whole();
  for (Odds::Case& one : cases) one.chance /= whole;
}

// The kept sums of the judges who are placed so far, in rising order of their marks.
class RisingMarks {
 public:
  RisingMarks(const PanelRule& rule, std::size_t highest)
      : rule_(rule), judges_(static_cast<std::size_t>(rule.judges)) {
    const auto kept = static_cast<std::size_t>(rule.judges - rule.drop_high - rule.drop_low);
    sums_.assign(judges_ + 1, std::vector<Chance>(kept * highest + 1));
    reach_.assign(judges_ + 1, {1, 0});
    sums_[0][0] = 1;
    reach_[0] = {0, 0};
    for (std::size_t of = 0; of <= judges_; ++of) {
      choose_.emplace_back(of + 1, 1.0);
      for (std::size_t n = 1; n < of; ++n) choose_[of][n] = choose_[of - 1][n - 1] + choose_[of - 1][n];
    }
  }

  // Any number of the judges left give `mark`, which is above all marks before.
  void place(std::size_t mark, Chance chance) {
    for (std::size_t to = judges_; to > 0; --to) {
      Chance all_give_it = 1;
      for (std::size_t n = 1; n <= to; ++n) {
        all_give_it *= chance;
        add(to - n, to, mark, all_give_it);
      }
    }
  }

  const std::vector<Chance>& all_placed() const { return sums_[judges_]; }

 private:
  // Of the judges at `from` ... `to` - 1 in rising order, how many are kept.
  std::size_t kept(std::size_t from, std::size_t to) const {
    const std::size_t first = std::max(from, static_cast<std::size_t>(rule_.drop_low));
    const std::size_t end = std::min(to, judges_ - static_cast<std::size_t>(rule_.drop_high));
    return end > first ? end - first : 0;
  }

  void add(std::size_t from, std::size_t to, std::size_t mark, Chance all_give_it) {
    const Chance factor = all_give_it * choose_[judges_ - from][to - from];
    const auto [low, high] = reach_[from];
    // Below this nothing is left of a number after it was added to any other.
    if (low > high || factor < 1e-100) return;
    const std::size_t more = kept(from, to) * mark;
    const Chance* const before = sums_[from].data();
    Chance* const after = sums_[to].data() + more;
    for (std::size_t sum = low; sum <= high; ++sum) after[sum] += factor * before[sum];
    auto& [to_low, to_high] = reach_[to];
    const bool empty = to_low > to_high;
    to_low = empty ? low + more : std::min(to_low, low + more);
    to_high = std::max(to_high, high + more);
  }

  const PanelRule& rule_;
  std::size_t judges_;
  std::vector<std::vector<Chance>> sums_;  // by judges placed, by kept sum
  std::vector<std::pair<std::size_t, std::size_t>> reach_;
  std::vector<std::vector<double>> choose_;
};

// The widest step on which all marks lie, counted from the lowest.
std::int64_t common_step(std::span<const Odds::Case> marks) {
  std::int64_t step = 0;
  for (const Odds::Case& one : marks) step = std::gcd(step, (one.value - marks.front().value).units());
  return step == 0 ? 1 : step;
}

}  // namespace

Odds mark_odds(const PanelRule& rule, Decimal expected, Decimal spread) {
  if (spread.units() == 0) return Odds::certain(nearest(rule, expected));
  const double unit = binary_millionths(spread), half = binary_millionths(rule.step) / 2;
  const std::int64_t step = rule.step.units(), least = rule.least.value().units();
  const std::int64_t most = rule.most.value().units();
  std::vector<Odds::Case> cases;
  for (std::int64_t mark = least; mark <= most; mark += step) {
    const double middle = binary_millionths(Decimal::from_units(mark) - expected);
    const double from = mark == least ? -HUGE_VAL : (middle - half) / unit;
    const double to = mark == most ? HUGE_VAL : (middle + half) / unit;
    cases.push_back({Decimal::from_units(mark), between(from, to)});
  }
  scale_to_one(cases);
  return Odds(std::move(cases));
}

Odds kept_odds(const PanelRule& rule, const Odds& mark) {
  const std::span<const Odds::Case> marks = mark.cases();
  assert(!marks.empty() && rule.judges > rule.drop_high + rule.drop_low);
  const std::int64_t step = common_step(marks);
  const Decimal lowest = marks.front().value;
  const auto steps_of = [&](const Odds::Case& one) {
    return static_cast<std::size_t>((one.value - lowest).units() / step);
  };
  RisingMarks rising(rule, steps_of(marks.back()));
  for (const Odds::Case& one : marks) rising.place(steps_of(one), one.chance);
  const Decimal base = lowest * (rule.judges - rule.drop_high - rule.drop_low);
  std::vector<Odds::Case> cases;
  for (std::size_t sum = 0; sum < rising.all_placed().size(); ++sum) {
    cases.push_back(
        {base + Decimal::from_units(step) * static_cast<std::int64_t>(sum), rising.all_placed()[sum]});
  }
  return Odds(std::move(cases));
}

Odds day_odds(Decimal spread, Decimal step) {
  assert(step.units() > 0);
  constexpr int spreads = 5;
  const std::int64_t steps = spread.units() * spreads / step.units();
  std::vector<Odds::Case> cases;
  for (std::int64_t at = -steps; at <= steps; ++at) {
    const Decimal shift = step * at;
    const double off = at == 0 ? 0 : binary_millionths(shift) / binary_millionths(spread);
    cases.push_back({shift, std::exp(-off * off / 2)});
  }
  scale_to_one(cases);
  return Odds(std::move(cases));
}

}  // namespace landdrill
