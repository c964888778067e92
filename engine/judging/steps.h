// A difference of marks in steps of their scale, as it is said.
//
//   steps_in_words(0.12, *Decimal::parse("0.25"))     // "half a step"
#pragma once

#include <string>

#include "tables/decimal.h"

namespace landdrill {

// To the nearest half step; empty below a quarter of one.
std::string steps_in_words(double marks, Decimal step);

}  // namespace landdrill
