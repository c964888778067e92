#include <span>

#include "engine/chances/forecast.h"
#include "engine/choosing/plan.h"
#include "engine/report/amount_text.h"
#include "engine/report/chance.h"
#include "engine/report/page.h"
#include "engine/report/pages/plan.h"

namespace landdrill::report {
namespace {

Datum reaches_datum(const std::optional<ChanceBounds>& reaches) {
  if (!reaches) return {};
  return Record{{"chance", as_number(reaches->chance)},
                {"least", as_number(reaches->least)},
                {"most", as_number(reaches->most)}};
}

PageTable chosen_elements(const Routine& routine, const PlanChoice& choice) {
  PageTable table("", {{"number", ""}, {"title", ""}, {"option", ""}, {"left_out", ""}});
  for (std::size_t i = 0; i < choice.options.size(); ++i) {
    const Element& element = routine.elements.at(i);
    table.add({{"", element.number},
               std::string(element.title),
               choice_name(element, choice.options[i]),
               {"", choice.options[i] == leave_out}});
  }
  return table;
}

PageTable programmes_table(const Routine& routine, const ToldPlan& told,
                           std::span<const PlanChoice> choices) {
  const auto column = [](std::string key, std::string csv) {
    return PageColumn{std::move(key), "", Align::amount, Wraps::no, Seen::always, "", 2, 0, std::move(csv)};
  };
  PageTable table("programmes", {{"elements", ""},
                                 column("total_expected", "total"),
                                 {"quantile", ""},
                                 {"reaches", ""},
                                 column("", "chance"),
                                 {"seconds", ""},
                                 {"behind", ""}});
  for (const PlanChoice& choice : choices)
    table.add({{"", records_of(chosen_elements(routine, choice))},
               choice.total.text(),
               text_of(choice.quantile),
               {"", reaches_datum(choice.reaches)},
               choice.reaches ? as_number(choice.reaches->chance) : "",
               text_of(choice.seconds),
               behind_of(routine, told, choice)});
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
  Datum as_written;
  if (told.plan.as_written) {
    const PageTable table = programmes_table(routine, told, std::span(&*told.plan.as_written, 1));
    as_written = records_of(table).front();
    put_for_csv(page, table, "as written", "");
  }
  page.fact("as_written", {"", std::move(as_written)});
  page.fact("as_written_allowed", {"", told.plan.as_written_allowed});
}

void put_sentences_for_csv(PageParts& page, std::string what, const std::vector<std::string>& sentences) {
  PageTable table("", {{"title", ""}});
  for (const std::string& sentence : sentences) table.add({sentence});
  put_for_csv(page, std::move(table), std::move(what), "");
}

}  // namespace landdrill::report
