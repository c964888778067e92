// The totals of a routine alone, as the account has them but without its story: for long streams of sheets.
//
//   totals(routine, wish, 0).estimate      // "213.6125"
#pragma once

#include <optional>
#include <string>

#include "engine/score.h"

namespace landdrill::cli {

// Exact texts; empty for what is not there.
struct Totals {
  std::string difficulty, estimate, recorded, difference, announced;
};
Totals totals(const Routine& routine, const Wish& wish, std::optional<std::size_t> panel);

}  // namespace landdrill::cli
