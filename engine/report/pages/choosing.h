// What the questions of choosing share: the numbers that they are asked with, why one has no answer, and the face of
// their pages.
//
//   const Typed<SpreadWish> wish = spreads_of(asked, routine);      // --spread 0.4 --day 0.2 --spreads panels
//   if (!wish) return mistaken(wish.error());
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/chances/obstacle.h"
#include "engine/chances/spreads.h"
#include "engine/report/page.h"
#include "engine/report/pages/asked.h"  // IWYU pragma: export
#include "engine/report/pages/face.h"
#include "engine/routine/wish.h"
#include "engine/score/build_up.h"
#include "engine/score/score.h"
#include "grammar/diagnostics.h"
#include "tables/decimal.h"
#include "tables/value_set.h"

namespace landdrill::report {

// Why there is no page: what was asked cannot be, or something is missing in the routine before it can be answered.
struct Refused {
  std::string mistake;
  std::string title = {};                 // of the routine in which something is missing
  std::vector<std::string> missing = {};  // whole sentences
};
using ChoosingAnswer = tl::expected<Page, Refused>;
tl::unexpected<Refused> mistaken(std::string mistake);
tl::unexpected<Refused> missing_in(const Routine& routine, const Obstacles& missing);
tl::unexpected<Refused> missing_in(const Routine& routine, std::vector<std::string> sentences);

Typed<Decimal> typed_number(std::string_view option, std::string_view typed, std::string_view expected);
struct NumberSpan {
  Decimal least, most;
  std::string_view expected;  // in words
};
// The option's number when it was given.
Typed<std::optional<Decimal>> number_of(const Asked& asked, std::string_view option, const NumberSpan& span);
// --spread, --day and --spreads; none is wider than the event's scale, as on a sheet.
Typed<SpreadWish> spreads_of(const Asked& asked, const Routine& routine);

// The account of the routine with this wish, and what the rules object to with its options. The page rests on what is
// `beside` it as well: other estimates, and rows.
Face face_of(const Routine& routine, const Diagnostics& of_sheet, const Wish& wish, Step beside = {});
// The rows of the set that spreads come from.
std::vector<Provenance> rows_of(const Spreads& spreads);

// "2" -> 2; "2=safer" -> nothing.
std::optional<int> number_in(std::string_view typed);
std::optional<std::size_t> element_numbered(const Routine& routine, int number);
// The option of the element with this title, in any case of its letters.
std::optional<std::size_t> option_titled(const Element& element, std::string_view title);
// "as written", "safer".
std::string option_name(const Element& element, std::size_t option);

// What the options of a question wish of a routine: which options of its elements, which runs, which panel.
//
//   PriceWish wish = price_wish(asked, routine);    // wish.wish, wish.panel; or wish.mistake

struct PriceWish {
  Wish wish;
  std::optional<std::size_t> panel;  // index into routine.panels
  std::string mistake;               // what was asked for and cannot be; empty when all is well
  std::string not_here;  // what was asked for and this routine does not have: the wish goes without it
};

// The wish's date lives as long as the question.
PriceWish price_wish(const Asked& asked, const Routine& routine);
// For a single routine: a wish that it cannot meet in full is a mistake.
PriceWish whole_price_wish(const Asked& asked, const Routine& routine);

}  // namespace landdrill::report
