#include "engine/choosing/plan_wish.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/chances/odds.h"
#include "engine/chances/spreads.h"
#include "engine/report/pages/asked.h"
#include "engine/report/pages/choosing.h"
#include "engine/report/pages/plan.h"
#include "engine/routine/resolve.h"
#include "engine/routine/routine.h"
#include "engine/routine/wish.h"
#include "grammar/blocks.h"
#include "grammar/diagnostics.h"
#include "grammar/problem_code.h"
#include "grammar/span.h"
#include "grammar/words.h"
#include "tables/decimal.h"

namespace landdrill::report {
namespace {

constexpr std::string_view aims =
    "the word expected, or a share such as 25%: the total that is missed no more often";
constexpr std::int64_t usual_seconds = 10, longest = 86'400;

// "25%" -> 25
std::optional<Decimal> share_in(std::string_view typed) {
  if (!typed.ends_with('%')) return std::nullopt;
  const auto share = Decimal::parse(typed.substr(0, typed.size() - 1));
  const bool inside = share && *share > Decimal() && *share < Decimal::whole(100);
  return inside ? share : std::nullopt;
}

std::string read_target(const Asked& asked, TypedPlan& plan) {
  const Typed<Decimal> target = typed_number("--target", asked.value("--target"), "points, such as 190");
  if (!target) return target.error();
  plan.wish.aim = PlanWish::For::target;
  plan.wish.target = plan.target = *target;
  return {};
}

std::string read_aim(const Asked& asked, TypedPlan& plan) {
  if (asked.has("--aim") && asked.has("--target")) return "found --aim and --target; expected one of them";
  if (asked.has("--target")) return read_target(asked, plan);
  const std::string_view typed = asked.value("--aim", "expected");
  if (typed == "expected") return {};
  const auto share = share_in(typed);
  if (!share) return fmt::format("found --aim \"{}\"; expected {}", typed, aims);
  plan.wish.aim = PlanWish::For::quantile;
  plan.share = *share;
  plan.wish.share = static_cast<Chance>(share->units()) / (100.0 * Decimal::one);
  return {};
}

// The element that an option names, as "2" or "2=safer".
struct NamedElement {
  std::size_t index = 0;
  std::string_view title;
};
Typed<NamedElement> element_named(const Routine& routine, std::string_view option, std::string_view typed,
                                  std::string_view expected) {
  const std::size_t sign = std::min(typed.find('='), typed.size());
  const std::optional<int> number = number_in(typed.substr(0, sign));
  if (!number) return tl::unexpected(fmt::format("found {} {}; expected {}", option, typed, expected));
  const auto index = element_numbered(routine, *number);
  if (!index)
    return tl::unexpected(fmt::format("found {} {}; the routine has no element {}", option, typed, *number));
  return NamedElement{*index, typed.substr(std::min(sign + 1, typed.size()))};
}

std::string keep_element(Routine& routine, Wish& wish, const std::string& typed) {
  const auto found = element_named(routine, "--keep", typed, "NUMBER or NUMBER=TITLE, such as 2=safer");
  if (!found) return found.error();
  Element& element = routine.elements[found->index];
  element.stays = true;
  element.optional = false;
  if (found->title.empty()) return {};
  const auto option = option_titled(element, found->title);
  if (!option)
    return fmt::format("found --keep {}; element {} has no option of that title", typed, element.number);
  wish.options[found->index] = *option;
  return {};
}

std::string may_go(Routine& routine, const std::string& typed) {
  const auto found = element_named(routine, "--optional", typed, "the number of an element, such as 5");
  if (!found) return found.error();
  if (!found->title.empty()) return fmt::format("found --optional {}; expected a number alone", typed);
  Element& element = routine.elements[found->index];
  if (element.stays)
    return fmt::format("found --optional {}; but element {} is to stay", typed, element.number);
  element.optional = true;
  return {};
}

// A limit is read as the same line of a sheet would be, in a routine of its own.
std::string read_limit(const std::string& typed, const Routine& routine, std::deque<std::string>& texts,
                       std::vector<OwnLimit>& told) {
  if (typed.find_first_of("\r\n") != std::string::npos)
    return "found --limit with several lines; expected one limit, such as \"throw most 2\"";
  const std::string& text = texts.emplace_back(
      fmt::format("routine \"Limit\"\nevent \"{}\"\nlimit {}\n", routine.event->code, typed));
  const Source source{"--limit", text, 1};
  Assembled assembled;
  assemble(source, assembled);
  Diagnostics complaints = std::move(assembled.diagnostics);
  if (!assembled.sheets.empty()) {
    Resolved resolved = resolve(assembled.sheets.front(), *routine.set);
    if (resolved.routine)
      told.insert(told.end(), resolved.routine->limits.begin(), resolved.routine->limits.end());
    complaints.append(std::move(resolved.diagnostics));
  }
  for (const Diagnostic& one : complaints.list()) {
    if (severity_of(one.problem) != Severity::error) continue;
    return with_hint(fmt::format("found --limit \"{}\": {}; expected {}", typed, one.found, one.expected),
                     one.hint);
  }
  return {};
}

// In what was typed for an option that may be given several times.
std::string first_mistake(const std::vector<std::string>& all, const auto& read) {
  for (const std::string& typed : all)
    if (std::string mistake = read(typed); !mistake.empty()) return mistake;
  return {};
}

std::string apply_keeps(const Asked& asked, Routine& routine, Wish& wish) {
  wish.options.resize(routine.elements.size());
  const std::string mistake = first_mistake(
      asked.values("--keep"), [&](const std::string& typed) { return keep_element(routine, wish, typed); });
  if (!mistake.empty()) return mistake;
  return first_mistake(asked.values("--optional"),
                       [&](const std::string& typed) { return may_go(routine, typed); });
}

}  // namespace

Typed<TypedPlan> typed_plan(const Asked& asked, Routine& routine, Wish& wish) {
  TypedPlan plan;
  std::string mistake = read_aim(asked, plan);
  if (!mistake.empty()) return tl::unexpected(mistake);
  const Typed<SpreadWish> spread = spreads_of(asked, routine);
  if (!spread) return tl::unexpected(spread.error());
  plan.wish.forecast.spreads = *spread;
  plan.wish.event_limits = !asked.has("--ignore-limits");
  mistake = first_mistake(asked.values("--limit"), [&](const std::string& typed) {
    return read_limit(typed, routine, plan.texts, plan.wish.limits);
  });
  if (mistake.empty()) mistake = apply_keeps(asked, routine, wish);
  if (!mistake.empty()) return tl::unexpected(mistake);
  return plan;
}

Typed<Decimal> plan_seconds(const Asked& asked) {
  const auto seconds = number_of(
      asked, "--seconds", {*Decimal::parse("0.01"), Decimal::whole(longest), "seconds, from 0.01 to a day"});
  if (!seconds) return tl::unexpected(seconds.error());
  return seconds->value_or(Decimal::whole(usual_seconds));
}

}  // namespace landdrill::report
