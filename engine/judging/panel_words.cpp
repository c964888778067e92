#include "engine/judging/panel_words.h"

#include <algorithm>
#include <cmath>

#include "engine/judging/enough.h"
#include "engine/judging/statistics/agreement.h"
#include "engine/judging/statistics/figures.h"
#include "tables/binary.h"
#include "tables/decimal.h"

namespace landdrill {
namespace {

// Not by chance alone, and large enough to be a matter of steps.
bool is_worth_saying(const Statistic& bias, Decimal step) {
  return bias.value && bias.rows >= least_marks && bias.low && *bias.low * *bias.high > 0 &&
         !steps_in_words(*bias.value, step).empty();
}

// A kind is worth a sentence where it differs from what was said of all elements.
bool differs(const Statistic& kind, const Statistic& all, Decimal step) {
  if (!is_worth_saying(kind, step)) return false;
  return !is_worth_saying(all, step) || *kind.value * *all.value < 0 ||
         steps_in_words(*kind.value, step) != steps_in_words(*all.value, step);
}

struct Said {
  double size = 0;  // in marks
  std::string text;
};
void add_largest_first(std::vector<Said> said, std::size_t most, std::vector<std::string>& sentences) {
  std::stable_sort(said.begin(), said.end(), [](const Said& a, const Said& b) { return a.size > b.size; });
  said.resize(std::min(said.size(), most));
  for (Said& one : said) sentences.push_back(std::move(one.text));
}

Said high_or_low(std::size_t judge, const Statistic& bias, Decimal step, const std::string& where) {
  return {std::abs(*bias.value), "Judge " + seat(judge) + " marks " + steps_in_words(*bias.value, step) +
                                     (*bias.value > 0 ? " higher" : " lower") + " than the others" + where +
                                     "."};
}

void say_bias(const PanelView& view, std::vector<std::string>& sentences) {
  std::vector<Said> said;
  for (const JudgeView& judge : view.judges) {
    if (is_worth_saying(judge.bias, view.step))
      said.push_back(high_or_low(judge.judge, judge.bias, view.step, ""));
    for (const KindBias& one : judge.kinds) {
      if (!differs(one.bias, judge.bias, view.step)) continue;
      said.push_back(high_or_low(judge.judge, one.bias, view.step, " " + on_kind(one.kind)));
    }
  }
  if (said.empty()) sentences.push_back("No judge marks clearly higher or lower than the others.");
  add_largest_first(std::move(said), 2 * view.judges.size(), sentences);
}

// Half a step between two judges is nothing to speak of.
bool far_apart(const Statistic& difference, Decimal step) {
  return is_worth_saying(difference, step) && steps_in_words(*difference.value, step) != "half a step";
}
Said apart(const PairView& pair, const Statistic& difference, Decimal step, const std::string& where) {
  return {std::abs(*difference.value), "Judges " + seats(pair) + " are " +
                                           steps_in_words(*difference.value, step) + " apart" + where + "."};
}

void say_apart(const PanelView& view, std::vector<std::string>& sentences) {
  std::vector<Said> said;
  for (const PairView& pair : view.pairs) {
    const Statistic& all = pair.limits.bias;
    if (far_apart(all, view.step)) said.push_back(apart(pair, all, view.step, ""));
    for (const KindBias& one : pair.kinds) {
      if (!far_apart(one.bias, view.step) || !differs(one.bias, all, view.step)) continue;
      said.push_back(apart(pair, one.bias, view.step, " " + on_kind(one.kind)));
    }
  }
  add_largest_first(std::move(said), 3, sentences);
}

void say_spread(const PanelView& view, std::vector<std::string>& sentences) {
  const JudgeView* widest = nullptr;
  for (const JudgeView& judge : view.judges) {
    if (!judge.spread || judge.bias.rows < least_marks) continue;
    if (widest == nullptr || *judge.spread > *widest->spread) widest = &judge;
  }
  // Of two judges each scatters around the other by the same.
  if (widest == nullptr || *widest->spread == 0 || view.judges.size() < 3) return;
  sentences.push_back("Judge " + seat(widest->judge) +
                      " scatters most around the others (standard deviation " + figure(*widest->spread) +
                      ").");
}

void say_dropped(const PanelView& view, std::vector<std::string>& sentences) {
  const auto dropped = [](const JudgeView& judge) { return judge.dropped_high + judge.dropped_low; };
  const auto most =
      std::max_element(view.judges.begin(), view.judges.end(),
                       [&](const JudgeView& a, const JudgeView& b) { return dropped(a) < dropped(b); });
  if (dropped(*most) == 0) return;
  sentences.push_back("Judge " + seat(most->judge) +
                      " is dropped most often: " + std::to_string(dropped(*most)) + " of " +
                      std::to_string(most->marks) + " marks, " + std::to_string(most->dropped_high) +
                      " too high and " + std::to_string(most->dropped_low) + " too low.");
}

}  // namespace

std::string steps_in_words(double marks, Decimal step) {
  const double size = binary(step);
  const long long halves = std::llround(std::abs(marks) / size * 2);
  if (halves == 0) return "";
  if (halves == 1) return "half a step";
  if (halves == 2) return "a step";
  if (halves == 3) return "a step and a half";
  return std::to_string(halves / 2) + (halves % 2 == 1 ? " and a half steps" : " steps");
}

std::string on_kind(const std::string& title) {
  const auto letter = [](char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == ' '; };
  if (title.empty() || !std::all_of(title.begin(), title.end(), letter) || title.back() == 's') {
    return "on \"" + title + "\"";
  }
  std::string plural = title + "s";
  if (plural[0] >= 'A' && plural[0] <= 'Z') plural[0] = static_cast<char>(plural[0] - 'A' + 'a');
  return "on " + plural;
}

std::string seat(std::size_t judge) {
  return std::to_string(judge + 1);
}

std::string seats(const PairView& pair) {
  return seat(pair.judge) + " and " + seat(pair.other);
}

std::string things(const PanelView& view) {
  return view.of_elements ? "elements" : "aspects";
}

std::vector<std::string> sentences_about_judges(const PanelView& view) {
  std::vector<std::string> sentences;
  if (view.lines.size() < least_marks || view.judges.size() < 2) return sentences;
  say_bias(view, sentences);
  say_apart(view, sentences);
  say_spread(view, sentences);
  say_dropped(view, sentences);
  return sentences;
}

}  // namespace landdrill
