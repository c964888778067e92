// What a routine is worth, line by line, beside a panel: the sheet that a coach pins on the wall.
//
//   render_text(score_page(account, objections), {})
//
//   Harbour Lights
//   Duet, free, by Kingfisher club league 2026
//      no  element                 difficulty    mark   points     left
//   >   2  Undertow, hybrid              5.25    7.25  38.0625  14.4375
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/report/page.h"
#include "engine/report/pages/asked.h"
#include "engine/score/account.h"
#include "engine/score/panel.h"
#include "grammar/diagnostics.h"

namespace landdrill::report {

// Words for the pieces of an account.
//
//   words_of(*line.rests_on)     // "run of 2026-05-07", "mean of 3 runs", "expected", "no mark yet"
//   named(line)                  // "2 Undertow", or "2 Hybrid" for an element without a title

std::string words_of(const RestsOn& rests_on);
std::string named(const ElementLine& line);
std::string text_of(const std::optional<PanelMark>& mark);
// Whole sentences: "element 2 has no expected mark: add `expect`, or a run".
std::vector<std::string> missing_sentences(const Account& account);

// One routine as --option, --runs and --panel ask for it. `messages`: about its sheet in `file`.
Answer score(const Asked& asked, const Routine& routine, const Diagnostics& messages,
             std::string_view file = {});

// `objections`: the warnings about this sheet, what the rules of the event would object to. `file`: the sheet's, may be
// empty.
Page score_page(const Account& account, const Diagnostics& objections = {}, std::string_view file = {});
// Of a sheet that is not scored, for programs: what is wrong with it.
Page refused_page(std::string_view file, const Diagnostics& messages);

}  // namespace landdrill::report
