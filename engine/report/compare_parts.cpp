#include <algorithm>

#include "engine/report/chance.h"
#include "engine/report/compare.h"
#include "engine/report/explain.h"
#include "engine/report/listing.h"
#include "engine/report/sections.h"
#include "engine/report/width.h"

namespace landdrill::report {
namespace {

std::string part_and_times(const PartWorth& part) {
  return part.times == 1 ? part.code : part.code + " x" + std::to_string(part.times);
}

std::string change_text(const std::optional<Points>& change, int places) {
  return change ? with_sign(change->text(places)) : "";
}

std::string part_table(const OptionWorth& option, int places, const TextWish& wish) {
  using enum Align;
  Listing listing{"",
                  {{"part", words, true},
                   {"adds", amount},
                   {"without it", amount},
                   {"next easier", words, true},
                   {"points", amount},
                   {"next harder", words, true},
                   {"points", amount}},
                  {}};
  for (const PartWorth& part : option.parts) {
    listing.rows.push_back({part_and_times(part), part.adds ? part.adds->text(2) : "",
                            change_text(part.dropping, places), part.easier ? part.easier->code : "-",
                            part.easier ? with_sign(part.easier->change.text(places)) : "",
                            part.harder ? part.harder->code : "-",
                            part.harder ? with_sign(part.harder->change.text(places)) : ""});
  }
  return as_text(listing, wish);
}

// "as written: 88 % ..." without working anything out: the numbers that go in, and what comes out.
std::string sum_sentence(const OptionWorth& option, int places) {
  std::string words = "chance of the base mark " + option.chance.percent.text() + " %, " +
                      std::string(source_of(option.chance, "as nothing says otherwise"));
  if (!option.clean || !option.on_base) return words + ".";
  const std::string percent = option.chance.percent.text();
  return words + "; (100 - " + percent + ") % x " + option.clean->text(places) + " + " + percent + " % x " +
         option.on_base->text(places) + " = " + option.expected.text(places) + ".";
}

std::string option_section(const OptionWorth& option, const Step* story, int places, const TextWish& wish,
                           std::string_view set) {
  std::string result = heading("Part by part: " + plain(option.title), wish);
  result +=
      option.parts.empty()
          ? paragraph("", "The difficulty is stated in the sheet, so no part can be told apart.", wish.width)
          : part_table(option, places, wish);
  result += "\n" + paragraph("", sum_sentence(option, places), wish.width);
  return story == nullptr ? result : result + explain(*story, set, wish);
}

}  // namespace

std::string parts_section(const Routine& routine, const ComparedElement& compared, const TextWish& wish) {
  if (!wish.full) return "";
  std::string result;
  for (std::size_t i = 0; i < compared.comparison.options.size(); ++i) {
    const Step* story = i < compared.stories.size() ? &compared.stories[i] : nullptr;
    result += option_section(compared.comparison.options[i], story, places_of(routine), wish,
                             routine.set->info.title);
  }
  return result + "\n" +
         paragraph("",
                   "adds: to the declared difficulty. Points, without it or with the next part of its family "
                   "instead: what the expected total changes by, at the "
                   "same mark and the same chance of the base mark.",
                   wish.width);
}

}  // namespace landdrill::report
