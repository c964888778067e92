// A million random panels against exact fractions of another library (Boost.Multiprecision, cpp_rational),
// which share no line with the engine: marks dropped by taking them out one by one, multiplied as fractions,
// rounded from quotient and remainder.
#include <gtest/gtest.h>

#include <algorithm>
#include <boost/multiprecision/cpp_int.hpp>
#include <random>

#include "engine/score/score.h"

namespace landdrill {
namespace {

using boost::multiprecision::cpp_int;
using boost::multiprecision::cpp_rational;

constexpr unsigned seed = 20261125;
constexpr int panels = 1'000'000;
constexpr std::int64_t millionth = 1'000'000;

// A panel and what it marked, in hundredths and thousandths: the engine and the fractions are both made from
// it.
struct Dealt {
  std::vector<int> marks;  // hundredths; -1 for a judge who is missing
  int drop_high = 0, drop_low = 0;
  int difficulty = 0;  // hundredths
  int weight = 0;      // thousandths
  int step = 10;       // hundredths
  int places = 0;
  Rounding rounding = Rounding::half_up;
  bool sum = false;
  Missing missing = Missing::refuse;
};

class Dealer {
 public:
  int from(int least, int most) {
    return least + static_cast<int>(random_() % static_cast<unsigned>(most - least + 1));
  }

  Dealt panel() {
    Dealt dealt;
    const int judges = from(5, 9);
    dealt.drop_high = from(0, 2);
    dealt.drop_low = from(0, 2);
    dealt.step = std::array{10, 25, 50}[static_cast<std::size_t>(from(0, 2))];
    dealt.places = from(0, 6);
    dealt.rounding = static_cast<Rounding>(from(0, 3));
    dealt.sum = from(0, 1) == 1;
    dealt.difficulty = from(0, 999);
    dealt.weight = from(1, 12) * (from(0, 3) == 0 ? 125 : 100);
    for (int i = 0; i < judges; ++i) dealt.marks.push_back(from(0, 1000 / dealt.step) * dealt.step);
    if (judges > dealt.drop_high + dealt.drop_low + 1 && from(0, 9) == 0) {
      dealt.missing = from(0, 1) == 0 ? Missing::mean : Missing::fewer;
      dealt.marks[static_cast<std::size_t>(from(0, judges - 1))] = -1;
    }
    return dealt;
  }

