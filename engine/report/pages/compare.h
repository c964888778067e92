// The options of elements side by side: what each gives, why, and how far the harder one may slip.
//
//   render_text(*compare(asked, routine, messages), {})
//   //   2 Undertow, Hybrid
//   //                       as declared        base mark       to expect
//   //   option      mark  difficulty   points  chance  points   points  scatter
//   //   as written  7.25        4.00  29.0000    12 %  3.6250  25.9550     8.71
#pragma once

#include <vector>

#include "engine/choosing/compare.h"
#include "engine/report/page.h"
#include "engine/report/pages/asked.h"
#include "engine/report/pages/choosing.h"
#include "engine/report/pages/face.h"
#include "engine/score/build_up.h"
#include "grammar/diagnostics.h"

namespace landdrill::report {

// Of the element that the second operand names, else of all that have options. `messages`: about its sheet;
// `elements_done` is told before each element how many are done of how many.
ChoosingAnswer compare(const Asked& asked, const Routine& routine, const Diagnostics& messages,
                       const Progress& elements_done = {});

struct ComparedElement {
  Comparison comparison;      // without obstacles
  std::vector<Step> stories;  // for each option, how its line of a score comes about
};
// `face`: the account of the routine as it is.
Page compare_page(const Routine& routine, const Face& face, const std::vector<ComparedElement>& elements);

// The parts of it: compare.cpp, compare.cpp, compare_duel.cpp, compare_duel.cpp, compare_duel.cpp.
void put_options(PageParts& page, const Routine& routine, const Comparison& comparison);
void put_part_by_part(PageParts& page, const Routine& routine, const ComparedElement& compared);
PageTable parts_table(const OptionWorth& option, int places);
void put_duel(PageParts& page, const Routine& routine, const Comparison& comparison, const Duel& duel);
void put_gains_by_mark(PageParts& page, const Routine& routine, const Comparison& comparison,
                       const Duel& duel);
// Which of the two gives more, and how much.
std::string verdict(const Routine& routine, const Comparison& comparison, const Duel& duel);
// "as written", "\"safer\"": inside a sentence.
std::string quoted_option(const Comparison& comparison, std::size_t option);
std::string option_at_start(const Comparison& comparison, std::size_t option);

}  // namespace landdrill::report
