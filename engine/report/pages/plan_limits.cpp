#include <algorithm>

#include "engine/choosing/plan.h"
#include "engine/report/amount_text.h"
#include "engine/report/chance.h"
#include "engine/report/page.h"
#include "engine/report/pages/plan.h"
#include "tables/decimal.h"
#include "tables/quantity.h"

namespace landdrill::report {
namespace {

Entry worth_entry(const std::optional<Points>& points) {
  if (!points) return {"-", Datum()};
  return {signed_text(std::optional(round(Exact(points->value()), 4, Rounding::half_up)), 4), points->text()};
}

constexpr std::string_view by_coach[] = {"the sheet", "the command line"};
constexpr std::string_view limits_words =
    "one more: what the best programme would gain if the most allowed were one more; one less: if the least "
    "asked for were one less.";

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

std::string idle_note(const std::vector<std::string>& idle, bool all) {
  const std::string other = all ? "" : "other ";
  std::string words = idle.size() == 1
                          ? "The " + other + "limit costs nothing: "
                          : "The " + other + std::to_string(idle.size()) + " limits cost nothing: ";
  for (const std::string& limit : idle) words += (&limit == &idle.front() ? "" : "; ") + limit;
  return words + ".";
}

PageTable limits_table(const std::vector<PlanLimit>& limits) {
  using enum Align;
  PageTable table("limits", {{"limit", "limit", words, Wraps::yes, Seen::always, "", 2, 0, "title"},
                             {"by", "by", words, Wraps::yes},
                             {"least", "", amount, Wraps::no, Seen::by_programs},
                             {"most", "", amount, Wraps::no, Seen::by_programs},
                             {"used", "used", amount},
                             {"one_more", "one more", amount},
                             {"one_less", "one less", amount}});
  table.in_csv = true;
  table.given = {{"what", "limit"}};
  for (const PlanLimit& limit : limits)
    table.add({limit.words,
               {is_by_coach(limit.from) ? "you" : limit.from, limit.from},
               text_of(limit.least),
               text_of(limit.most),
               limit.used.text(),
               worth_entry(limit.one_more),
               worth_entry(limit.one_less)},
              Look::usual, is_idle(limit) ? Seen::in_full : Seen::always);
  return table;
}

}  // namespace

void put_limits(PageParts& page, const Plan& plan) {
  if (!plan.limits.empty()) page.heading("What each limit costs");
  page.add(limits_table(plan.limits));
  if (plan.limits.empty()) return;
  std::vector<std::string> idle;
  for (const PlanLimit& limit : plan.limits)
    if (is_idle(limit)) idle.push_back(limit.words);
  const bool all = idle.size() == plan.limits.size();
  if (!idle.empty()) page.say(idle_note(idle, all), Seen::in_brief);
  // Without a proof no other plan could be set beside this one.
  if (!plan.proved && plan.gap != Decimal())
    page.say(
        "What one more or one less would bring was not worked out: only a proved plan can be set beside "
        "another.");
  page.say(std::string(limits_words), all ? Seen::in_full : Seen::by_people);
}

void put_limits_for_programs(PageParts& page, const Plan& plan) {
  page.add(limits_table(plan.limits), Seen::by_programs);
}

void put_conflict(PageParts& page, const Plan& plan) {
  std::vector<std::string> conflict;
  for (const std::string& limit : plan.conflict) conflict.push_back(called_yours(limit));
  page.heading("No programme keeps all limits");
  page.say(conflict.size() == 1 ? "This cannot be met by any choice:" : "These cannot be met together:");
  page.list("", conflict);
  for (const std::string& note : plan.notes) page.say("Note: ", note + ".");
  page.say(
      "Loosen one of them, give an element another option, let one be left out (--optional NUMBER), or plan "
      "without the event's limits (--ignore-limits).");
}

}  // namespace landdrill::report
