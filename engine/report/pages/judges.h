// Recorded panels judge by judge: plain sentences first, then each judge's marks; in full the coefficients.
//
//   render_text(*judges(Asked("judges"), panels), {})
//   //   Tarn Open, 2026-05-09: Duet, free
//   //   Execution: 7 elements, 5 judges
//   //    - Judge 4 marks a step higher than the others (0.10 to 0.45 marks).
//
// CSV has one number a row.
#pragma once

#include <vector>

#include "engine/judging/meets.h"
#include "engine/judging/panel_view.h"
#include "engine/report/page.h"
#include "engine/report/pages/asked.h"

namespace landdrill::report {

// Of these panels, put together as --same-judges says.
Answer judges(const Asked& asked, std::vector<SatPanel> panels);

// The parts of it (judges_tables.cpp): the tables of a panel judge by judge, pair by pair, and of all judges together.
void put_judges_table(const PanelView& view, PageParts& page);
// In full, and for programs.
void put_bias_table(const PanelView& view, PageParts& page);
void put_pairs_table(const PanelView& view, PageParts& page);
void put_limits_table(const PanelView& view, PageParts& page);
void put_agreement(const PanelView& view, PageParts& page);
// One number a row, in CSV alone: whom it is about and what it rests on.
void put_numbers(const PanelView& view, PageParts& page);

}  // namespace landdrill::report
