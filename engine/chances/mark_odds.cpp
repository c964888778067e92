#include "engine/chances/mark_odds.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <limits>
#include <numeric>

#include "engine/chances/odds.h"
#include "engine/chances/total_odds.h"
#include "engine/routine/routine.h"
#include "tables/binary.h"
#include "tables/decimal.h"
#include "tables/quantity.h"
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

namespace {

KeptMarks kept_marks(const PanelRule& rule, Decimal sum) {
  return {Mark(sum), rule.judges - rule.drop_high - rule.drop_low};
}

// How many there are when each comes by itself, at this average.
TakenOff poisson(Decimal average, Points each) {
  constexpr Chance rest_cut = 1e-17;
  const Chance mean = binary(average);
  std::vector<Odds::Case> cases;
  Chance chance = std::exp(-mean), rest = 1;
  for (int count = 0; rest >= rest_cut; ++count) {
    cases.push_back({-(each * count).value(), chance});
    chance *= mean / (count + 1);
    // From here on each is at most so much of the one before.
    const Chance shrinks = mean / (count + 2);
    rest = shrinks < 1 ? chance / (1 - shrinks) : 1;
  }
  TakenOff result{{}, {}, rest};
  result.odds = without_tails(Odds(std::move(cases)), not_worth_reckoning, result.lost);
  return result;
}

// Exactly, whatever the work: nothing here has many cases.
TakenOff all_taken_off(const std::vector<TakenOff>& several) {
  World world{1, {}};
  TakenOff result;
  for (const TakenOff& one : several) {
    world.pieces.push_back(&one.odds);
    result.lost += one.lost;
  }
  TotalOdds total = total_odds({&world, 1}, {std::nullopt, std::numeric_limits<std::int64_t>::max() / 1000});
  result.odds = std::move(total.odds);
  result.bound = total.bound;
  result.lost += total.lost;
  return result;
}

}  // namespace

const LikelyMarks& KeptMemory::kept(const PanelRule& rule, Decimal expected, Decimal spread) {
  const auto [known, is_new] = known_.try_emplace(
      {rule.judges, rule.drop_high, rule.drop_low, rule.step, rule.least, rule.most, expected, spread});
  LikelyMarks& marks = known->second;
  if (!is_new) return marks;
  const Odds one = without_tails(mark_odds(rule, expected, spread), not_worth_reckoning, marks.lost);
  marks.lost *= rule.judges;
  marks.odds = without_tails(kept_odds(rule, one), not_worth_reckoning, marks.lost);
  return marks;
}

Credited credited(const Routine& routine, const Risked& risked, std::size_t element) {
  const Difficulty base = routine.elements[element].kind->base.value_or(Difficulty());
  return {risked.showing.elements[element].declared, base, binary(risked.chances[element].percent) / 100};
}

Odds element_odds(const PanelRule& rule, const Odds& kept, const Credited& credited) {
  if (rule.use == Use::plain) return plain_odds(rule, kept);
  std::vector<Odds::Case> cases;
  for (const Odds::Case& one : kept.cases()) {
    const KeptMarks marks = kept_marks(rule, one.value);
    const Chance declared = one.chance * (1 - credited.chance), base = one.chance * credited.chance;
    if (declared > 0) cases.push_back({element_points(rule, marks, credited.declared).value(), declared});
    if (base > 0) cases.push_back({element_points(rule, marks, credited.base).value(), base});
  }
  return Odds(std::move(cases));
}

Odds plain_odds(const PanelRule& rule, const Odds& kept) {
  std::vector<Odds::Case> cases;
  for (const Odds::Case& one : kept.cases()) {
    cases.push_back({plain_points(rule, kept_marks(rule, one.value)).value(), one.chance});
  }
  return Odds(std::move(cases));
}

TakenOff sync_odds(const std::vector<ExpectedErrors>& errors) {
  std::vector<TakenOff> classes;
  for (const ExpectedErrors& one : errors) classes.push_back(poisson(one.number, *one.sync->points));
  return all_taken_off(classes);
}

TakenOff penalty_odds(const std::vector<ExpectedPenalty>& penalties) {
  std::vector<TakenOff> each;
  for (const ExpectedPenalty& one : penalties) {
    const std::int64_t whole = one.number.units() / Decimal::one;
    const Chance more = binary(one.number - Decimal::whole(whole));
    const Points points = *one.penalty->points;
    each.push_back(
        {Odds({{-(points * whole).value(), 1 - more}, {-(points * (whole + 1)).value(), more}}), {}, 0});
  }
  return all_taken_off(each);
}

}  // namespace landdrill