 private:
  std::mt19937 random_{seed};
};

Decimal hundredths(int number) {
  return Decimal::from_units(number * (millionth / 100));
}

PanelRule rule_of(const Dealt& dealt) {
  PanelRule rule;
  rule.judges = static_cast<int>(dealt.marks.size());
  rule.drop_high = dealt.drop_high;
  rule.drop_low = dealt.drop_low;
  rule.combine = dealt.sum ? Combine::sum : Combine::mean;
  rule.step = hundredths(dealt.step);
  rule.most = Mark(Decimal::whole(10));
  rule.weight = Factor(Decimal::from_units(dealt.weight * (millionth / 1000)));
  rule.places = dealt.places;
  rule.rounding = dealt.rounding;
  rule.missing = dealt.missing;
  rule.missing_step = rule.step;
  return rule;
}

JudgeMarks marks_of(const Dealt& dealt) {
  JudgeMarks marks;
  for (const int mark : dealt.marks)
    marks.push_back(mark < 0 ? std::nullopt : std::optional(Mark(hundredths(mark))));
  return marks;
}

// ---- the same by fractions ----

cpp_int rounded(const cpp_rational& value, Rounding rounding) {
  const cpp_int top = numerator(value), bottom = denominator(value);
  cpp_int quotient = top / bottom;
  const cpp_int twice = 2 * (top % bottom);
  const bool over = twice > bottom, tie = twice == bottom;
  const bool away = rounding == Rounding::up          ? twice > 0
                    : rounding == Rounding::half_up   ? over || tie
                    : rounding == Rounding::half_even ? over || (tie && quotient % 2 == 1)
                                                      : false;
  return away ? quotient + 1 : quotient;
}

std::vector<int> given(const Dealt& dealt) {
  std::vector<int> marks;
  int sum = 0;
  for (const int mark : dealt.marks) {
    if (mark >= 0) marks.push_back(mark);
    sum += std::max(mark, 0);
  }
  if (dealt.missing != Missing::mean) return marks;
  const cpp_rational steps(sum, static_cast<int>(marks.size()) * dealt.step);
  marks.push_back(rounded(steps, dealt.rounding).convert_to<int>() * dealt.step);
  return marks;
}

cpp_rational combined_of(const Dealt& dealt) {
  std::vector<int> marks = given(dealt);
  for (int i = 0; i < dealt.drop_high; ++i) marks.erase(std::max_element(marks.begin(), marks.end()));
  for (int i = 0; i < dealt.drop_low; ++i) marks.erase(std::min_element(marks.begin(), marks.end()));
  int sum = 0;
  for (const int mark : marks) sum += mark;
  return cpp_rational(sum, 100 * (dealt.sum ? 1 : static_cast<int>(marks.size())));
}

// To the places, in millionths.
std::int64_t points_of(const cpp_rational& exact, const Dealt& dealt) {
  std::int64_t scale = 1;
  for (int i = 0; i < dealt.places; ++i) scale *= 10;
  return rounded(exact * scale, dealt.rounding).convert_to<std::int64_t>() * (millionth / scale);
}

cpp_rational weight_of(const Dealt& dealt) {
  return cpp_rational(dealt.weight, 1000);
}
cpp_rational difficulty_of(const Dealt& dealt) {
  return cpp_rational(dealt.difficulty, 100);
}

TEST(RandomPanels, AgreeWithExactFractionsAMillionTimes) {
  std::printf("seed %u, %d panels\n", seed, panels);
  Dealer dealer;
  int ties = 0;
  for (int i = 0; i < panels; ++i) {
    const Dealt dealt = dealer.panel();
    const PanelRule rule = rule_of(dealt);
    const KeptMarks kept = keep(rule, marks_of(dealt));
    const bool plain = i % 4 == 0;
    const Difficulty difficulty(hundredths(dealt.difficulty));
    const Points points = plain ? plain_points(rule, kept) : element_points(rule, kept, difficulty);
    const cpp_rational factor = plain ? weight_of(dealt) : difficulty_of(dealt) * weight_of(dealt);
    const cpp_rational exact = combined_of(dealt) * factor;
    ASSERT_EQ(points.value().units(), points_of(exact, dealt)) << "panel " << i;
    if (i % 64 == 0) {
      Dealt up = dealt, down = dealt;
      up.rounding = Rounding::half_up;
      down.rounding = Rounding::half_even;
      ties += points_of(exact, up) != points_of(exact, down);
    }
  }
  EXPECT_GT(ties, 100);  // or the roundings would not have been told apart
}

// A routine of a few elements that are weighted by difficulty, all under one rule.
TEST(RandomPanels, AgreeWithExactFractionsWhenWeighedByDifficulty) {
  Dealer dealer;
  for (int round = 0; round < 20'000; ++round) {
    const Dealt first = dealer.panel();
    PanelRule rule = rule_of(first);
    rule.use = Use::weighted;
    ValueSet set;
    const Event event;
    const Kind kind;
    Routine routine;
    routine.set = &set;
    routine.event = &event;
    Showing showing;
    cpp_rational merit = 0, difficulties = 0;
    for (int i = dealer.from(1, 5); i > 0; --i) {
      Dealt dealt = first;
      for (int& mark : dealt.marks) mark = mark < 0 ? mark : dealer.from(0, 1000 / first.step) * first.step;
      dealt.difficulty = dealer.from(1, 999);
      const Difficulty difficulty(hundredths(dealt.difficulty));
      routine.elements.push_back({i, {}, &kind, &rule, {}});
      showing.elements.push_back({difficulty, difficulty, false, keep(rule, marks_of(dealt))});
      merit += combined_of(dealt) * difficulty_of(dealt);
      difficulties += difficulty_of(dealt);
    }
    const Score result = score(routine, showing);
    ASSERT_EQ(result.total->value().units(), points_of(merit / difficulties * weight_of(first), first))
        << "round " << round;
  }
}

}  // namespace
}  // namespace landdrill
