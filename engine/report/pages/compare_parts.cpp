#include "engine/choosing/compare.h"
#include "engine/report/amount_text.h"
#include "engine/report/chance.h"
#include "engine/report/page.h"
#include "engine/report/pages/compare.h"

namespace landdrill::report {
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
  const std::string words = "chance of the base mark " + percent + " %, " +
                            std::string(source_of(option.chance, "as nothing says otherwise"));
  if (!option.clean || !option.on_base) return words + ".";
  return words + "; (100 - " + percent + ") % x " + option.clean->text(places) + " + " + percent + " % x " +
         option.on_base->text(places) + " = " + option.expected.text(places) + ".";
}

}  // namespace

PageTable parts_table(const OptionWorth& option, int places) {
  using enum Align;
  const auto csv = [](std::string name, std::string heading, Align align) {
    return PageColumn{"", heading, align, align == words ? Wraps::yes : Wraps::no, Seen::always, "",
                      2,  0,       name};
  };
  PageTable table("", {{"part", "part", words, Wraps::yes},
                       {"times", "", amount, Wraps::no, Seen::by_programs},
                       {"adds", "adds", amount, Wraps::no, Seen::always, "", 2, 0, "difficulty"},
                       {"dropping", "without it", amount, Wraps::no, Seen::always, "", 2, 0, "points"},
                       csv("easier_part", "next easier", words),
                       csv("easier_points", "points", amount),
                       csv("harder_part", "next harder", words),
                       csv("harder_points", "points", amount),
                       {"easier", "", words, Wraps::no, Seen::by_programs},
                       {"harder", "", words, Wraps::no, Seen::by_programs}});
  table.keys = 1;
  table.given = {{"what", "part"}, {"option", option.title}};
  for (const PartWorth& part : option.parts)
    table.add({{part_and_times(part), part.code},
               {"", part.times},
               {text_of(part.adds, 2), text_of(part.adds)},
               {signed_text(part.dropping, places), text_of(part.dropping)},
               exchange_part(part.easier),
               exchange_points(part.easier, places),
               exchange_part(part.harder),
               exchange_points(part.harder, places),
               {"", exchange_datum(part.easier)},
               {"", exchange_datum(part.harder)}});
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
