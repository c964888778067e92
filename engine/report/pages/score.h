// What a routine is worth, line by line, beside a panel: the sheet that a coach pins on the wall.
//
//   render_text(score_page(account, objections), {})
//
//   Harbour Lights
//   Duet, free, by Kingfisher club league 2026
//      no  element                 difficulty    mark   points     left
//   >   2  Undertow, hybrid              5.25    7.25  38.0625  14.4375
#pragma once

#include <string_view>

#include "engine/report/page.h"
#include "engine/report/pages/asked.h"
#include "engine/score/account.h"
#include "grammar/diagnostics.h"

namespace landdrill::report {

// One routine as --option, --runs and --panel ask for it. `messages`: about its sheet in `file`.
Answer score(const Asked& asked, const Routine& routine, const Diagnostics& messages,
             std::string_view file = {});

// `objections`: the warnings about this sheet, what the rules of the event would object to. `file`: the sheet's, may be
// empty.
Page score_page(const Account& account, const Diagnostics& objections = {}, std::string_view file = {});
// Of a sheet that is not scored, for programs: what is wrong with it.
Page refused_page(std::string_view file, const Diagnostics& messages);

}  // namespace landdrill::report
