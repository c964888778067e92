#include "engine/report/pages/train.h"

#include <algorithm>
#include <span>

#include "engine/report/figures.h"
#include "engine/report/page.h"
#include "engine/report/pages/asked.h"
#include "engine/report/pages/choosing.h"
#include "engine/report/pages/face.h"
#include "grammar/diagnostics.h"
#include "tables/decimal.h"
#include "tables/quantity.h"

namespace landdrill::report {
namespace {

constexpr int places = 4;

std::string what_to_improve(const Gain& gain) {
  constexpr std::string_view words[] = {"execution mark", "chance of the base mark", "impression mark",
                                        "how many to expect", "how many to expect"};
  const std::string rests_on = gain.runs.all > 0 ? ", " + lost_words(gain.runs) : "";
  return std::string(words[static_cast<std::size_t>(gain.what)]) + rests_on;
}

std::string_view gain_word(Gain::What what) {
  constexpr std::string_view words[] = {"execution", "base chance", "impression", "sync", "penalty"};
  return words[static_cast<std::size_t>(what)];
}

std::string gain_name(const Gain& gain) {
  if (gain.what == Gain::What::sync) return "Sync error: " + gain.label;
  return gain.what == Gain::What::penalty ? "Penalty: " + gain.label : gain.label;
}

std::string from_to_text(const Gain& gain, const std::string& amount) {
  const auto number = Decimal::parse(amount);
  return gain.what == Gain::What::base_chance && number ? given_per_cent(*number) : amount;
}

std::string signed_change(const Gain& gain) {
  return signed_text(std::optional(gain.change), places);
}

// What brings nothing is told in a sentence.
PageTable gains_table(std::span<const Gain> gains) {
  using enum Align;
  PageTable table("gains", {{"rank", "", amount},
                            {"line", "line", words, Wraps::yes},
                            {"what", "what to improve", words, Wraps::yes},
                            {"", "from ... to", words},
                            for_programs("before"),
                            for_programs("after"),
                            {"points", "points", amount}});
  table.in_csv = true;
  for (std::size_t i = 0; i < gains.size(); ++i) {
    const Gain& gain = gains[i];
    table.add({{std::to_string(i + 1), i + 1},
               {gain_name(gain), gain.label},
               {what_to_improve(gain), gain_word(gain.what)},
               from_to_text(gain, gain.before) + " to " + from_to_text(gain, gain.after),
               gain.before,
               gain.after,
               {signed_change(gain), gain.change.text(places)}},
              i == 0 ? Look::worst : Look::usual, gain.change > Points() ? Seen::always : Seen::by_programs);
  }
  return table;
}

void put_nothing_note(PageParts& page, std::span<const Gain> gains) {
  std::string nothing, worse;
  for (const Gain& gain : gains) {
    if (gain.change > Points()) continue;
    std::string& names = gain.change < Points() ? worse : nothing;
    names += (names.empty() ? "" : "; ") + gain_name(gain) + ", " + what_to_improve(gain);
    if (gain.change < Points()) names += " (" + signed_change(gain) + ")";
  }
  if (!nothing.empty()) page.say("Nothing to gain: " + nothing + ".");
  // Only where a base mark weighs less in a mean.
  if (!worse.empty())
    page.say(
        "The total would be lower, as elements are weighted by difficulty together and a base mark weighs "
        "less: " +
        worse + ".");
}

void put_gains_legend(PageParts& page) {
  page.heading("How to read it");
  page.list("", {"a little better is: a tenth of a mark, half the chance of the base mark, one sync error or "
                 "penalty less (or as many as are expected, when that is less than one).",
                 "Each is the expected total worked out again with that one change, less the expected total "
                 "as it is. They do not simply add up when several are made at once.",
                 "Which of them is quickest to train, the coach knows best."});
}

void put_gains(PageParts& page, const NextPoints& next, std::size_t top) {
  const std::span<const Gain> all = next.gains;
  const auto gains = top == 0 ? all : all.first(std::min(top, all.size()));
  page.apart();
  page.add(gains_table(gains));
  if (gains.empty()) return;
  if (gains.front().change <= Points()) page.apart();
  put_nothing_note(page, gains);
  if (gains.size() < all.size()) page.say("Of " + std::to_string(all.size()) + " in all.");
  put_gains_legend(page);
}

}  // namespace

Page train_page(const NextPoints& next, const Face& face, std::size_t top) {
  Page page("train");
  page.csv = {"rank", "what", "line", "before", "after", "points"};
  put_title(page, face);
  page.fact("total_expected", next.total.text(places));
  page.apart();
  page.say("Expected total, as the routine is: " + next.total.text(places) +
           (next.gains.empty() ? ". There is nothing in it that could be marked better."
                               : ". What it would be more with one thing a little better:"));
  put_gains(page, next, top);
  put_notes(page, face);
  put_build_up(page, face);
  return page;
}

ChoosingAnswer train(const Asked& asked, const Routine& routine, const Diagnostics& messages) {
  const auto top =
      number_of(asked, "--top",
                {Decimal::whole(1), Decimal::whole(1'000'000), "how many lines, a whole number from 1 on"});
  if (!top) return mistaken(top.error());
  const Decimal lines = top->value_or(Decimal());
  if (!lines.is_multiple_of(Decimal::whole(1)))
    return mistaken("found --top " + lines.text() + "; expected a whole number of lines");
  const PriceWish price = whole_price_wish(asked, routine);
  if (!price.mistake.empty()) return mistaken(price.mistake);
  const NextPoints next = next_points(routine, price.wish);
  if (!next.obstacles.empty()) return missing_in(routine, next.obstacles);
  return train_page(next, face_of(routine, messages, price.wish),
                    static_cast<std::size_t>(lines.units() / Decimal::one));
}

}  // namespace landdrill::report
