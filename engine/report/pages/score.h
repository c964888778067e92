// What a routine is worth, line by line, beside a panel: the sheet that a coach pins on the wall.
//
//   render_text(score_page(account, objections), {})
//
//   Harbour Lights
//   Duet, free, by Kingfisher club league 2026
//      no  element                 difficulty    mark   points     left
//   >   2  Undertow, hybrid              5.25    7.25  38.0625  14.4375
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/report/page.h"
#include "engine/report/pages/asked.h"
#include "engine/report/pages/choosing.h"
#include "engine/routine/routine.h"
#include "engine/score/account.h"
#include "engine/score/panel.h"
#include "grammar/diagnostics.h"
#include "tables/quantity.h"

namespace landdrill::report {

// Words for the pieces of an account.
//
//   words_of(*line.rests_on)     // "run of 2026-05-07", "mean of 3 runs", "expected", "no mark yet"
//   named(line)                  // "2 Undertow", or "2 Hybrid" for an element without a title

std::string words_of(const RestsOn& rests_on);
std::string named(const ElementLine& line);
std::string text_of(const std::optional<PanelMark>& mark);

// One routine as --option, --runs and --panel ask for it. `messages`: about its sheet in `file`.
Answer score(const Asked& asked, const Routine& routine, const Diagnostics& messages,
             std::string_view file = {});

// `objections`: the warnings about this sheet, what the rules of the event would object to. `file`: the sheet's, may be
// empty. `to_expect`: the total with the risks counted in, where it is told.
Page score_page(Account account, const Diagnostics& objections = {}, std::string_view file = {},
                const std::optional<Points>& to_expect = {});
Page score_page(const Routine& routine, const PriceWish& price, const Diagnostics& messages,
                std::string_view file);
// Of a sheet that is not scored, for programs: what is wrong with it.
Page refused_page(std::string_view file, const Diagnostics& messages);

// The parts of the page about a score, top to bottom (score.cpp, score_table.cpp, score_amounts.cpp).

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
