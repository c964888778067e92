// The tables of a panel judge by judge, pair by pair, and of all judges together; judges.h is the door.
#pragma once

#include "engine/judging/panel_view.h"
#include "engine/report/page.h"

namespace landdrill::report {

void put_judges_table(const PanelView& view, PageParts& page);
// Those furthest apart; all of them in full.
void put_pairs_table(const PanelView& view, Seen seen, PageParts& page);
void put_limits_table(const PanelView& view, PageParts& page);
void put_agreement(const PanelView& view, Seen seen, PageParts& page);

}  // namespace landdrill::report
