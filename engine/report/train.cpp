#include "engine/report/train.h"

#include <algorithm>
#include <span>

#include "engine/report/chance.h"
#include "engine/report/face_json.h"
#include "engine/report/grid.h"
#include "engine/report/sections.h"
#include "engine/report/wide_csv.h"
#include "engine/report/width.h"

namespace landdrill::report {
namespace {

std::string_view what_to_improve(Gain::What what) {
  switch (what) {
    case Gain::What::execution:
      return "execution mark";
    case Gain::What::base_chance:
      return "chance of the base mark";
    case Gain::What::impression:
      return "impression mark";
    case Gain::What::sync:
    case Gain::What::penalty:
      return "how many to expect";
  }
  return "";
}

std::string gain_name(const Gain& gain) {
  if (gain.what == Gain::What::sync) return "Sync error: " + gain.label;
  return gain.what == Gain::What::penalty ? "Penalty: " + gain.label : gain.label;
}

std::string amount_text(const Gain& gain, const std::string& amount) {
  const auto number = Decimal::parse(amount);
  return gain.what == Gain::What::base_chance && number ? given_per_cent(*number) : amount;
}

std::span<const Gain> shown(const NextPoints& next, const TrainWish& train) {
  const std::span<const Gain> all = next.gains;
  return train.top == 0 ? all : all.first(std::min(train.top, all.size()));
}

std::string gains_table(std::span<const Gain> gains, const TextWish& wish) {
  using enum Align;
  Grid grid({{"", amount},
             {"line", words, true},
             {"what to improve", words, true},
             {"from ... to", words},
             {"points", amount}});
  for (std::size_t i = 0; i < gains.size() && gains[i].change > Points(); ++i) {
    const Gain& gain = gains[i];
    grid.add({std::to_string(i + 1), gain_name(gain), std::string(what_to_improve(gain.what)),
              amount_text(gain, gain.before) + " to " + amount_text(gain, gain.after),
              with_sign(gain.change.text(4))},
             i == 0 ? Look::worst : Look::usual);
  }
  return grid.text(wish.width, wish.colour);
}

std::string nothing_note(std::span<const Gain> gains, const TextWish& wish) {
  std::string nothing, worse;
  for (const Gain& gain : gains) {
    if (gain.change > Points()) continue;
    std::string& names = gain.change < Points() ? worse : nothing;
    names += (names.empty() ? "" : "; ") + gain_name(gain) + ", " + std::string(what_to_improve(gain.what));
    if (gain.change < Points()) names += " (" + with_sign(gain.change.text(4)) + ")";
  }
  std::string result;
  if (!nothing.empty()) result += paragraph("", "Nothing to gain: " + plain(nothing) + ".", wish.width);
  // Only where a base mark weighs less in a mean.
  if (!worse.empty())
    result +=
        paragraph("",
                  "The total would be lower, as elements are weighted by difficulty together and a base "
                  "mark weighs less: " +
                      plain(worse) + ".",
                  wish.width);
  return result;
}

std::string training_text(const NextPoints& next, const Face& face, std::span<const Gain> gains,
                          const TextWish& wish) {
  const std::string below = objection_section(face.objections, wish) + caution_section(face, wish) +
                            values_section(face, wish) + build_up_section(face, wish);
  const std::string total = "Expected total, as the routine is: " + next.total.text(4) + ". ";
  std::string result = title_section(face, wish) + "\n";
  if (next.gains.empty())
    return result + paragraph("", total + "There is nothing in it that could be marked better.", wish.width) +
           below;
  result += paragraph("", total + "What it would be more with one thing a little better:", wish.width);
  result += "\n" + gains_table(gains, wish) + nothing_note(gains, wish);
  if (gains.size() < next.gains.size())
    result += paragraph("", "Of " + std::to_string(next.gains.size()) + " in all.", wish.width);
  result +=
      heading("How to read it", wish) +
      bullets({"a little better is: a tenth of a mark, half the chance of the base mark, one sync error or "
               "penalty less (or as many as are expected, when that is less than one).",
               "Each is the expected total worked out again with that one change, less the expected total "
               "as it is. They do not simply add up when several are made at once.",
               "Which of them is quickest to train, the coach knows best."},
              wish);
  return result + below;
}

std::string_view gain_word(Gain::What what) {
  switch (what) {
    case Gain::What::execution:
      return "execution";
    case Gain::What::base_chance:
      return "base chance";
    case Gain::What::impression:
      return "impression";
    case Gain::What::sync:
      return "sync";
    case Gain::What::penalty:
      return "penalty";
  }
  return "";
}

std::string training_csv(std::span<const Gain> gains) {
  WideCsv csv({"rank", "what", "line", "before", "after", "points"});
  for (std::size_t i = 0; i < gains.size(); ++i)
    csv.add({{"rank", std::to_string(i + 1)},
             {"what", std::string(gain_word(gains[i].what))},
             {"line", gains[i].label},
             {"before", gains[i].before},
             {"after", gains[i].after},
             {"points", gains[i].change.text(4)}});
  return csv.text();
}

std::string training_json(const NextPoints& next, const Face& face, std::span<const Gain> gains) {
  json::array list;
  for (const Gain& gain : gains)
    list.push_back(json::object{{"what", text_or_null(gain_word(gain.what))},
                                {"line", text_or_null(gain.label)},
                                {"before", text_or_null(gain.before)},
                                {"after", text_or_null(gain.after)},
                                {"points", gain.change.text(4)}});
  json::object all = face_object(face);
  all["total_expected"] = next.total.text(4);
  all["gains"] = list;
  return json_text(all, JsonLayout::indented);
}

}  // namespace

std::string training_report(const NextPoints& next, const Face& face, const TrainWish& train,
                            const TextWish& asked) {
  const std::span<const Gain> gains = shown(next, train);
  if (train.format == Format::csv) return training_csv(gains);
  if (train.format == Format::json) return training_json(next, face, gains);
  TextWish wish = asked;
  wish.width = std::max(60, wish.width);
  return training_text(next, face, gains, wish);
}

}  // namespace landdrill::report
