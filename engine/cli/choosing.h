// What the commands of choosing share: their numbers, the face of their reports, and saying what is in the
// way.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "engine/cli/call.h"
#include "engine/cli/one_routine.h"
#include "engine/chances/forecast.h"
#include "engine/report/face.h"
#include "engine/report/text.h"

namespace landdrill::cli {

// A number typed for an option, or the sentence that says what was expected instead.
struct TypedNumber {
  std::optional<Decimal> number;
  std::string mistake;
};
TypedNumber typed_number(std::string_view option, std::string_view typed, std::string_view expected);
// The option's number when it was given: `least` <= number <= `most`.
TypedNumber number_of(const Call& call, std::string_view option, Decimal least, Decimal most,
                      std::string_view expected);

// --spread, --day and --spreads.
struct TypedSpreads {
  SpreadWish wish;
  std::string mistake;
};
TypedSpreads spreads_of(const Call& call);
// The mistake when one of them is wider than the event's scale, as on a sheet; or nothing.
std::string beyond_scale(const Routine& routine, const SpreadWish& wish);

// page_wish, with --full.
report::TextWish choosing_page(const Call& call);
// The account of the first wish, with the values that all of them rest on, and the rows of `also`; what the
// rules object to with its options.
report::Face face_of(const OneRoutine& one, std::span<const Wish> wishes,
                     const std::vector<Provenance>& also = {});
// The rows of the set that spreads come from.
std::vector<Provenance> rows_of(const Spreads& spreads);

// Says why it cannot be done; Exit::errors.
Exit obstructed(Call& call, const Routine& routine, const Obstacles& obstacles);

}  // namespace landdrill::cli
