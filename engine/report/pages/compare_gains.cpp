#include "engine/choosing/compare.h"
#include "engine/report/amount_text.h"
#include "engine/report/chance.h"
#include "engine/report/page.h"
#include "engine/report/pages/compare.h"
#include "tables/decimal.h"
#include "tables/quantity.h"

namespace landdrill::report {
namespace {

constexpr int shown_places = 2;

std::string signed_gain(Points gain) {
  return signed_text(std::optional(round(Exact(gain.value()), shown_places, Rounding::half_up)),
                     shown_places);
}

// A row for each mark, a column for each chance.
PageTable gain_table(const Duel& duel, const OptionWorth& harder, int mark_places) {
  PageTable table("", {{"mark", "mark", Align::amount}});
  table.keys = 1;
  table.picture = {Picture::As::curve, "Where the harder one stops paying", "points", "mark", {}};
  for (const Decimal chance : duel.chances) {
    const std::string key = chance.text() + " %";
    const bool expected = chance == harder.chance.percent;
    table.columns.push_back({key, (expected ? ">" : "") + given_per_cent(chance), Align::amount});
    table.picture.amounts.push_back(key);
  }
  auto cell = duel.table.begin();
  for (const Mark mark : duel.marks) {
    const bool expected = harder.mark && harder.mark->mark == mark;
    std::vector<Entry> cells{{(expected ? "> " : "") + mark.text(mark_places), mark.text()}};
    for (std::size_t i = 0; i < duel.chances.size(); ++i, ++cell)
      cells.emplace_back(signed_gain(*cell), cell->text());
    table.add(std::move(cells));
  }
  return table;
}

// The same, a row for each mark and chance.
PageTable gain_at(const Duel& duel, int places) {
  const auto column = [](std::string key, std::string csv) {
    return PageColumn{std::move(key), "", Align::amount, Wraps::no, Seen::always, "", 2, 0, std::move(csv)};
  };
  PageTable table("gain_at", {column("mark", ""), column("base_chance", "chance"), column("gain", "points")});
  table.in_csv = true;
  for (std::size_t i = 0; i < duel.table.size(); ++i)
    table.add({duel.marks.at(i / duel.chances.size()).text(), duel.chances.at(i % duel.chances.size()).text(),
               duel.table[i].text(places)});
  return table;
}

}  // namespace

void put_gains_by_mark(PageParts& page, const Routine& routine, const Comparison& comparison,
                       const Duel& duel) {
  const OptionWorth& harder = comparison.options.at(duel.harder);
  const std::string better = quoted_option(comparison, duel.harder);
  const std::string other = quoted_option(comparison, duel.easier);
  if (!duel.marks.empty() && !duel.chances.empty()) {
    page.apart();
    page.say("Points that " + better + " gives more, by its mark" +
             (harder.base ? " and the chance of its base mark:" : ":"));
    const int mark_places = routine.elements.at(comparison.element).panel->step.places_used();
    page.add(gain_table(duel, harder, mark_places), Seen::by_people);
    page.say("> as expected now; where it says -, " + other + " gives more.");
  }
  PageTable all = gain_at(duel, places_of(routine));
  all.given = {
      {"what", "gain at"}, {"option", harder.title}, {"against", comparison.options.at(duel.easier).title}};
  page.add(std::move(all), Seen::by_programs);
}

}  // namespace landdrill::report
