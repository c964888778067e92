// Panels of the book scored again, beside what the coach could expect on their day.
//
//   panel_scores(swum)[0].totals.recorded      // 209.7167, by the values of that day
#pragma once

#include <string>
#include <vector>

#include "engine/score/account_notes.h"
#include "engine/score/totals.h"
#include "engine/season/as_swum.h"

namespace landdrill {

struct PanelScore {
  std::string date, title;
  Totals totals;
  Unmarked without_total, without_estimate;  // why there is none
};

// Of a sheet with a routine. An estimate rests on no run that came later than the panel.
std::vector<PanelScore> panel_scores(const Swum& swum);

}  // namespace landdrill
