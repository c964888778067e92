// What the options of a question wish of a routine: which options of its elements, which runs, which panel.
//
//   PriceWish wish = price_wish(asked, routine);    // wish.wish, wish.panel; or wish.mistake
#pragma once

#include <optional>
#include <string>

#include "engine/report/pages/asked.h"
#include "engine/routine/wish.h"
#include "engine/score/score.h"

namespace landdrill::report {

struct PriceWish {
  Wish wish;
  std::optional<std::size_t> panel;  // index into routine.panels
  std::string mistake;               // what was asked for and cannot be; empty when all is well
  std::string not_here;  // what was asked for and this routine does not have: the wish goes without it
};

// The wish's date lives as long as the question.
PriceWish price_wish(const Asked& asked, const Routine& routine);
// For a single routine: a wish that it cannot meet in full is a mistake.
PriceWish whole_price_wish(const Asked& asked, const Routine& routine);

}  // namespace landdrill::report
