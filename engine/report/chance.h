// Chances, means and the like as a coach reads them; and exact amounts shortened for the eye.
//
//   per_cent(0.1834)               // "18.3 %"
//   times_in_words(0.1834)         // "about 2 times in 10"
//   to_places(231.4567, 2)         // "231.46"
#pragma once

#include <string>
#include <string_view>

#include "engine/chances/odds.h"
#include "engine/chances/risk.h"
#include "engine/report/render_json.h"
#include "tables/decimal.h"

namespace landdrill::report {

// To a tenth; what is less than that from never or always says so instead of pretending to be one of them.
std::string per_cent(Chance chance);
// "about 2 times in 10", "about 1 time in 40", "all but about 1 time in 40"; 0 and 1: "never", "always".
std::string times_in_words(Chance chance);
std::string to_places(double amount, int places);
// Ties away from zero; never "-0.00".
std::string to_places(Decimal amount, int places);
// "12 %", "33.33 %": a chance that was given, in per cent.
std::string given_per_cent(Decimal percent);
// "from `slip` in the sheet", "from the run-throughs"; `nothing` when nothing says how likely the base mark
// is.
std::string_view source_of(const BaseChance& chance, std::string_view nothing);

}  // namespace landdrill::report
