#include "engine/report/chance.h"
#include "engine/report/grid.h"
#include "engine/report/plan.h"
#include "engine/report/sections.h"
#include "engine/report/width.h"

namespace landdrill::report {
namespace {

std::string worth(const std::optional<Points>& points) {
  return points ? with_sign(to_places(points->value(), 4)) : "-";
}

constexpr std::string_view by_coach = "the sheet";
constexpr std::string_view limits_words =
    "one more: what the best programme would gain if the most allowed were one more; one less: if the least "
    "asked "
    "for were one less.";

// A limit of the coach may stand in the sheet or have been told.
std::string called_yours(std::string limit) {
  const std::string end = " (" + std::string(by_coach) + ")";
  if (limit.ends_with(end)) limit.replace(limit.size() - end.size(), end.size(), " (yours)");
  return limit;
}

bool costs(const PlanLimit& limit) {
  const auto is_something = [](const std::optional<Points>& points) { return points && *points != Points(); };
  return is_something(limit.one_more) || is_something(limit.one_less);
}

std::string silent_note(std::size_t silent, bool all, const TextWish& wish) {
  if (silent == 0) return "";
  const std::string other = all ? "" : "other ";
  const std::string words = silent == 1 ? "The " + other + "limit of the event costs nothing"
                                        : "The " + other + std::to_string(silent) + " limits cost nothing";
  return paragraph("", words + "; --full lists " + (silent == 1 ? "it." : "them."), wish.width);
}

// "2 as written, 5 leave out": where a choice differs from the best.
std::string differences(const Routine& routine, const PlanChoice& choice, const PlanChoice& best) {
  std::string words;
  for (std::size_t i = 0; i < routine.elements.size(); ++i) {
    if (choice.options.at(i) == best.options.at(i)) continue;
    const Element& element = routine.elements[i];
    words += (words.empty() ? "" : ", ") + std::to_string(element.number) + " " +
             choice_name(element, choice.options[i]);
  }
  return words;
}

}  // namespace

std::string limits_section(const Plan& plan, const TextWish& wish) {
  if (plan.limits.empty()) return "";
  using enum GridColumn::Align;
  Grid grid({{"limit", words, true},
             {"by", words, true},
             {"used", amount},
             {"one more", amount},
             {"one less", amount}});
  std::size_t silent = 0;
  for (const PlanLimit& limit : plan.limits) {
    const bool mine = limit.from == by_coach;
    if (!wish.full && !mine && !costs(limit)) {
      ++silent;
      continue;
    }
    grid.add({limit.words, mine ? "you" : limit.from, limit.used.text(), worth(limit.one_more),
              worth(limit.one_less)});
  }
  const std::string table = grid.text(wish.width, wish.colour);
  return heading("What each limit costs", wish) + table + silent_note(silent, table.empty(), wish) +
         (table.empty() ? "" : paragraph("", limits_words, wish.width));
}

std::string next_best_section(const Routine& routine, const ToldPlan& told, const TextWish& wish) {
  const auto& choices = told.plan.choices;
  if (choices.size() < 2)
    return "\n" + paragraph("", "There is no other choice within the limits.", wish.width);
  using enum GridColumn::Align;
  const std::string behind = told.aim == PlanWish::For::target ? "behind, per cent" : "behind, points";
  Grid grid({{"", amount}, {"what is different", words, true}, {behind, amount}});
  for (std::size_t i = 1; i < choices.size(); ++i)
    grid.add({std::to_string(i + 1), differences(routine, choices[i], choices.front()), told.behind.at(i)});
  return heading("The next best", wish) + grid.text(wish.width, wish.colour);
}

std::string conflict_section(const Plan& plan, const TextWish& wish) {
  const bool alone = plan.conflict.size() == 1;
  std::vector<std::string> conflict;
  for (const std::string& limit : plan.conflict) conflict.push_back(called_yours(limit));
  return heading("No programme keeps all limits", wish) +
         paragraph(
             "", alone ? "This cannot be met by any choice:" : "These cannot be met together:", wish.width) +
         bullets(conflict, wish) + bullets(plan.notes, wish) +
         paragraph("",
                   "Loosen one of them, give an element another option, let one be left out (--optional "
                   "NUMBER), or plan without the event's limits (--ignore-limits).",
                   wish.width);
}

}  // namespace landdrill::report
