#include <algorithm>

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

constexpr std::string_view by_coach[] = {"the sheet", "the command line"};
constexpr std::string_view limits_words =
    "one more: what the best programme would gain if the most allowed were one more; one less: if the least "
    "asked "
    "for were one less.";

bool is_by_coach(std::string_view from) {
  return std::find(std::begin(by_coach), std::end(by_coach), from) != std::end(by_coach);
}

// A limit of the coach may stand in the sheet or have been told.
std::string called_yours(std::string limit) {
  for (const std::string_view from : by_coach) {
    const std::string end = " (" + std::string(from) + ")";
    if (limit.ends_with(end)) return limit.replace(limit.size() - end.size(), end.size(), " (yours)");
  }
  return limit;
}

// Of what may not be there at all nothing is used up.
bool is_used_up(const PlanLimit& limit) {
  const bool at_top = limit.most && *limit.most > Decimal() && limit.used >= *limit.most;
  return at_top || (limit.least && *limit.least > Decimal() && limit.used <= *limit.least);
}

// Known to cost nothing, and with room left.
bool is_idle(const PlanLimit& limit) {
  const auto is_nothing = [](const std::optional<Decimal>& side, const std::optional<Points>& worth) {
    return !side || (worth && *worth == Points());
  };
  return is_nothing(limit.most, limit.one_more) && is_nothing(limit.least, limit.one_less) &&
         !is_used_up(limit);
}

std::string idle_note(const std::vector<std::string>& idle, bool all, const TextWish& wish) {
  if (idle.empty()) return "";
  const std::string other = all ? "" : "other ";
  std::string words = idle.size() == 1
                          ? "The " + other + "limit costs nothing: "
                          : "The " + other + std::to_string(idle.size()) + " limits cost nothing: ";
  for (const std::string& limit : idle) words += (&limit == &idle.front() ? "" : "; ") + limit;
  return paragraph("", plain(words) + ".", wish.width);
}

// Without a proof no other plan could be set beside this one.
std::string unknown_note(const Plan& plan, const TextWish& wish) {
  return plan.proved
             ? ""
             : paragraph(
                   "",
                   "What one more or one less would bring was not worked out: only a proved plan can be "
                   "set beside another.",
                   wish.width);
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
  using enum Align;
  Grid grid({{"limit", words, true},
             {"by", words, true},
             {"used", amount},
             {"one more", amount},
             {"one less", amount}});
  std::vector<std::string> idle;
  for (const PlanLimit& limit : plan.limits) {
    if (!wish.full && is_idle(limit)) {
      idle.push_back(limit.words);
      continue;
    }
    grid.add({limit.words, is_by_coach(limit.from) ? "you" : limit.from, limit.used.text(),
              worth(limit.one_more), worth(limit.one_less)});
  }
  const std::string table = grid.text(wish.width, wish.colour);
  return heading("What each limit costs", wish) + table + idle_note(idle, table.empty(), wish) +
         unknown_note(plan, wish) + (table.empty() ? "" : paragraph("", limits_words, wish.width));
}

std::string next_best_section(const Routine& routine, const ToldPlan& told, const TextWish& wish) {
  const auto& choices = told.plan.choices;
  if (choices.size() < 2)
    return "\n" + paragraph("", "There is no other choice within the limits.", wish.width);
  using enum Align;
  const std::string behind = told.aim == PlanWish::For::target ? "behind, per cent" : "behind, points";
  Grid grid({{"", amount}, {"what is different", words, true}, {behind, amount}});
  for (std::size_t i = 1; i < choices.size(); ++i)
    grid.add({std::to_string(i + 1), differences(routine, choices[i], choices.front()),
              behind_of(routine, told, choices[i])});
  return heading("The next best", wish) + grid.text(wish.width, wish.colour);
}

std::string conflict_section(const Plan& plan, const TextWish& wish) {
  const bool alone = plan.conflict.size() == 1;
  std::vector<std::string> conflict;
  for (const std::string& limit : plan.conflict) conflict.push_back(called_yours(limit));
  return heading("No programme keeps all limits", wish) +
         paragraph(
             "", alone ? "This cannot be met by any choice:" : "These cannot be met together:", wish.width) +
         bullets(conflict, wish) + notes_section(plan, wish) +
         paragraph("",
                   "Loosen one of them, give an element another option, let one be left out (--optional "
                   "NUMBER), or plan without the event's limits (--ignore-limits).",
                   wish.width);
}

}  // namespace landdrill::report
