#include "engine/chances/line_odds.h"

#include <cmath>
#include <limits>

#include "engine/chances/odds.h"
#include "engine/chances/total_odds.h"
#include "engine/routine/routine.h"
#include "tables/binary.h"
#include "tables/decimal.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {
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
