#include "engine/report/pages/compare.h"

#include <fmt/format.h>

#include <span>

#include "engine/chances/forecast.h"
#include "engine/chances/risk.h"
#include "engine/chances/spreads.h"
#include "engine/choosing/compare.h"
#include "engine/report/figures.h"
#include "engine/report/page.h"
#include "engine/report/pages/asked.h"
#include "engine/report/pages/choosing.h"
#include "engine/report/pages/face.h"
#include "engine/routine/wish.h"
#include "engine/score/build_up.h"
#include "engine/score/execution.h"
#include "grammar/diagnostics.h"
#include "grammar/words.h"
#include "tables/decimal.h"
#include "tables/quantity.h"

namespace landdrill::report {
namespace {

// Those that were asked for: one by its number or its title, or all that have options.
using Elements = std::vector<std::size_t>;

Typed<Elements> one_element(const Routine& routine, const std::string& typed) {
  const std::optional<int> number = number_in(typed);
  std::vector<std::string_view> known;
  for (std::size_t i = 0; i < routine.elements.size(); ++i) {
    const Element& element = routine.elements[i];
    if (number ? element.number == *number : words::same(element.title, typed)) return Elements{i};
    if (!element.title.empty()) known.push_back(element.title);
  }
  return tl::unexpected(
      with_hint(fmt::format("found \"{}\"; expected the number or the title of an element", typed),
                words::nearest_hint(typed, known).words));
}

Typed<Elements> elements_asked_for(const Asked& asked, const Routine& routine) {
  if (asked.operands.size() > 1) return one_element(routine, asked.operands[1]);
  Elements all;
  for (std::size_t i = 0; i < routine.elements.size(); ++i)
    if (routine.elements[i].options.size() > 1) all.push_back(i);
  return all;
}

std::vector<std::string> without_options(const Routine& routine, const Elements& elements) {
  const std::string what_to_do =
      "add `option \"title\"` below the element, with its own lines: parts, expect, slip";
  if (elements.empty()) return {"no element has an option to compare with: " + what_to_do};
  const Element& element = routine.elements[elements.front()];
  if (element.options.size() > 1) return {};
  return {fmt::format("{} has no option to compare with: {}", name_of(element), what_to_do)};
}

// With each of these elements swum by its first option, its second one and so on, or its last.
std::vector<Step> estimates_of(const Routine& routine, const Elements& elements, Wish wish) {
  wish.options.resize(routine.elements.size());
  std::size_t most = 0;
  for (const std::size_t i : elements) most = std::max(most, routine.elements[i].options.size());
  std::vector<Step> estimates;
  for (std::size_t place = 0; place < most; ++place) {
    for (const std::size_t i : elements)
      wish.options[i] = std::min(place, routine.elements[i].options.size() - 1);
    estimates.push_back(*account(routine, wish, std::nullopt).estimate);
  }
  return estimates;
}

}  // namespace

ChoosingAnswer compare(const Asked& asked, const Routine& routine, const Diagnostics& messages,
                       const Progress& elements_done) {
  const PriceWish price = whole_price_wish(asked, routine);
  if (!price.mistake.empty()) return mistaken(price.mistake);
  const Typed<SpreadWish> spread = spreads_of(asked, routine);
  if (!spread) return mistaken(spread.error());
  const Typed<Elements> elements = elements_asked_for(asked, routine);
  if (!elements) return mistaken(elements.error());
  std::vector<std::string> nothing = without_options(routine, *elements);
  if (!nothing.empty()) return missing_in(routine, std::move(nothing));
  std::vector<ComparedElement> compared;
  Step beside{.inputs = estimates_of(routine, *elements, price.wish)};
  for (const std::size_t element : *elements) {
    if (elements_done) elements_done(compared.size(), elements->size());
    Comparison one = landdrill::compare(routine, element, price.wish, {*spread, {}, {}});
    if (!one.obstacles.empty()) return missing_in(routine, one.obstacles);
    compared.push_back({std::move(one), {}});
    for (std::size_t option = 0; option < routine.elements[element].options.size(); ++option)
      compared.back().stories.push_back(beside.inputs[option].inputs.at(element));
  }
  beside.rows = rows_of(spreads(routine, price.wish, *spread));
  return compare_page(routine, face_of(routine, messages, price.wish, std::move(beside)), compared);
}

namespace {

PageParts element_part(const Routine& routine, const ComparedElement& compared) {
  const Comparison& comparison = compared.comparison;
  const Element& element = routine.elements.at(comparison.element);
  PageParts page;
  page.heading(name_of(element) + ", " + element.kind->title);
  page.fact("element", comparison.label);
  page.fact("number", element.number);
  page.fact("title", std::string(element.title));
  page.fact("kind", element.kind->title);
  for (const Duel& duel : comparison.duels) page.say(verdict(routine, comparison, duel));
  put_options(page, routine, comparison);
  page.no_sections("against");
  for (const Duel& duel : comparison.duels) put_duel(page, routine, comparison, duel);
  put_part_by_part(page, routine, compared);
  return page;
}

void put_comparison_legend(PageParts& page) {
  page.heading("How to read it");
  page.list("", {"to expect: what the element brings on average, as declared and on the base mark by their "
                 "chances, at the mark expected.",
                 "scatter: how far from that it usually lies (standard deviation), judges, day and base "
                 "mark together.",
                 "total: the whole routine, its other elements as they are."});
}

}  // namespace

std::string quoted_option(const Comparison& comparison, std::size_t option) {
  const std::string& title = comparison.options.at(option).title;
  return option == 0 ? title : "\"" + title + "\"";
}

std::string option_at_start(const Comparison& comparison, std::size_t option) {
  return option == 0 ? "As written" : quoted_option(comparison, option);
}

std::string verdict(const Routine& routine, const Comparison& comparison, const Duel& duel) {
  const auto better = [&](std::size_t one, std::size_t other, Points points) {
    return option_at_start(comparison, one) + " gives " + points.text(places_of(routine)) +
           " points more than " + quoted_option(comparison, other) + ".";
  };
  if (duel.gain == Points())
    return option_at_start(comparison, duel.harder) + " and " + quoted_option(comparison, duel.easier) +
           " give the same.";
  return duel.gain > Points() ? better(duel.harder, duel.easier, duel.gain)
                              : better(duel.easier, duel.harder, Points() - duel.gain);
}

Page compare_page(const Routine& routine, const Face& face, const std::vector<ComparedElement>& elements) {
  Page page("compare");
  page.csv = {"element",     "what",          "option",      "against",         "cause",
              "step",        "part",          "times",       "difficulty",      "base_difficulty",
              "mark",        "chance",        "chance_from", "points_declared", "points_base",
              "points",      "scatter",       "total",       "easier_part",     "easier_points",
              "harder_part", "harder_points", "breaks"};
  put_title(page, face);
  for (const ComparedElement& one : elements) page.section("elements", element_part(routine, one));
  put_comparison_legend(page);
  put_notes(page, face);
  return page;
}

namespace {

std::string_view chance_source_word(const BaseChance& chance) {
  if (chance.runs.all > 0) return "runs";
  return chance.from == BaseChance::From::sheet ? "slip" : chance.from == BaseChance::From::set ? "set" : "";
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
  const std::string declared = "as declared", base = "base mark", expect = "to expect";
  return {{"option", "option", Align::words, Wraps::yes},
          amount_column("mark", "mark"),
          amount_column("declared", "difficulty", declared, "difficulty"),
          amount_column("points_declared", "points", declared),
          amount_column("base_chance", "chance", base, "chance"),
          amount_column("points_base", "points", base),
          amount_column("points_expected", "points", expect, "points"),
          amount_column("scatter", "scatter", expect),
          for_programs("base_difficulty"),
          for_programs("base_chance_from", "chance_from"),
          for_programs("total_expected", "total"),
          for_programs("usual"),
          for_programs("breaks"),
          for_programs("parts")};
}

PageTable options_table(std::span<const OptionWorth> options, const Element& element, int places) {
  PageTable table("options", option_columns());
  table.keys = 1;
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
               chance_source_word(option.chance),
               option.total.text(places),
               usual(option, places),
               Datum::texts(option.breaks),
               records_of(parts_table(option, places))});
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
    if (option.chance.runs.all > 0)
      page.say("The chance of the base mark of " + quoted_option(comparison, option.option) + " is " +
               source_of(option.chance, "") + "; " + weight_words(option.chance) + ".");
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
