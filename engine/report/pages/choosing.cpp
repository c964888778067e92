#include "engine/report/pages/choosing.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>

#include "engine/report/sentences.h"
#include "engine/routine/routine.h"
#include "engine/score/account.h"
#include "engine/score/objections.h"
#include "grammar/words.h"

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

Face face_of(const Routine& routine, const Diagnostics& of_sheet, const Wish& wish, Step beside) {
  Face face{account(routine, wish, std::nullopt), objections_with(routine, wish, of_sheet)};
  beside.inputs.insert(beside.inputs.begin(), *face.estimate);
  face.statuses = statuses(beside, nullptr);
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

std::optional<int> number_in(std::string_view typed) {
  int number = 0;
  const auto [end, error] = std::from_chars(typed.data(), typed.data() + typed.size(), number);
  if (error != std::errc() || end != typed.data() + typed.size()) return std::nullopt;
  return number;
}

std::optional<std::size_t> element_numbered(const Routine& routine, int number) {
  for (std::size_t i = 0; i < routine.elements.size(); ++i)
    if (routine.elements[i].number == number) return i;
  return std::nullopt;
}

std::optional<std::size_t> option_titled(const Element& element, std::string_view title) {
  for (std::size_t i = 0; i < element.options.size(); ++i)
    if (words::same(element.options[i].title, title)) return i;
  return std::nullopt;
}

std::string option_name(const Element& element, std::size_t option) {
  const std::string_view title = element.options.at(option).title;
  return title.empty() ? "as written" : std::string(title);
}

namespace {

std::string hint_among(std::string_view typed, const std::vector<std::string_view>& known) {
  if (known.empty()) return "the sheet has none";
  const std::string hint = words::nearest_hint(typed, known);
  return hint.empty() ? fmt::format("there is {}", fmt::join(known, ", ")) : hint;
}

bool is_date_like(std::string_view typed) {
  constexpr std::string_view pattern = "0000-00-00";
  return typed.size() == pattern.size() &&
         std::equal(typed.begin(), typed.end(), pattern.begin(),
                    [](char c, char like) { return like == '-' ? c == '-' : '0' <= c && c <= '9'; });
}

void choose_runs(std::string_view typed, const Routine& routine, PriceWish& wish) {
  using Which = RunWish::Which;
  RunWish& runs = wish.wish.runs;
  std::vector<std::string_view> known = {"latest", "mean", "none"};
  constexpr Which ways[] = {Which::latest, Which::mean, Which::none};
  const auto way = std::find(known.begin(), known.end(), typed);
  if (way != known.end()) {
    runs.which = ways[way - known.begin()];
    return;
  }
  runs = {Which::dated, typed};
  for (const Run& run : routine.runs) {
    if (run.date == typed) return;
    known.push_back(run.date);
  }
  (is_date_like(typed) ? wish.not_here : wish.mistake) = with_hint(
      fmt::format("found --runs {}; expected latest, mean, none, or the date of a run in the sheet", typed),
      hint_among(typed, known));
}

void choose_panel(std::string_view typed, const Routine& routine, PriceWish& wish) {
  if (typed == "none") return;
  std::vector<std::string_view> known = {"none"};
  for (std::size_t i = routine.panels.size(); i-- > 0;) {
    const RecordedPanel& one = routine.panels[i];
    if (typed.empty() || one.date == typed || words::same(one.title, typed)) {
      wish.panel = i;
      return;
    }
    known.push_back(one.date);
    if (!one.title.empty()) known.push_back(one.title);
  }
  if (typed.empty()) return;
  if (routine.panels.empty()) known.clear();
  wish.not_here = with_hint(
      fmt::format("found --panel \"{}\"; expected the title or date of a panel in the sheet, or none", typed),
      hint_among(typed, known));
}

void choose_option(std::string_view typed, const Routine& routine, PriceWish& wish) {
  const std::size_t sign = typed.find('=');
  const auto number = sign == typed.npos ? std::nullopt : number_in(typed.substr(0, sign));
  if (!number) {
    wish.mistake = fmt::format("found --option {}; expected NUMBER=TITLE, such as 2=safer", typed);
    return;
  }
  const auto index = element_numbered(routine, *number);
  if (!index) {
    wish.not_here = fmt::format("found --option {}; the routine has no element {}", typed, *number);
    return;
  }
  const Element& element = routine.elements[*index];
  const std::string_view title = typed.substr(sign + 1);
  wish.wish.options.resize(routine.elements.size());
  if (const auto option = option_titled(element, title)) {
    wish.wish.options[*index] = *option;
    return;
  }
  std::vector<std::string_view> titles;
  for (std::size_t i = 1; i < element.options.size(); ++i) titles.push_back(element.options[i].title);
  wish.not_here = fmt::format("found --option {}; expected an option of element {}", typed, *number);
  wish.not_here = titles.empty() ? wish.not_here + ", which has none"
                                 : with_hint(wish.not_here, hint_among(title, titles));
}

}  // namespace

PriceWish price_wish(const Asked& asked, const Routine& routine) {
  PriceWish result;
  choose_runs(asked.value("--runs", "latest"), routine, result);
  for (const std::string& typed : asked.values("--option")) choose_option(typed, routine, result);
  choose_panel(asked.value("--panel"), routine, result);
  return result;
}

PriceWish whole_price_wish(const Asked& asked, const Routine& routine) {
  PriceWish result = price_wish(asked, routine);
  if (result.mistake.empty()) result.mistake = result.not_here;
  return result;
}

}  // namespace landdrill::report
