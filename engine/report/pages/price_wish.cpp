#include "engine/report/pages/price_wish.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>

#include "engine/routine/routine.h"
#include "engine/routine/wish.h"
#include "grammar/words.h"

namespace landdrill::report {
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

// "2=safer"
struct WantedOption {
  int number = 0;
  std::string_view title;
};
std::optional<WantedOption> wanted_option(std::string_view typed) {
  WantedOption wanted;
  const std::size_t sign = typed.find('=');
  if (sign == typed.npos) return std::nullopt;
  const auto [end, error] = std::from_chars(typed.data(), typed.data() + sign, wanted.number);
  if (error != std::errc() || end != typed.data() + sign) return std::nullopt;
  wanted.title = typed.substr(sign + 1);
  return wanted;
}

void choose_option(std::string_view typed, const Routine& routine, PriceWish& wish) {
  const auto wanted = wanted_option(typed);
  if (!wanted) {
    wish.mistake = fmt::format("found --option {}; expected NUMBER=TITLE, such as 2=safer", typed);
    return;
  }
  const auto element = std::find_if(routine.elements.begin(), routine.elements.end(),
                                    [&](const Element& one) { return one.number == wanted->number; });
  if (element == routine.elements.end()) {
    wish.not_here = fmt::format("found --option {}; the routine has no element {}", typed, wanted->number);
    return;
  }
  wish.wish.options.resize(routine.elements.size());
  std::vector<std::string_view> titles;
  for (std::size_t i = 0; i < element->options.size(); ++i) {
    if (words::same(element->options[i].title, wanted->title)) {
      wish.wish.options[static_cast<std::size_t>(element - routine.elements.begin())] = i;
      return;
    }
    if (i > 0) titles.push_back(element->options[i].title);
  }
  wish.not_here = fmt::format("found --option {}; expected an option of element {}", typed, wanted->number);
  wish.not_here = titles.empty() ? wish.not_here + ", which has none"
                                 : with_hint(wish.not_here, hint_among(wanted->title, titles));
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
