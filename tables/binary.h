// The one way from an exact number into statistics and chances, which are binary floating point. There is no
// way back: what they say is told as a figure (figures.h), and never goes into a score.
//
//   binary(*Decimal::parse("7.25"))              // 7.25
//   binary_mean(Mark(*Decimal::parse("22")), 3)  // 7.3333333333333330
#pragma once

#include "tables/decimal.h"
#include "tables/quantity.h"

namespace landdrill {

inline double binary(Decimal number) {
  return static_cast<double>(number.units()) / static_cast<double>(Decimal::one);
}
template <class Kind>
double binary(Quantity<Kind> number) {
  return binary(number.value());
}

// The mean of `count` numbers that add up to `sum`: divided once, so that equal means are equal.
template <class Kind>
double binary_mean(Quantity<Kind> sum, std::int64_t count) {
  return static_cast<double>(sum.value().units()) / static_cast<double>(count * Decimal::one);
}

// In millionths, for what is worked out on the grid of all exact numbers.
inline double binary_millionths(Decimal number) {
  return static_cast<double>(number.units());
}

}  // namespace landdrill
