// Fractions and rounding, held against an independent exact rational: Boost.Multiprecision's cpp_rational.
#include <gtest/gtest.h>

#include <boost/multiprecision/cpp_int.hpp>
#include <random>

#include "kit.h"
#include "tables/decimal.h"

namespace landdrill {
namespace {

using boost::multiprecision::cpp_int;
using boost::multiprecision::cpp_rational;
using test::d;
using test::exact;

TEST(Exact, WorksOutFractionsWithoutLoss) {
  EXPECT_EQ(exact("20") / exact("3") * exact("3"), exact("20"));
  EXPECT_EQ(exact("2") / exact("3") * exact("1.5"), exact("1"));
  EXPECT_EQ(exact("1") / exact("-3") * exact("-3"), exact("1"));
  EXPECT_EQ(exact("25") / exact("4"), exact("6.25"));
  EXPECT_EQ(exact("1") / exact("3") + exact("1") / exact("6"), exact("0.5"));
  EXPECT_EQ(exact("0") / exact("7"), exact("0"));
  EXPECT_TRUE((exact("0.5") - exact("0.5")).is_zero());
  EXPECT_FALSE((exact("2") / exact("3")).decimal());
  EXPECT_EQ((exact("2") / exact("8")).decimal(), d("0.25"));
}

TEST(Exact, IsOrderedByItsValue) {
  EXPECT_LT(exact("1") / exact("3"), exact("0.333334"));
  EXPECT_GT(exact("1") / exact("3"), exact("0.333333"));
  EXPECT_EQ(exact("1") / exact("4"), exact("0.25"));
  EXPECT_LT(exact("-1") / exact("3"), exact("-0.333333"));
}

TEST(Exact, ThrowsRatherThanBeWrong) {
  Exact number = exact("8999999999999.999999");
  EXPECT_THROW(
      {
        for (int i = 0; i < 10; ++i) number = number * exact("8999999999999.999999");
      },
      Overflow);
  EXPECT_THROW(round(exact("9000000000000") * exact("2"), 2, Rounding::half_up), Overflow);
}

TEST(Rounding, TreatsTiesAndSignsAsItsWordSays) {
  struct Row {
    const char *value, *half_up, *half_even, *down, *up;
  };
  const Row table[] = {{"0.125", "0.13", "0.12", "0.12", "0.13"},
                       {"0.135", "0.14", "0.14", "0.13", "0.14"},
                       {"-0.125", "-0.13", "-0.12", "-0.12", "-0.13"},
                       {"-0.135", "-0.14", "-0.14", "-0.13", "-0.14"},
                       {"0.1249", "0.12", "0.12", "0.12", "0.13"},
                       {"0.1251", "0.13", "0.13", "0.12", "0.13"},
                       {"-0.1249", "-0.12", "-0.12", "-0.12", "-0.13"},
                       {"-0.1251", "-0.13", "-0.13", "-0.12", "-0.13"},
                       {"0.12", "0.12", "0.12", "0.12", "0.12"},
                       {"-0.12", "-0.12", "-0.12", "-0.12", "-0.12"},
                       {"0.005", "0.01", "0", "0", "0.01"},
                       {"-0.005", "-0.01", "0", "0", "-0.01"},
                       {"0.000001", "0", "0", "0", "0.01"},
                       {"0", "0", "0", "0", "0"}};
  for (const Row& row : table) {
    const Exact value = exact(row.value);
    EXPECT_EQ(round(value, 2, Rounding::half_up).text(), row.half_up) << row.value;
    EXPECT_EQ(round(value, 2, Rounding::half_even).text(), row.half_even) << row.value;
    EXPECT_EQ(round(value, 2, Rounding::down).text(), row.down) << row.value;
    EXPECT_EQ(round(value, 2, Rounding::up).text(), row.up) << row.value;
  }
}

TEST(Rounding, GoesToTheNearestStep) {
  EXPECT_EQ(round_to_step(exact("7.375"), d("0.25"), Rounding::half_up).text(), "7.5");
  EXPECT_EQ(round_to_step(exact("7.375"), d("0.25"), Rounding::half_even).text(), "7.5");
  EXPECT_EQ(round_to_step(exact("7.125"), d("0.25"), Rounding::half_even).text(), "7");
  EXPECT_EQ(round_to_step(exact("22") / exact("3"), d("0.1"), Rounding::half_up).text(), "7.3");
  EXPECT_EQ(round_to_step(exact("7"), d("3"), Rounding::up).text(), "9");
}

// ---- against cpp_rational ----

cpp_rational rational(Decimal number) {
  return cpp_rational(cpp_int(number.units()), cpp_int(Decimal::one));
}

Exact exact(const cpp_rational& number) {
  return exact(number.str());
}

cpp_int floor_of(const cpp_rational& number) {
  const cpp_int above = numerator(number), below = denominator(number);
  cpp_int quotient = above / below;
  if (above < 0 && quotient * below != above) quotient -= 1;
  return quotient;
}

// Rounding by its definition, on the number line and not on digits.
cpp_rational rounded(const cpp_rational& value, const cpp_rational& step, Rounding rounding) {
  const cpp_rational steps = value / step;
  const cpp_int below = floor_of(steps);
  const cpp_rational from_below = steps - cpp_rational(below);
  if (from_below == 0) return value;
  const bool negative = value < 0;
  const cpp_int towards_zero = negative ? cpp_int(below + 1) : below,
                away = negative ? below : cpp_int(below + 1);
  const cpp_rational half(1, 2);
  const bool nearer_below = from_below < half;
  const cpp_int nearest = nearer_below ? below : cpp_int(below + 1);
  const bool tie = from_below == half;
  cpp_int chosen;
  switch (rounding) {
    case Rounding::half_up:
      chosen = tie ? away : nearest;
      break;
    case Rounding::half_even:
      chosen = tie ? (below % 2 == 0 ? below : cpp_int(below + 1)) : nearest;
      break;
    case Rounding::down:
      chosen = towards_zero;
      break;
    case Rounding::up:
      chosen = away;
      break;
  }
  return cpp_rational(chosen) * step;
}

class Numbers {
 public:
  // Of all sizes, with few and with many places.
  Decimal next(std::int64_t most_units) {
    std::uniform_int_distribution<std::int64_t> units(-most_units, most_units);
    std::uniform_int_distribution<int> places(0, 6);
    std::int64_t grain = 1;
    for (int i = places(random_); i < 6; ++i) grain *= 10;
    return Decimal::from_units(units(random_) / grain * grain);
  }
  int between(int least, int most) { return std::uniform_int_distribution<int>(least, most)(random_); }

