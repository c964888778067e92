// The parts of the page about a score, top to bottom. Only pages/score*.cpp include this.
#pragma once

#include "engine/report/page.h"
#include "engine/score/account.h"

namespace landdrill::report {

// The table of elements, impression, sync, penalties and total that people read, and whether it says how many points
// are left on each line.
void put_score_tables(PageParts& page, const Account& account);
bool shows_left_points(const Account& account);
// Below it: the worst line, base marks, the result as announced, where marks come from.
void put_score_notes(PageParts& page, const Account& account);
// The same amounts for programs, a table for each kind of line.
void put_amounts(PageParts& page, const Account& account);
// Each judge's mark, and whether it was kept; for programs.
void put_judges(PageParts& page, const Account& account);
// From estimate to result, step by step and by cause.
void put_bridge(PageParts& page, const Account& account);
void put_time(PageParts& page, const Account& account);

}  // namespace landdrill::report
