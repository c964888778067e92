// The tables of a panel judge by judge, pair by pair, and of all judges together; judges.h is the door.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "engine/judging/panel_view.h"
#include "engine/judging/statistics/agreement.h"
#include "engine/report/page.h"

namespace landdrill::report {

void put_judges_table(const PanelView& view, PageParts& page);
// Those furthest apart; all of them in full.
void put_pairs_table(const PanelView& view, Seen seen, PageParts& page);
void put_limits_table(const PanelView& view, PageParts& page);
void put_agreement(const PanelView& view, Seen seen, PageParts& page);

// The numbers of a panel for programs, whom each is about and what it rests on; judges.h is the door.

// The columns in CSV, with those of the meet around it.
extern const std::vector<std::string> judges_csv;

// How far all of them agree: "icc(2,1)", "w".
std::vector<std::pair<std::string, Statistic>> agreement_numbers(const PanelView& view);
// For programs with its interval and what it rests on.
Entry statistic_entry(std::string text, const Statistic& statistic);
// The same of each kind, under this name, where there are several.
Entry biases_by_kind(const std::vector<KindBias>& kinds, const char* name);
// One number a row, in CSV alone.
void put_numbers(const PanelView& view, PageParts& page);

}  // namespace landdrill::report
