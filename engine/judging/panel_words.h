// What the view of a panel says to a coach: a plain sentence for each statistic, and a warning where there
// are too few marks for it.
//
//   steps_in_words(0.12, *Decimal::parse("0.25"))     // "half a step"
#pragma once

#include <string>
#include <vector>

#include "engine/judging/panel_figures.h"
#include "tables/decimal.h"

namespace landdrill {

// About single judges and pairs first, then about the panel.
std::vector<std::string> sentences_about(const PanelView& view);
std::vector<std::string> warnings_of(const PanelView& view);

// To the nearest half step; empty below a quarter of one.
std::string steps_in_words(double marks, Decimal step);
// "on lifts" for "Lift"; a title that has no such plural is quoted.
std::string on_kind(const std::string& title);

}  // namespace landdrill
