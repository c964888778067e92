// What a report may claim: how often by chance alone, and what it grades by. Rows of data/usual-claims.csv, built into the
// program; no value set has any of its own, so that no edition of the rules changes what its panels are told.
//
//   claim("judge-constant")     // 4
#pragma once

#include <string_view>

#include "tables/decimal.h"

namespace landdrill {

Decimal claim(std::string_view code);  // that has a row

}  // namespace landdrill
