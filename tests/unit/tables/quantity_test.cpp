// Marks, difficulties, points and factors: only the sums and products that the rules name exist.
#include "tables/quantity.h"

#include <gtest/gtest.h>

#include "kit.h"

namespace landdrill {
namespace {

using test::d;

template <class A, class B>
concept HaveSum = requires(A a, B b) {
  a + b;
};
template <class A, class B>
concept HaveDifference = requires(A a, B b) {
  a - b;
};
template <class A, class B>
concept HaveProduct = requires(A a, B b) {
  a* b;
};
template <class A, class B>
concept AreComparable = requires(A a, B b) {
  a < b;
};

static_assert(HaveSum<Mark, Mark> && HaveSum<Points, Points> && HaveDifference<Points, Points>);
static_assert(!HaveSum<Mark, Difficulty> && !HaveSum<Mark, Points> && !HaveSum<Difficulty, Factor>);
static_assert(!HaveDifference<Mark, Difficulty> && !HaveDifference<Points, Mark>);
static_assert(!HaveSum<Mark, Decimal> && !HaveSum<Mark, int> && !HaveSum<Mark, double>);
static_assert(HaveProduct<Mark, Difficulty> && HaveProduct<Mark, Factor> && HaveProduct<Exact, Factor>);
static_assert(!HaveProduct<Mark, Mark> && !HaveProduct<Points, Points> &&
              !HaveProduct<Difficulty, Difficulty>);
static_assert(AreComparable<Mark, Mark> && !AreComparable<Mark, Difficulty>);
static_assert(!std::is_convertible_v<Decimal, Mark> && !std::is_convertible_v<Mark, Difficulty>);
static_assert(!std::is_constructible_v<Mark, double> && !std::is_constructible_v<Decimal, double>);
static_assert(!std::is_constructible_v<Mark, Difficulty> && !std::is_constructible_v<Mark, int>);

TEST(Quantity, AddsToItsOwnKind) {
  Mark mark(d("7.25"));
  mark += Mark(d("0.5"));
  EXPECT_EQ(mark.text(2), "7.75");
  EXPECT_EQ((mark - Mark(d("8"))).text(), "-0.25");
  EXPECT_LT(mark, Mark(d("7.8")));
}

TEST(Quantity, MultipliesMarksByWhatTheRulesName) {
  EXPECT_EQ(Mark(d("7.5")) * Difficulty(d("2.3")), test::exact("17.25"));
  EXPECT_EQ(Mark(d("7.5")) * Difficulty(d("2.3")) * Factor(d("0.6")), test::exact("10.35"));
  EXPECT_EQ(Mark(d("7.5")) * Factor(d("4")), test::exact("30"));
}

}  // namespace
}  // namespace landdrill
