#include "engine/cli/choosing.h"

#include <fmt/format.h>

#include "engine/score/account_notes.h"
#include "engine/cli/page.h"
#include "engine/score/objections.h"
#include "engine/report/width.h"

namespace landdrill::cli {
namespace {

constexpr std::string_view marks_expected = "a standard deviation in marks, from 0 to 100, such as 0.4";

std::optional<SpreadFrom> source_called(std::string_view word) {
  for (const SpreadFrom from : {SpreadFrom::sheet, SpreadFrom::panels, SpreadFrom::set})
    if (word_of(from) == word) return from;
  return std::nullopt;
}

}  // namespace

TypedNumber typed_number(std::string_view option, std::string_view typed, std::string_view expected) {
  if (const auto number = Decimal::parse(typed)) return {number, {}};
  return {std::nullopt, fmt::format("found {} \"{}\"; expected {}", option, typed, expected)};
}

TypedNumber number_of(const Call& call, std::string_view option, Decimal least, Decimal most,
                      std::string_view expected) {
  if (!call.given.has(option)) return {};
  const std::string_view typed = call.given.value(option);
  TypedNumber read = typed_number(option, typed, expected);
  if (read.number && (*read.number < least || *read.number > most))
    return {std::nullopt, fmt::format("found {} {}; expected {}", option, typed, expected)};
  return read;
}

TypedSpreads spreads_of(const Call& call) {
  const Decimal most = Decimal::whole(100);
  const TypedNumber judges = number_of(call, "--spread", Decimal(), most, marks_expected);
  if (!judges.mistake.empty()) return {{}, judges.mistake};
  const TypedNumber day = number_of(call, "--day", Decimal(), most, marks_expected);
  if (!day.mistake.empty()) return {{}, day.mistake};
  return {{judges.number, day.number, source_called(call.given.value("--spreads"))}, {}};
}

std::string beyond_scale(const Routine& routine, const SpreadWish& wish) {
  const Decimal width = width_of_scale(*routine.set, *routine.event).value_or(Decimal::whole(100));
  for (const auto& [option, marks] : {std::pair("--spread", wish.judges), std::pair("--day", wish.day)}) {
    if (!marks || *marks <= width) continue;
    return fmt::format(
        "found {} {}; expected a standard deviation from 0 to {} marks, the width of the scale", option,
        marks->text(), width.text());
  }
  return {};
}

report::TextWish choosing_page(const Call& call) {
  report::TextWish wish = page_wish(call);
  wish.full = call.given.has("--full");
  return wish;
}

report::Face face_of(const OneRoutine& one, std::span<const Wish> wishes,
                     const std::vector<Provenance>& also) {
  const Routine& routine = one.routine();
  report::Face face{account(routine, wishes.front(), std::nullopt),
                    objections_with(routine, wishes.front(), one.sheet().diagnostics)};
  Step all;
  all.rows = also;
  all.inputs.push_back(*face.estimate);
  for (const Wish& wish : wishes.subspan(1))
    all.inputs.push_back(*account(routine, wish, std::nullopt).estimate);
  face.statuses = statuses(all, nullptr);
  return face;
}

std::vector<Provenance> rows_of(const Spreads& spreads) {
  std::vector<Provenance> rows;
  const auto take = [&](const Spread& spread) {
    if (spread.row != nullptr) rows.push_back(*spread.row);
  };
  for (const Spread& spread : spreads.elements) take(spread);
  for (const Spread& spread : spreads.aspects) take(spread);
  take(spreads.day);
  return rows;
}

Exit obstructed(Call& call, const Routine& routine, const Obstacles& obstacles) {
  std::string text =
      fmt::format("landdrill {}: something is missing in \"{}\":\n", call.command.words, routine.title);
  for (const std::string& obstacle : obstacles)
    text += report::paragraph("  - ", report::plain(obstacle), 80);
  call.streams.say(text);
  return Exit::errors;
}

}  // namespace landdrill::cli
