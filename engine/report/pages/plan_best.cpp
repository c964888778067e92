#include <algorithm>
#include <span>

#include "engine/chances/forecast.h"
#include "engine/choosing/plan.h"
#include "engine/report/figures.h"
#include "engine/report/page.h"
#include "engine/report/pages/plan.h"
#include "tables/decimal.h"
#include "tables/quantity.h"

namespace landdrill::report {
namespace {

// Not where the event weights elements together.
bool told_by_element(const ToldPlan& told) {
  return std::any_of(told.points.begin(), told.points.end(),
                     [](const auto& points) { return !points.empty(); });
}

std::string title_and_kind_of(const Element& element) {
  return element.title.empty() ? element.kind->title
                               : std::string(element.title) + ", " + element.kind->title;
}

PageTable programme_table(const Routine& routine, const ToldPlan& told) {
  using enum Align;
  PageTable table("", {{"", "no.", amount},
                       {"", "element", words, Wraps::yes},
                       {"", "swim it", words, Wraps::yes},
                       {"", "difficulty", amount},
                       {"", told_by_element(told) ? "expected" : "", amount}});
  const PlanChoice& best = told.plan.choices.front();
  for (std::size_t i = 0; i < routine.elements.size(); ++i) {
    const std::size_t option = best.options.at(i);
    const bool changed = option != told.as_written.at(i), out = option == leave_out;
    const Element& element = routine.elements[i];
    const auto declared = out ? std::nullopt : element.options.at(option).declared;
    std::string way = choice_name(element, option);
    if (element.stays) way += " (stays)";
    if (changed && !out) way += " (not " + choice_name(element, told.as_written[i]) + ")";
    table.add({(changed ? "> " : "") + std::to_string(element.number), title_and_kind_of(element),
               std::move(way), text_of(declared, 2), told.points.at(i)},
              changed ? Look::worst : Look::usual);
  }
  return table;
}

}  // namespace

std::vector<PageColumn> columns_of_odds(const ToldPlan& told) {
  std::vector<PageColumn> columns;
  if (told.aim == PlanWish::For::target) columns.push_back({"", "chance of " + told.target, Align::amount});
  if (told.has_quantiles()) columns.push_back({"", told.share + " % are lower", Align::amount});
  return columns;
}

std::vector<Entry> odds_cells(const PlanChoice& choice, const ToldPlan& told, int places) {
  std::vector<Entry> cells;
  if (told.aim == PlanWish::For::target)
    cells.emplace_back(choice.reaches ? per_cent(choice.reaches->chance) : "");
  if (told.has_quantiles()) {
    const int shown = told.aim == PlanWish::For::quantile ? places : 1;
    cells.emplace_back(choice.quantile ? to_places(*choice.quantile, shown) : "");
  }
  return cells;
}

std::string noticed_words(const ToldPlan& told) {
  return told.plan.noticed.text() + std::string(unit_of(told));
}

namespace {

PageTable totals_table(const ToldPlan& told, int places) {
  using enum Align;
  std::vector<PageColumn> columns{{"", "", words, Wraps::yes}, {"", "expected", amount}};
  for (PageColumn& one : columns_of_odds(told)) columns.push_back(std::move(one));
  columns.push_back({"", "time", amount});
  PageTable table("", std::move(columns));
  const auto add = [&](std::string name, const PlanChoice& choice, Look look = Look::usual) {
    std::vector<Entry> cells{std::move(name), to_places(choice.total.value(), places)};
    for (Entry& one : odds_cells(choice, told, places)) cells.push_back(std::move(one));
    cells.emplace_back(choice.seconds ? to_places(*choice.seconds, 1) + " s" : "");
    table.add(std::move(cells), look);
  };
  const PlanChoice& first = told.plan.choices.front();
  const std::optional<PlanChoice>& as_written = told.plan.as_written;
  add("this programme", first, Look::total);
  if (as_written && first.options != as_written->options)
    add(told.plan.as_written_allowed ? "without these changes"
                                     : "without these changes, which breaks a limit",
        *as_written);
  const std::optional<PlanChoice>& highest = told.plan.highest_total;
  if (highest && highest->options != first.options &&
      !(as_written && highest->options == as_written->options))
    add("for the highest expected total", *highest);
  return table;
}

// Though the next ones may not be proved.
bool is_best(const Plan& plan) {
  return plan.proved || plan.gap == Decimal();
}

std::string no_change_words(const ToldPlan& told) {
  const auto is_ahead = [](const PlanChoice& one) { return one.behind && *one.behind < Decimal(); };
  if (std::any_of(told.plan.choices.begin(), told.plan.choices.end(), is_ahead))
    return "Stay as you are: no change brings as much as " + noticed_words(told) +
           ", and less is no reason for one.";
  return is_best(told.plan) ? "No change makes it better than it is."
                            : "No change that was tried makes it better than it is.";
}

std::string signed_amount(const std::string& amount) {
  return (Decimal::parse(amount) > Decimal() ? "+" : "") + amount;
}

void put_changes_note(PageParts& page, const Routine& routine, const ToldPlan& told) {
  const PlanChoice& first = told.plan.choices.front();
  const std::optional<PlanChoice>& as_written = told.plan.as_written;
  if (first.options == told.as_written) return page.say(no_change_words(told));
  const std::string ahead = as_written ? behind_of(routine, told, *as_written) : "";
  if (ahead.empty()) return;
  std::string words = told.plan.as_written_allowed ? "Together the changes bring "
                                                   : "Without the changes a limit is broken; they bring ";
  words += signed_amount(ahead) + std::string(unit_of(told));
  // What is given up for it, or what comes with it.
  if (told.aim != PlanWish::For::expected)
    words += "; the expected total changes by " +
             signed_amount(to_places((first.total - as_written->total).value(), places_of(routine))) +
             " points";
  page.say("> changed. " + words + ".");
}

}  // namespace

void put_best(PageParts& page, const Routine& routine, const ToldPlan& told) {
  page.add(programme_table(routine, told));
  page.apart();
  page.add(totals_table(told, places_of(routine)));
  page.apart();
  put_changes_note(page, routine, told);
}

namespace {

Datum reaches_datum(const std::optional<ChanceBounds>& reaches) {
  if (!reaches) return {};
  return Record{{"chance", as_number(reaches->chance)},
                {"least", as_number(reaches->least)},
                {"most", as_number(reaches->most)}};
}

PageTable chosen_elements(const Routine& routine, const PlanChoice& choice) {
  PageTable table("", program_columns({"number", "title", "option", "left_out"}));
  for (std::size_t i = 0; i < choice.options.size(); ++i) {
    const Element& element = routine.elements.at(i);
    table.add({element.number,
               std::string(element.title),
               choice_name(element, choice.options[i]),
               {"", choice.options[i] == leave_out}});
  }
  return table;
}

PageTable programmes_table(const Routine& routine, const ToldPlan& told,
                           std::span<const PlanChoice> choices) {
  PageTable table("programmes", {{"elements", ""},
                                 for_programs("total_expected", "total"),
                                 {"quantile", ""},
                                 {"reaches", ""},
                                 for_programs("", "chance"),
                                 {"seconds", ""},
                                 {"behind", ""}});
  for (const PlanChoice& choice : choices)
    table.add({records_of(chosen_elements(routine, choice)), choice.total.text(), text_of(choice.quantile),
               reaches_datum(choice.reaches), choice.reaches ? as_number(choice.reaches->chance) : "",
               text_of(choice.seconds), behind_of(routine, told, choice)});
  return table;
}

void put_for_csv(PageParts& page, PageTable table, std::string what, const std::string& rank) {
  table.key = "";
  table.in_csv = true;
  table.given = {{"what", std::move(what)}, {"rank", rank}};
  page.add(std::move(table), Seen::by_programs);
}

}  // namespace

// In CSV the elements of a programme follow it.
void put_programmes(PageParts& page, const Routine& routine, const ToldPlan& told) {
  const std::vector<PlanChoice>& choices = told.plan.choices;
  page.add(programmes_table(routine, told, choices), Seen::by_programs);
  for (std::size_t i = 0; i < choices.size(); ++i) {
    const std::string rank = std::to_string(i + 1);
    put_for_csv(page, programmes_table(routine, told, std::span(&choices[i], 1)), "programme", rank);
    put_for_csv(page, chosen_elements(routine, choices[i]), "element", rank);
  }
  const auto put_beside = [&](std::string key, std::string what, const std::optional<PlanChoice>& choice) {
    if (!choice) return page.fact(std::move(key), Datum());
    const PageTable table = programmes_table(routine, told, std::span(&*choice, 1));
    page.fact(std::move(key), records_of(table).front());
    put_for_csv(page, table, std::move(what), "");
  };
  put_beside("as_written", "as written", told.plan.as_written);
  put_beside("highest_total", "highest total", told.plan.highest_total);
  page.fact("as_written_allowed", told.plan.as_written_allowed);
}

void put_sentences_for_csv(PageParts& page, std::string what, const std::vector<std::string>& sentences) {
  PageTable table("", {{"title", ""}});
  for (const std::string& sentence : sentences) table.add({sentence});
  put_for_csv(page, std::move(table), std::move(what), "");
}

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

// Known to cost nothing.
bool is_idle(const PlanLimit& limit) {
  const auto is_nothing = [](const std::optional<Decimal>& side, const std::optional<Points>& worth) {
    return !side || (worth && *worth == Points());
  };
  return is_nothing(limit.most, limit.one_more) && is_nothing(limit.least, limit.one_less);
}

std::string idle_note(std::size_t idle, bool all) {
  const std::string which = all ? "The " : "The other ";
  if (idle == 1) return which + "limit costs nothing (--full tells it).";
  return which + std::to_string(idle) + " limits cost nothing (--full lists them).";
}

PageTable limits_table(const std::vector<PlanLimit>& limits) {
  using enum Align;
  PageTable table("limits", {{"limit", "limit", words, Wraps::yes, Seen::always, "", 2, 0, "title"},
                             {"by", "by", words, Wraps::yes},
                             for_programs("least"),
                             for_programs("most"),
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
  if (plan.choices.empty()) return page.add(limits_table(plan.limits), Seen::by_programs);
  if (!plan.limits.empty()) page.heading("What each limit costs");
  page.add(limits_table(plan.limits));
  if (plan.limits.empty()) return;
  const auto idle = static_cast<std::size_t>(std::count_if(plan.limits.begin(), plan.limits.end(), is_idle));
  const bool all = idle == plan.limits.size();
  if (idle > 0) page.say(idle_note(idle, all), Seen::in_brief);
  // Without a proof no other plan could be set beside this one.
  if (!plan.proved && plan.gap != Decimal())
    page.say(
        "What one more or one less would bring was not worked out: only a proved plan can be set beside "
        "another.");
  page.say(std::string(limits_words), all ? Seen::in_full : Seen::by_people);
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
