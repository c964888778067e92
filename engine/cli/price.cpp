#include "engine/cli/price.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>

#include "grammar/words.h"

namespace landdrill::cli {
namespace {

std::string with_hint(std::string mistake, std::string_view typed,
                      const std::vector<std::string_view>& known) {
  std::string hint = words::nearest_hint(typed, known);
  if (hint.empty() && !known.empty()) hint = fmt::format("there is {}", fmt::join(known, ", "));
  return hint.empty() ? mistake : fmt::format("{}\n  hint: {}", mistake, hint);
}

bool has_option(const Command& command, std::string_view name) {
  return std::any_of(command.options.begin(), command.options.end(),
                     [&](auto* row) { return row->name == name; });
}

std::string choose_runs(std::string_view typed, const Routine& routine, bool strict, RunWish& runs) {
  using Which = RunWish::Which;
  if (typed == "latest") return runs.which = Which::latest, std::string();
  if (typed == "mean") return runs.which = Which::mean, std::string();
  if (typed == "none") return runs.which = Which::none, std::string();
  runs = {Which::dated, typed};
  std::vector<std::string_view> dates;
  for (const Run& run : routine.runs) dates.push_back(run.date);
  if (!strict || std::find(dates.begin(), dates.end(), typed) != dates.end()) return {};
  dates.insert(dates.end(), {"latest", "mean", "none"});
  return with_hint(
      fmt::format("found --runs {}; expected latest, mean, none, or the date of a run in the sheet", typed),
      typed, dates);
}

std::string choose_panel(std::string_view typed, const Routine& routine, bool strict,
                         std::optional<std::size_t>& panel) {
  if (typed == "none") return {};
  std::vector<std::string_view> known = {"none"};
  for (std::size_t i = routine.panels.size(); i-- > 0;) {
    const RecordedPanel& one = routine.panels[i];
    if (typed.empty() || one.date == typed || words::same(one.title, typed)) return panel = i, std::string();
    known.push_back(one.date);
    if (!one.title.empty()) known.push_back(one.title);
  }
  if (typed.empty() || !strict) return {};
  return with_hint(
      fmt::format("found --panel \"{}\"; expected the title or date of a panel in the sheet, or none", typed),
      typed, known);
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

std::string choose_option(std::string_view typed, const Routine& routine, bool strict, Wish& wish) {
  const auto wanted = wanted_option(typed);
  if (!wanted) return fmt::format("found --option {}; expected NUMBER=TITLE, such as 2=safer", typed);
  wish.options.resize(routine.elements.size());
  const auto element = std::find_if(routine.elements.begin(), routine.elements.end(),
                                    [&](const Element& one) { return one.number == wanted->number; });
  if (element == routine.elements.end())
    return strict ? fmt::format("found --option {}; the routine has no element {}", typed, wanted->number)
                  : std::string();
  std::vector<std::string_view> titles;
  for (std::size_t i = 0; i < element->options.size(); ++i) {
    if (words::same(element->options[i].title, wanted->title))
      return wish.options[static_cast<std::size_t>(element - routine.elements.begin())] = i, std::string();
    if (i > 0) titles.push_back(element->options[i].title);
  }
  if (!strict) return {};
  return with_hint(fmt::format("found --option {}; expected an option of element {}{}", typed, wanted->number,
                               titles.empty() ? ", which has none" : ""),
                   wanted->title, titles);
}

}  // namespace

PriceWish price_wish(const Call& call, const Routine& routine, bool strict) {
  PriceWish result;
  result.mistake = choose_runs(call.given.value("--runs", "latest"), routine, strict, result.wish.runs);
  for (const std::string& typed : call.given.values("--option"))
    if (result.mistake.empty()) result.mistake = choose_option(typed, routine, strict, result.wish);
  if (result.mistake.empty() && has_option(call.command, "--panel"))
    result.mistake = choose_panel(call.given.value("--panel"), routine, strict, result.panel);
  return result;
}

Exit misused(Call& call, const std::string& mistake) {
  call.streams.say(fmt::format("landdrill {}: {}\n", call.command.words, mistake));
  return Exit::usage;
}

}  // namespace landdrill::cli
