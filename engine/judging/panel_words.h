// What the view of a panel says to a coach: plain sentences, and a warning where there are too few marks for one. None is
// surer than its interval, and none names anybody where chance would do.
//
//   sentences_about(view)[0]     // "Judge 3 marks half a step lower than the others (0.05 to 0.36 marks)."
#pragma once

#include <string>
#include <vector>

#include "engine/judging/panel_figures.h"

namespace landdrill {

// About single judges first, then about the panel, then what to look at again.
std::vector<std::string> sentences_about(const PanelView& view);
std::vector<std::string> warnings_of(const PanelView& view);
// The same of the coefficients (agreement_words.cpp).
std::vector<std::string> sentences_about_agreement(const PanelView& view);
std::vector<std::string> warnings_about_agreement(const PanelView& view);

// "on lifts" for "Lift"; a title that has no such plural is quoted.
std::string on_kind(const std::string& title);
std::string things(const PanelView& view);  // "elements" or "aspects"

}  // namespace landdrill
