// What the options of a command line wish of a routine: which options of its elements, which runs, which
// panel.
//
//   PriceWish wish = price_wish(call, routine);    // wish.wish, wish.panel; or wish.mistake
#pragma once

#include <optional>
#include <string>

#include "engine/cli/call.h"
#include "engine/score/score.h"

namespace landdrill::cli {

struct PriceWish {
  Wish wish;
  std::optional<std::size_t> panel;  // index into routine.panels
  std::string mistake;               // what was asked for and cannot be; empty when all is well
  std::string not_here;  // what was asked for and this routine does not have: the wish goes without it
};

// The wish's date lives as long as the call.
PriceWish price_wish(const Call& call, const Routine& routine);
// For a single routine: a wish that it cannot meet in full is a mistake.
PriceWish whole_price_wish(const Call& call, const Routine& routine);

// Prints a mistake of the command line; Exit::usage.
Exit misused(Call& call, const std::string& mistake);

}  // namespace landdrill::cli
