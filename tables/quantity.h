// The kinds of number a score is made of. A bare number is never a score.
//
//   Mark kept = Mark(d("7.5"));  Exact merit = kept * Difficulty(d("2.3"));   // 17.25
//   kept + Difficulty(d("2.3"))                                               // does not compile
//
// Only the sums and products that the rules name exist.
#pragma once

#include "tables/decimal.h"

namespace landdrill {

// One kind of number over an exact decimal; adds to and compares with its own kind only.
template <class Kind>
class Quantity {
 public:
  constexpr Quantity() = default;
  explicit constexpr Quantity(Decimal value) : value_(value) {}
  constexpr Decimal value() const { return value_; }
  std::string text(int at_least = 0) const { return value_.text(at_least); }

  friend constexpr auto operator<=>(Quantity, Quantity) = default;
  friend Quantity operator+(Quantity a, Quantity b) { return Quantity(a.value_ + b.value_); }
  friend Quantity operator-(Quantity a, Quantity b) { return Quantity(a.value_ - b.value_); }
  friend Quantity operator*(Quantity a, std::int64_t times) { return Quantity(a.value_ * times); }
  Quantity& operator+=(Quantity other) { return *this = *this + other; }
  Quantity& operator-=(Quantity other) { return *this = *this - other; }

 private:
  Decimal value_;
};

using Mark = Quantity<struct MarkKind>;              // what a judge gives, usually 0 to 10
using Difficulty = Quantity<struct DifficultyKind>;  // what a part or an element is worth
using Points = Quantity<struct PointsKind>;          // what goes into the score
using Factor = Quantity<struct FactorKind>;          // what a rule multiplies by

inline Exact operator*(Mark mark, Difficulty difficulty) {
  return Exact(mark.value()) * Exact(difficulty.value());
}
inline Exact operator*(Mark mark, Factor factor) {
  return Exact(mark.value()) * Exact(factor.value());
}
inline Exact operator*(Exact merit, Factor factor) {
  return merit * Exact(factor.value());
}

}  // namespace landdrill
