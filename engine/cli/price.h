// What the options of a command line wish of a routine: which options of its elements, which runs, which
// panel.
//
//   Priced priced = price_wish(call, routine);    // priced.wish, priced.panel; or priced.mistake
#pragma once

#include <optional>
#include <string>

#include "engine/cli/call.h"
#include "engine/score.h"

namespace landdrill::cli {

struct PriceWish {
  Wish wish;
  std::optional<std::size_t> panel;  // index into routine.panels
  std::string mistake;               // what was asked for and is not in the routine; empty when all is well
};

// `strict`: a run, panel or option that the routine does not have is a mistake. Else (for one of many
// routines) only what it has is heeded. The wish's date lives as long as the call.
PriceWish price_wish(const Call& call, const Routine& routine, bool strict);

// Prints a mistake of the command line; Exit::usage.
Exit misused(Call& call, const std::string& mistake);

}  // namespace landdrill::cli
