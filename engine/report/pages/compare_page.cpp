#include "engine/choosing/compare.h"
#include "engine/report/face.h"
#include "engine/report/page.h"
#include "engine/report/pages/compare.h"
#include "engine/report/pages/face.h"
#include "tables/quantity.h"

namespace landdrill::report {
namespace {

PageParts element_part(const Routine& routine, const ComparedElement& compared) {
  const Comparison& comparison = compared.comparison;
  const Element& element = routine.elements.at(comparison.element);
  PageParts page;
  page.heading(name_of(element) + ", " + element.kind->title);
  page.fact("element", comparison.label);
  page.fact("number", {"", element.number});
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

}  // namespace landdrill::report
