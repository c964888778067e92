#include "engine/choosing/compare.h"
#include "engine/report/figures.h"
#include "engine/report/page.h"
#include "engine/report/pages/compare.h"
#include "tables/decimal.h"
#include "tables/quantity.h"

namespace landdrill::report {
namespace {

std::string_view cause_word(WorthStep::Cause cause) {
  constexpr std::string_view words[] = {"part", "difficulty", "execution", "base mark"};
  return words[static_cast<std::size_t>(cause)];
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
                            for_programs("cause"),
                            amount_column("change", "change", "", "points"),
                            {"total", "total", amount, Wraps::no, Seen::by_people}});
  table.in_csv = true;
  table.given = given("step");
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
  PageTable table("", {for_programs("", "what"), for_programs("", "points"), for_programs("", "mark"),
                       for_programs("", "chance")});
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
  for (const Decimal chance : duel.chances) {
    const bool expected = chance == harder.chance.percent;
    table.columns.push_back({"", (expected ? ">" : "") + given_per_cent(chance), Align::amount});
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
  PageTable table("gain_at", {for_programs("mark"), for_programs("base_chance", "chance"),
                              for_programs("gain", "points")});
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

namespace {

// "spin-720 x2"
std::string part_and_times(const PartWorth& part) {
  return part.times == 1 ? part.code : part.code + " x" + std::to_string(part.times);
}

Datum exchange_datum(const std::optional<PartWorth::Exchange>& exchange) {
  if (!exchange) return {};
  return Record{
      {"part", exchange->code}, {"declared", exchange->declared.text()}, {"change", exchange->change.text()}};
}

Entry exchange_part(const std::optional<PartWorth::Exchange>& exchange) {
  return exchange ? Entry(exchange->code) : Entry("-", Datum());
}

Entry exchange_points(const std::optional<PartWorth::Exchange>& exchange, int places) {
  if (!exchange) return "";
  return {signed_text(std::optional(exchange->change), places), exchange->change.text(places)};
}

// Without working anything out: the numbers that go in, and what comes out.
std::string sum_sentence(const OptionWorth& option, int places) {
  const std::string percent = option.chance.percent.text();
  const std::string words =
      "chance of the base mark " + percent + " %, " + source_of(option.chance, "as nothing says otherwise");
  if (!option.clean || !option.on_base) return words + ".";
  return words + "; (100 - " + percent + ") % x " + option.clean->text(places) + " + " + percent + " % x " +
         option.on_base->text(places) + " = " + option.expected.text(places) + ".";
}

}  // namespace

PageTable parts_table(const OptionWorth& option, int places) {
  using enum Align;
  const auto part_column = [](std::string heading, std::string csv) {
    return PageColumn{"", heading, words, Wraps::yes, Seen::always, "", 2, 0, csv};
  };
  PageTable table("", {{"part", "part", words, Wraps::yes},
                       for_programs("times"),
                       amount_column("adds", "adds", "", "difficulty"),
                       amount_column("dropping", "without it", "", "points"),
                       part_column("next easier", "easier_part"),
                       amount_column("", "points", "", "easier_points"),
                       part_column("next harder", "harder_part"),
                       amount_column("", "points", "", "harder_points"),
                       for_programs("easier"),
                       for_programs("harder")});
  table.keys = 1;
  table.given = {{"what", "part"}, {"option", option.title}};
  for (const PartWorth& part : option.parts)
    table.add({{part_and_times(part), part.code},
               part.times,
               {text_of(part.adds, 2), text_of(part.adds)},
               {signed_text(part.dropping, places), text_of(part.dropping)},
               exchange_part(part.easier),
               exchange_points(part.easier, places),
               exchange_part(part.harder),
               exchange_points(part.harder, places),
               exchange_datum(part.easier),
               exchange_datum(part.harder)});
  return table;
}

void put_part_by_part(PageParts& page, const Routine& routine, const ComparedElement& compared) {
  const int places = places_of(routine);
  for (std::size_t i = 0; i < compared.comparison.options.size(); ++i) {
    const OptionWorth& option = compared.comparison.options[i];
    PageParts one;
    one.heading("Part by part: " + option.title);
    one.fact("option", option.title);
    if (option.parts.empty()) one.say("The difficulty is stated in the sheet, so no part can be told apart.");
    one.add(parts_table(option, places));
    one.apart();
    one.say(sum_sentence(option, places));
    if (i < compared.stories.size()) one.tree("build_up", compared.stories[i], routine.set->info.title);
    page.section("build_ups", std::move(one), Seen::in_full);
  }
  page.apart();
  page.say(
      "adds: to the declared difficulty. Points, without it or with the next part of its family instead: "
      "what the expected total changes by, at the same mark and the same chance of the base mark.",
      Seen::in_full);
}

}  // namespace landdrill::report
