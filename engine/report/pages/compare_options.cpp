#include <span>

#include "engine/chances/risk.h"
#include "engine/choosing/compare.h"
#include "engine/report/amount_text.h"
#include "engine/report/chance.h"
#include "engine/report/page.h"
#include "engine/report/pages/compare.h"
#include "engine/score/execution.h"
#include "tables/decimal.h"

namespace landdrill::report {
namespace {

std::string_view chance_source_word(BaseChance::From from) {
  return from == BaseChance::From::slip ? "slip" : from == BaseChance::From::runs ? "runs" : "";
}

std::string expected_mark(const OptionWorth& option, int places) {
  return option.mark ? text_of(option.mark->mark, places) : "";
}

// What it brings, give or take its scatter.
Datum usual(const OptionWorth& option, int places) {
  const Decimal expected = option.expected.value();
  Record record{{"value", expected.text(places)}};
  if (option.spread) {
    record.emplace_back("low", (expected - *option.spread).text(places));
    record.emplace_back("high", (expected + *option.spread).text(places));
  }
  return record;
}

std::vector<PageColumn> option_columns() {
  using enum Align;
  const auto column = [](std::string key, std::string heading, std::string group, std::string csv) {
    return PageColumn{key, heading, amount, Wraps::no, Seen::always, group, 2, 0, csv};
  };
  const auto for_programs = [](std::string key, std::string csv) {
    return PageColumn{key, "", amount, Wraps::no, Seen::by_programs, "", 2, 0, csv};
  };
  const std::string declared = "as declared", base = "base mark", expect = "to expect";
  return {{"option", "option", words, Wraps::yes},
          column("mark", "mark", "", ""),
          column("declared", "difficulty", declared, "difficulty"),
          column("points_declared", "points", declared, ""),
          column("base_chance", "chance", base, "chance"),
          column("points_base", "points", base, ""),
          column("points_expected", "points", expect, "points"),
          column("scatter", "scatter", expect, ""),
          for_programs("base_difficulty", ""),
          for_programs("base_chance_from", "chance_from"),
          for_programs("total_expected", "total"),
          for_programs("usual", ""),
          for_programs("breaks", ""),
          for_programs("parts", "")};
}

PageTable options_table(std::span<const OptionWorth> options, const Element& element, int places) {
  PageTable table("options", option_columns());
  table.keys = 1;
  table.picture = {
      Picture::As::dots, "What each option can be expected to bring", "points", "option", {"usual"}};
  const int mark_places = element.panel->step.places_used();
  for (const OptionWorth& option : options)
    table.add({{(option.breaks.empty() ? "" : "! ") + option.title, option.title},
               {expected_mark(option, mark_places), expected_mark(option, 0)},
               option.declared.text(2),
               {text_of(option.clean, places), text_of(option.clean)},
               {given_per_cent(option.chance.percent), option.chance.percent.text()},
               {text_of(option.on_base, places), text_of(option.on_base)},
               option.expected.text(places),
               {option.spread ? to_places(*option.spread, 2) : "", text_of(option.spread)},
               text_of(option.base),
               chance_source_word(option.chance.from),
               option.total.text(places),
               {"", usual(option, places)},
               {"", Datum::texts(option.breaks)},
               {"", records_of(parts_table(option, places))}});
  return table;
}

// In CSV the parts of an option follow it.
void put_options_for_csv(PageParts& page, const Element& element, const Comparison& comparison, int places) {
  for (const OptionWorth& one : comparison.options) {
    PageTable option = options_table(std::span(&one, 1), element, places), parts = parts_table(one, places);
    option.key = "";
    option.given = {{"what", "option"}};
    for (PageTable* table : {&option, &parts}) {
      table->in_csv = true;
      table->picture = {};
      page.add(std::move(*table), Seen::by_programs);
    }
  }
}

// "from the run of 2026-05-07"
std::string mark_source(const ExpectedMark& mark) {
  if (mark.from == ExpectedMark::From::run)
    return "from the run of " + std::string(mark.runs.front().run->date);
  return "from " + std::to_string(mark.runs.size()) + " runs";
}

PageParts option_notes(const Comparison& comparison) {
  PageParts page;
  for (const OptionWorth& option : comparison.options)
    if (option.mark && !option.mark->runs.empty())
      page.say("The mark of " + quoted_option(comparison, option.option) + " is " +
               mark_source(*option.mark) + ".");
  for (const OptionWorth& option : comparison.options)
    for (const std::string& limit : option.breaks)
      page.say("! ", option_at_start(comparison, option.option) +
                         " breaks a limit, so a plan leaves it out: " + limit + ".");
  const OptionWorth& first = comparison.options.front();
  if (first.base) page.say("On the base mark the difficulty credited is " + first.base->text(2) + ".");
  if (!first.clean)
    page.say("This event weights elements by difficulty together: the points are those of all of them.");
  return page;
}

}  // namespace

void put_options(PageParts& page, const Routine& routine, const Comparison& comparison) {
  const Element& element = routine.elements.at(comparison.element);
  page.apart();
  page.add(options_table(comparison.options, element, places_of(routine)));
  put_options_for_csv(page, element, comparison, places_of(routine));
  PageParts notes = option_notes(comparison);
  if (!notes.empty()) page.apart();
  page.append(std::move(notes));
}

}  // namespace landdrill::report
