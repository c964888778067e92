#include "engine/report/pages/choosing.h"

#include <fmt/format.h>

#include "engine/chances/spreads.h"
#include "engine/report/obstacle_words.h"
#include "engine/routine/wish.h"
#include "engine/score/account_notes.h"
#include "engine/score/objections.h"
#include "grammar/diagnostics.h"
#include "tables/decimal.h"
#include "tables/value_set.h"

namespace landdrill::report {
namespace {

std::optional<SpreadFrom> source_called(std::string_view word) {
  for (const SpreadFrom from : {SpreadFrom::sheet, SpreadFrom::panels, SpreadFrom::set})
    if (word_of(from) == word) return from;
  return std::nullopt;
}

Typed<std::optional<Decimal>> deviation_of(const Asked& asked, std::string_view option, Decimal scale) {
  const auto typed = number_of(
      asked, option,
      {Decimal(), Decimal::whole(100), "a standard deviation in marks, from 0 to 100, such as 0.4"});
  if (!typed || !*typed || **typed <= scale) return typed;
  return tl::unexpected(
      fmt::format("found {} {}; expected a standard deviation from 0 to {} marks, the width of the scale",
                  option, (*typed)->text(), scale.text()));
}

}  // namespace

tl::unexpected<Refused> mistaken(std::string mistake) {
  return tl::unexpected(Refused{std::move(mistake)});
}

tl::unexpected<Refused> missing_in(const Routine& routine, const Obstacles& missing) {
  return missing_in(routine, words_of(missing));
}

tl::unexpected<Refused> missing_in(const Routine& routine, std::vector<std::string> sentences) {
  return tl::unexpected(Refused{{}, std::string(routine.title), std::move(sentences)});
}

Typed<Decimal> typed_number(std::string_view option, std::string_view typed, std::string_view expected) {
  if (const auto number = Decimal::parse(typed)) return *number;
  return tl::unexpected(fmt::format("found {} \"{}\"; expected {}", option, typed, expected));
}

Typed<std::optional<Decimal>> number_of(const Asked& asked, std::string_view option, const NumberSpan& span) {
  if (!asked.has(option)) return std::nullopt;
  const std::string_view typed = asked.value(option);
  const Typed<Decimal> number = typed_number(option, typed, span.expected);
  if (!number) return tl::unexpected(number.error());
  if (*number < span.least || *number > span.most)
    return tl::unexpected(fmt::format("found {} {}; expected {}", option, typed, span.expected));
  return *number;
}

Typed<SpreadWish> spreads_of(const Asked& asked, const Routine& routine) {
  const Decimal scale = width_of_scale(*routine.set, *routine.event).value_or(Decimal::whole(100));
  const auto judges = deviation_of(asked, "--spread", scale);
  if (!judges) return tl::unexpected(judges.error());
  const auto day = deviation_of(asked, "--day", scale);
  if (!day) return tl::unexpected(day.error());
  return SpreadWish{*judges, *day, source_called(asked.value("--spreads"))};
}

Face face_of(const Routine& routine, const Diagnostics& of_sheet, std::span<const Wish> wishes,
             const std::vector<Provenance>& also) {
  Face face{account(routine, wishes.front(), std::nullopt),
            objections_with(routine, wishes.front(), of_sheet)};
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

std::string option_name(const Element& element, std::size_t option) {
  const std::string_view title = element.options.at(option).title;
  return title.empty() ? "as written" : std::string(title);
}

}  // namespace landdrill::report
