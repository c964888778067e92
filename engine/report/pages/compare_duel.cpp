#include "engine/choosing/compare.h"
#include "engine/report/amount_text.h"
#include "engine/report/chance.h"
#include "engine/report/page.h"
#include "engine/report/pages/compare.h"
#include "tables/decimal.h"
#include "tables/quantity.h"

namespace landdrill::report {
namespace {

std::string_view cause_word(WorthStep::Cause cause) {
  switch (cause) {
    case WorthStep::Cause::part:
      return "part";
    case WorthStep::Cause::difficulty:
      return "difficulty";
    case WorthStep::Cause::execution:
      return "execution";
    case WorthStep::Cause::risk:
      return "base mark";
  }
  return "";
}

PageColumn csv_column(std::string key, std::string csv) {
  return {std::move(key), "", Align::amount, Wraps::no, Seen::by_programs, "", 2, 0, std::move(csv)};
}

// One duel, told from top to bottom.
class DuelPart {
 public:
  DuelPart(const Routine& routine, const Comparison& comparison, const Duel& duel)
      : routine_(routine),
        comparison_(comparison),
        duel_(duel),
        element_(routine.elements.at(comparison.element)),
        harder_(comparison.options.at(duel.harder)),
        easier_(comparison.options.at(duel.easier)),
        places_(places_of(routine)) {}

  PageParts tell() const {
    PageParts page;
    page.fact("harder", harder_.title);
    page.fact("easier", easier_.title);
    page.apart();
    page.add(steps());
    put_verge(page);
    page.apart();
    page.say(break_even());
    put_gains_by_mark(page, routine_, comparison_, duel_);
    return page;
  }

 private:
  bool pays() const { return duel_.gain >= Points(); }
  std::string quoted(std::size_t option) const { return quoted_option(comparison_, option); }
  std::string mark_text(Mark mark) const { return mark.text(element_.panel->step.places_used()); }
  std::string expected_mark_text() const {
    return harder_.mark && harder_.mark->mark ? mark_text(*harder_.mark->mark) : "";
  }
  std::string signed_points(Points points) const { return signed_text(std::optional(points), places_); }
  Facts given(std::string what) const {
    return {{"what", std::move(what)}, {"option", harder_.title}, {"against", easier_.title}};
  }

  PageTable steps() const;
  void put_verge(PageParts& page) const;
  std::string even_text() const;
  std::string break_even() const;
  std::string mark_clause() const;
  std::string chance_clause() const;
  std::string without_base() const;

  const Routine& routine_;
  const Comparison& comparison_;
  const Duel& duel_;
  const Element& element_;
  const OptionWorth &harder_, &easier_;
  int places_;
};

PageTable DuelPart::steps() const {
  using enum Align;
  PageTable table("steps", {{"step", "why " + quoted(pays() ? duel_.harder : duel_.easier) + " gives more",
                             words, Wraps::yes},
                            csv_column("cause", ""),
                            {"change", "change", amount, Wraps::no, Seen::always, "", 2, 0, "points"},
                            {"total", "total", amount, Wraps::no, Seen::by_people}});
  table.in_csv = true;
  table.given = given("step");
  table.picture = {Picture::As::bridge, "Why one gives more", "points", "step", {"change", "total"}};
  table.add({"expected with " + quoted(duel_.easier), "", "", easier_.total.text(places_)}, Look::total,
            Seen::by_people);
  for (const WorthStep& step : duel_.steps)
    table.add(
        {step.label, cause_word(step.cause), {signed_points(step.change), step.change.text(places_)}, ""});
  table.add(
      {"expected with " + quoted(duel_.harder), "", signed_points(duel_.gain), harder_.total.text(places_)},
      Look::total, Seen::by_people);
  return table;
}

// Where both are equal, shortened only where it cannot be written exactly.
std::string DuelPart::even_text() const {
  return duel_.even_mark ? round(*duel_.even_mark, Decimal::places, Rounding::half_up).text() : "";
}

// Where one of the two stops being the better one: facts in JSON, one a row in CSV.
void DuelPart::put_verge(PageParts& page) const {
  const std::string gain = duel_.gain.text(places_);
  page.fact("gain", gain);
  page.fact("lowest_mark", text_of(duel_.lowest_mark));
  page.fact("even_mark", even_text());
  page.fact("highest_base_chance", text_of(duel_.highest_chance));
  PageTable table("", {csv_column("", "what"), csv_column("", "points"), csv_column("", "mark"),
                       csv_column("", "chance")});
  table.in_csv = true;
  table.given = given("");
  table.add({"gain", gain, "", ""});
  table.add({"lowest mark", "", text_of(duel_.lowest_mark), ""});
  table.add({"even mark", "", even_text(), ""});
  table.add({"highest chance", "", "", text_of(duel_.highest_chance)});
  page.add(std::move(table), Seen::by_programs);
}

// "down to a mark of 5.75 (7.00 is expected)"
std::string DuelPart::mark_clause() const {
  if (*duel_.lowest_mark <= element_.panel->least) return "whatever its mark";
  return (pays() ? "down to a mark of " : "from a mark of ") + mark_text(*duel_.lowest_mark) +
         (pays() ? "" : " on") + " (" + expected_mark_text() + " is expected)";
}

std::string DuelPart::chance_clause() const {
  if (*duel_.highest_chance >= Decimal::whole(100)) return "however often it gets its base mark";
  return (pays() ? "up to a chance of " : "with a chance of at most ") +
         given_per_cent(*duel_.highest_chance) + " for its base mark (" +
         given_per_cent(harder_.chance.percent) + " is expected)";
}

// Where the kind has no base mark, only the mark can decide.
std::string DuelPart::without_base() const {
  if (!duel_.lowest_mark) return "would not be the better one at any mark.";
  return std::string(pays() ? "stays" : "would be") + " the better one " + mark_clause() +
         ", with all else as it is.";
}

std::string DuelPart::break_even() const {
  const std::string start = option_at_start(comparison_, duel_.harder) +
                            (harder_.declared == easier_.declared ? " " : ", the harder one, ");
  const std::string would = start + "would be the better one ", as_it_is = ", with all else as it is.";
  if (!harder_.base) return start + without_base();
  if (pays()) return start + "stays the better one " + mark_clause() + ", or " + chance_clause() + as_it_is;
  if (!duel_.lowest_mark && !duel_.highest_chance)
    return start + "would not be the better one at any mark, nor if it never got its base mark.";
  if (!duel_.lowest_mark) return would + chance_clause() + ", but at no mark" + as_it_is;
  if (!duel_.highest_chance)
    return would + mark_clause() + ", but not if it only never got its base mark" + as_it_is;
  return would + mark_clause() + ", or " + chance_clause() + as_it_is;
}

}  // namespace

void put_duel(PageParts& page, const Routine& routine, const Comparison& comparison, const Duel& duel) {
  page.section("against", DuelPart(routine, comparison, duel).tell());
}

}  // namespace landdrill::report