 private:
  std::mt19937_64 random_{20'260'414};
};

constexpr std::int64_t hundred = 100 * Decimal::one;

TEST(ExactLaw, SumsAndProductsAreThoseOfARational) {
  Numbers numbers;
  int done = 0;
  for (int i = 0; i < 30'000; ++i) {
    const Decimal a = numbers.next(hundred), b = numbers.next(hundred), c = numbers.next(hundred);
    if (b == Decimal() || c == Decimal()) continue;
    const Exact left = Exact(a) / Exact(b), right = Exact(b) / Exact(c);
    const cpp_rational r_left = rational(a) / rational(b), r_right = rational(b) / rational(c);
    ASSERT_EQ(left + right, exact(r_left + r_right)) << a.text() << " " << b.text() << " " << c.text();
    ASSERT_EQ(left - right, exact(r_left - r_right)) << a.text() << " " << b.text() << " " << c.text();
    ASSERT_EQ(left * right, exact(r_left * r_right)) << a.text() << " " << b.text() << " " << c.text();
    ASSERT_EQ(left / right, exact(r_left / r_right)) << a.text() << " " << b.text() << " " << c.text();
    ASSERT_EQ(left < right, r_left < r_right) << a.text() << " " << b.text() << " " << c.text();
    ASSERT_EQ(left == right, r_left == r_right) << a.text() << " " << b.text() << " " << c.text();
    ++done;
  }
  EXPECT_GT(done, 25'000);
}

TEST(ExactLaw, RoundingIsThatOfARational) {
  Numbers numbers;
  int ties = 0;
  for (int i = 0; i < 50'000; ++i) {
    const Decimal a = numbers.next(hundred);
    const Decimal divisor = Decimal::whole(numbers.between(1, 16));
    const Exact value = Exact(a) / Exact(divisor);
    const cpp_rational r = rational(a) / rational(divisor);
    const int places = numbers.between(0, 6);
    cpp_rational step(1);
    for (int place = 0; place < places; ++place) step /= 10;
    ties += denominator(cpp_rational(r / step)) == 2;
    for (Rounding rounding : {Rounding::half_up, Rounding::half_even, Rounding::down, Rounding::up}) {
      ASSERT_EQ(rational(round(value, places, rounding)), rounded(r, step, rounding))
          << a.text() << " / " << divisor.text() << " to " << places << " " << word_of(rounding);
    }
  }
  EXPECT_GT(ties, 1'000);
}

TEST(ExactLaw, StepsAreThoseOfARational) {
  Numbers numbers;
  for (int i = 0; i < 20'000; ++i) {
    const Decimal a = numbers.next(hundred), step = Decimal::from_units(numbers.between(1, 3'000'000));
    const Decimal divisor = Decimal::whole(numbers.between(1, 9));
    const Exact value = Exact(a) / Exact(divisor);
    for (Rounding rounding : {Rounding::half_up, Rounding::half_even, Rounding::down, Rounding::up}) {
      ASSERT_EQ(rational(round_to_step(value, step, rounding)),
                rounded(rational(a) / rational(divisor), rational(step), rounding))
          << a.text() << " / " << divisor.text() << " in steps of " << step.text();
    }
  }
}

// Whatever the size of the numbers, the result is right or there is none.
TEST(ExactLaw, LargeNumbersAreRightOrRefused) {
  Numbers numbers;
  int right = 0, refused = 0;
  for (int i = 0; i < 50'000; ++i) {
    const Decimal a = numbers.next(9'000'000'000'000'000'000), b = numbers.next(9'000'000'000'000'000'000);
    const Decimal c = numbers.next(i % 2 == 0 ? 9'000'000'000'000'000'000 : hundred);
    if (b == Decimal() || c == Decimal()) continue;
    try {
      const Exact value = Exact(a) / Exact(b) * Exact(c) - Exact(b) / Exact(c);
      const Decimal cut = round(value, 6, Rounding::down);
      const cpp_rational r = rational(a) / rational(b) * rational(c) - rational(b) / rational(c);
      ASSERT_EQ(rational(cut), rounded(r, cpp_rational(1, 1'000'000), Rounding::down));
      ++right;
    } catch (const Overflow&) {
      ++refused;
    }
  }
  EXPECT_GT(right, 100);
  EXPECT_GT(refused, 100);
}

}  // namespace
}  // namespace landdrill
