#include "engine/judging/panel_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/judging/enough.h"
#include "engine/judging/panel_figures.h"
#include "engine/judging/statistics/agreement.h"
#include "engine/judging/statistics/figures.h"
#include "tables/binary.h"
#include "tables/decimal.h"

namespace landdrill {
namespace {

// "3" for the judge with the index 2.
std::string seat(std::size_t judge) {
  return std::to_string(judge + 1);
}

// "2 and 5"
std::string seats(const PairView& pair) {
  return seat(pair.judge) + " and " + seat(pair.other);
}

std::string things(const PanelView& view) {
  return view.of_elements ? "elements" : "aspects";
}

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
  return {std::abs(*bias.value),
          fmt::format("Judge {} marks {} {} than the others{}.", seat(judge),
                      steps_in_words(*bias.value, step), *bias.value > 0 ? "higher" : "lower", where)};
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
  return {std::abs(*difference.value), fmt::format("Judges {} are {} apart{}.", seats(pair),
                                                   steps_in_words(*difference.value, step), where)};
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
  sentences.push_back(fmt::format("Judge {} scatters most around the others (standard deviation {}).",
                                  seat(widest->judge), figure(*widest->spread)));
}

void say_dropped(const PanelView& view, std::vector<std::string>& sentences) {
  const auto dropped = [](const JudgeView& judge) { return judge.dropped_high + judge.dropped_low; };
  const auto most =
      std::max_element(view.judges.begin(), view.judges.end(),
                       [&](const JudgeView& a, const JudgeView& b) { return dropped(a) < dropped(b); });
  if (dropped(*most) == 0) return;
  sentences.push_back(
      fmt::format("Judge {} is dropped most often: {} of {} marks, {} too high and {} too low.",
                  seat(most->judge), dropped(*most), most->marks, most->dropped_high, most->dropped_low));
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

// The sentences about how far a panel agrees, and the warnings.

namespace {

// The grades are common practice, no source; that it is no chance is the chi-square's say.
std::string how_alike(const Concordance& concordance) {
  if (concordance.by_chance.value_or(0) > 0.05) return "no more alike than chance could make them";
  const double w = *concordance.w.value;
  return w >= 0.7   ? "much alike"
         : w >= 0.5 ? "fairly alike"
         : w >= 0.3 ? "only partly alike"
                    : "hardly alike";
}
void say_concordance(const PanelView& view, std::vector<std::string>& sentences) {
  const Statistic& w = view.concordance.w;
  if (!w.value || w.rows < least_marks) return;
  sentences.push_back(fmt::format("The judges rank the {} {} (W {}).", things(view),
                                  how_alike(view.concordance), figure(*w.value)));
}

// Koo & Li (2016), A guideline of selecting and reporting intraclass correlation coefficients: below 0.5
// poor, to 0.75 moderate, to 0.9 good, above excellent.
std::string guide(double icc) {
  return icc < 0.5 ? "a poor" : icc < 0.75 ? "a moderate" : icc < 0.9 ? "a good" : "an excellent";
}
void say_intraclass(const PanelView& view, std::vector<std::string>& sentences) {
  const Statistic &one = view.intraclass.forms[1], &mean = view.intraclass.forms[4];
  if (!one.value || !mean.value || one.rows < least_marks) return;
  sentences.push_back(
      fmt::format("One judge's marks alone are {} guide to the {} (ICC(2,1) {}), the mean of all {} is {} "
                  "one (ICC(2,{}) {}).",
                  guide(*one.value), things(view), figure(*one.value), view.judges.size(), guide(*mean.value),
                  view.judges.size(), figure(*mean.value)));
}

// Common practice, no source: 0.8 to rely on, 0.667 for first conclusions.
std::string how_well(double alpha) {
  return alpha >= 0.8     ? "well enough to rely on one alone"
         : alpha >= 0.667 ? "well enough for a first idea"
                          : "too little to rely on one alone";
}
void say_alpha(const PanelView& view, std::vector<std::string>& sentences) {
  if (!view.interval.value || view.interval.rows < least_marks) return;
  sentences.push_back(fmt::format("Mark for mark the judges agree {} (alpha {}).",
                                  how_well(*view.interval.value), figure(*view.interval.value)));
}

// The pairs with the largest and the smallest number of a sort.
struct Extremes {
  const PairView *most = nullptr, *least = nullptr;
};
Extremes extremes(const PanelView& view, Statistic PairView::*number) {
  Extremes found;
  for (const PairView& pair : view.pairs) {
    const Statistic& one = pair.*number;
    if (!one.value || one.rows < least_marks) continue;
    if (found.most == nullptr || *one.value > *(found.most->*number).value) found.most = &pair;
    if (found.least == nullptr || *one.value < *(found.least->*number).value) found.least = &pair;
  }
  return found;
}

std::string correlations(const PairView& pair) {
  return fmt::format(" (Spearman {}, Kendall {})", figure(*pair.spearman.value), figure(*pair.kendall.value));
}
void say_order(const PanelView& view, std::vector<std::string>& sentences) {
  const auto [most, least] = extremes(view, &PairView::spearman);
  if (most == nullptr) return;
  const std::string rank = "Judges " + seats(*most) + " rank the " + things(view);
  sentences.push_back(most == least
                          ? rank + (*most->spearman.value >= 0.5 ? " alike" : " in different orders") +
                                correlations(*most) + "."
                          : rank + " most alike" + correlations(*most) + ", judges " + seats(*least) +
                                " least" + correlations(*least) + ".");
}

void say_kappa(const PanelView& view, std::vector<std::string>& sentences) {
  const auto [most, least] = extremes(view, &PairView::kappa);
  if (most == nullptr) return;
  sentences.push_back(
      most == least
          ? fmt::format("Judges {} agree on the mark by {} of what chance leaves over (weighted kappa).",
                        seats(*most), figure(*most->kappa.value))
          : fmt::format(
                "Judges {} come closest to giving the same mark (weighted kappa {}), judges {} least ({}).",
                seats(*most), figure(*most->kappa.value), seats(*least), figure(*least->kappa.value)));
}

double widest(const AgreementLimits& limits) {
  return std::max(std::abs(*limits.lower.value), std::abs(*limits.upper.value));
}
void say_limits(const PanelView& view, std::vector<std::string>& sentences) {
  const PairView* pair = nullptr;
  for (const PairView& one : view.pairs) {
    if (!one.limits.lower.value || one.limits.lower.rows < least_marks) continue;
    if (pair == nullptr || widest(one.limits) > widest(pair->limits)) pair = &one;
  }
  if (pair == nullptr || widest(pair->limits) == 0) return;
  sentences.push_back(
      fmt::format("On one of the {} judges {} can be {} marks apart (limits of agreement {} to {}).",
                  things(view), seats(*pair), figure(widest(pair->limits)), figure(*pair->limits.lower.value),
                  figure(*pair->limits.upper.value)));
}

void warn_of_none(const Statistic& statistic, const std::string& name, std::vector<std::string>& warnings) {
  if (!statistic.value) warnings.push_back("There is no " + name + ": " + statistic.why_not + ".");
}

std::string count(std::size_t number, const std::string& one, const std::string& many) {
  return std::to_string(number) + " " + (number == 1 ? one : many);
}

void warn_of_few_rows(const PanelView& view, std::vector<std::string>& warnings) {
  const Statistic& icc = view.intraclass.forms[1];
  if (view.concordance.w.value && view.concordance.w.rows < rows_for_chi_square) {
    warnings.push_back(fmt::format(
        "W rests on {} {}; {} are wanted before its chance can be trusted, which is reckoned as if they "
        "were many.",
        view.concordance.w.rows, things(view), rows_for_chi_square));
  }
  if (icc.value && icc.low && icc.rows < rows_for_intervals) {
    warnings.push_back(fmt::format(
        "The intraclass correlation rests on {} {}; {} are wanted, for with these ICC(2,1) may be "
        "anything from {} to {}.",
        icc.rows, things(view), rows_for_intervals, figure(*icc.low), figure(*icc.high)));
  }
  double most = 0;
  std::size_t fewest = rows_for_intervals;
  for (const PairView& pair : view.pairs) {
    const Statistic& upper = pair.limits.upper;
    if (!upper.value || !upper.high || upper.rows >= rows_for_intervals) continue;
    most = std::max(most, *upper.high - *upper.value);
    fewest = std::min(fewest, upper.rows);
  }
  if (most > 0) {
    warnings.push_back(fmt::format(
        "The limits of agreement rest on {} {}; {} are wanted, for with these a limit can be off by {} "
        "marks.",
        fewest, things(view), rows_for_intervals, figure(most)));
  }
}

void warn_of_few_marks(const PanelView& view, std::vector<std::string>& warnings) {
  for (const JudgeView& judge : view.judges) {
    if (judge.marks >= least_marks) continue;
    warnings.push_back(fmt::format("Judge {} gave {}: too few to say how she marks, {} are needed.",
                                   seat(judge.judge), count(judge.marks, "mark", "marks"), least_marks));
  }
}

void warn_of_missing(const PanelView& view, std::vector<std::string>& warnings) {
  if (view.filled_in > 0) {
    warnings.push_back(count(view.filled_in, "missing mark counts", "missing marks count") +
                       " as the mean of the others, as the set says: the intraclass correlation and W look a "
                       "little better for it.");
  }
  const std::size_t left_out = view.filled.rows() - complete_rows(view.filled).rows();
  if (left_out > 0) {
    warnings.push_back(
        fmt::format("The intraclass correlation and W leave out {} of {} {}, where a judge was missing.",
                    left_out, view.lines.size(), things(view)));
  }
}

}  // namespace

std::vector<std::string> sentences_about(const PanelView& view) {
  std::vector<std::string> sentences;
  if (view.lines.size() >= least_marks && view.judges.size() >= 2) {
    say_bias(view, sentences);
    say_apart(view, sentences);
    say_spread(view, sentences);
    say_dropped(view, sentences);
  }
  say_concordance(view, sentences);
  say_intraclass(view, sentences);
  say_alpha(view, sentences);
  say_order(view, sentences);
  say_kappa(view, sentences);
  say_limits(view, sentences);
  return sentences;
}

std::vector<std::string> warnings_of(const PanelView& view) {
  std::vector<std::string> warnings;
  if (view.lines.size() < least_marks) {
    const bool one = view.lines.size() == 1;
    const std::string what = one ? (view.of_elements ? "element was" : "aspect was") : things(view) + " were";
    warnings.push_back(fmt::format(
        "Only {} {} marked: nothing is said about the judges before {}, since a single mark would decide "
        "it.",
        view.lines.size(), what, least_marks));
  } else {
    warn_of_few_marks(view, warnings);
    warn_of_few_rows(view, warnings);
  }
  warn_of_missing(view, warnings);
  warn_of_none(view.intraclass.forms[1], "intraclass correlation", warnings);
  warn_of_none(view.concordance.w, "Kendall's W", warnings);
  warn_of_none(view.interval, "Krippendorff's alpha", warnings);
  return warnings;
}

}  // namespace landdrill
