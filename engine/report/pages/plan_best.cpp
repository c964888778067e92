#include <algorithm>

#include "engine/choosing/plan.h"
#include "engine/report/amount_text.h"
#include "engine/report/chance.h"
#include "engine/report/page.h"
#include "engine/report/pages/plan.h"
#include "tables/decimal.h"

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

std::vector<Entry> total_cells(std::string name, const PlanChoice& choice, const ToldPlan& told, int places) {
  std::vector<Entry> cells{std::move(name), to_places(choice.total.value(), places)};
  if (told.aim == PlanWish::For::quantile)
    cells.emplace_back(choice.quantile ? to_places(*choice.quantile, places) : "");
  if (told.aim == PlanWish::For::target)
    cells.emplace_back(choice.reaches ? per_cent(choice.reaches->chance) : "");
  cells.emplace_back(choice.seconds ? to_places(*choice.seconds, 1) + " s" : "");
  return cells;
}

PageTable totals_table(const ToldPlan& told, int places) {
  using enum Align;
  std::vector<PageColumn> columns{{"", "", words, Wraps::yes}, {"", "expected total", amount}};
  if (told.aim == PlanWish::For::quantile) columns.push_back({"", told.share + " % are lower", amount});
  if (told.aim == PlanWish::For::target) columns.push_back({"", "chance of " + told.target, amount});
  columns.push_back({"", "time", amount});
  PageTable table("", std::move(columns));
  table.add(total_cells("this programme", told.plan.choices.front(), told, places), Look::total);
  if (told.plan.as_written)
    table.add(total_cells(told.plan.as_written_allowed ? "without these changes"
                                                       : "without these changes, which breaks a limit",
                          *told.plan.as_written, told, places));
  return table;
}

// Though the next ones may not be proved.
bool is_best(const Plan& plan) {
  return plan.proved || plan.gap == Decimal();
}

void put_changes_note(PageParts& page, const Routine& routine, const ToldPlan& told) {
  if (told.plan.choices.front().options == told.as_written)
    return page.say(is_best(told.plan) ? "No change makes it better than it is."
                                       : "No change that was tried makes it better than it is.");
  const std::string ahead = told.plan.as_written ? behind_of(routine, told, *told.plan.as_written) : "";
  if (ahead.empty()) return;
  const std::string sign = Decimal::parse(ahead) > Decimal() ? "+" : "";
  const std::string why = told.plan.as_written_allowed ? "Together the changes bring "
                                                       : "Without the changes a limit is broken; they bring ";
  page.say("> changed. " + why + sign + ahead + std::string(unit_of(told)) + ".");
}

}  // namespace

void put_best(PageParts& page, const Routine& routine, const ToldPlan& told) {
  page.add(programme_table(routine, told));
  page.apart();
  page.add(totals_table(told, places_of(routine)));
  page.apart();
  put_changes_note(page, routine, told);
}

}  // namespace landdrill::report
