#include "engine/judging/panel_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/judging/enough.h"
#include "engine/judging/leanings.h"
#include "engine/judging/panel_figures.h"
#include "engine/judging/statistics/agreement.h"
#include "engine/judging/statistics/figures.h"
#include "engine/judging/steps.h"
#include "tables/binary.h"
#include "tables/claims.h"

namespace landdrill {

std::string on_kind(const std::string& title) {
  const auto letter = [](char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == ' '; };
  if (title.empty() || !std::all_of(title.begin(), title.end(), letter) || title.back() == 's') {
    return "on \"" + title + "\"";
  }
  std::string plural = title + "s";
  if (plural[0] >= 'A' && plural[0] <= 'Z') plural[0] = static_cast<char>(plural[0] - 'A' + 'a');
  return "on " + plural;
}

std::string things(const PanelView& view) {
  return view.of_elements ? "elements" : "aspects";
}

namespace {

// "3" for the judge with the index 2.
std::string seat(std::size_t judge) {
  return std::to_string(judge + 1);
}

std::size_t judges_who_marked(const PanelView& view) {
  return view.seated.judges;
}

// How sure it is: the interval, or that it is the same throughout.
std::string how_sure(const Leaning& one, const PanelView& view) {
  if (one.always) return fmt::format(", just as much on all {} {}", one.above.rows, things(view));
  const double low = std::abs(*one.above.low), high = std::abs(*one.above.high);
  return fmt::format(" ({} to {} marks)", figure(std::min(low, high)), figure(std::max(low, high)));
}

void say_leaning(const Leaning& one, const PanelView& view, std::vector<std::string>& sentences) {
  sentences.push_back(fmt::format(
      "Judge {} marks {} {} than {}{}{}.", seat(one.judge), steps_in_words(*one.above.value, view.step),
      *one.above.value > 0 ? "higher" : "lower", one.than ? "judge " + seat(*one.than) : "the others",
      one.kind.empty() ? "" : " " + on_kind(one.kind), how_sure(one, view)));
}

void say_leanings(const PanelView& view, std::vector<std::string>& sentences) {
  for (const Leaning& one : view.leanings) say_leaning(one, view, sentences);
  if (!view.leanings.empty() || view.lines.size() < least_marks || judges_who_marked(view) < 2) return;
  sentences.push_back(
      judges_who_marked(view) == 2
          ? "Neither judge marks clearly higher than the other: what lies between them may be chance."
          : "No judge marks clearly higher or lower than the others: what lies between them may be chance.");
}

void say_spread(const PanelView& view, std::vector<std::string>& sentences) {
  if (!view.scatters) return;
  double rest = 0, judges = 0;
  for (const JudgeView& one : view.judges) {
    if (one.judge == *view.scatters || !one.spread) continue;
    rest += *one.spread;
    ++judges;
  }
  sentences.push_back(fmt::format(
      "Judge {} scatters more around the others than chance explains: by {} marks, the rest by {} "
      "on average.",
      seat(*view.scatters), figure(*view.judges[*view.scatters].spread), figure(rest / judges)));
}

void say_dropped(const PanelView& view, std::vector<std::string>& sentences) {
  if (!view.is_dropped) return;
  const JudgeView& judge = view.judges[*view.is_dropped];
  sentences.push_back(
      fmt::format("Judge {} is dropped more often than chance explains: {} of {} marks, {} too high and {} "
                  "too low, where "
                  "chance alone drops about {}.",
                  seat(judge.judge), judge.dropped(), judge.marks, judge.dropped_high, judge.dropped_low,
                  figure(judge.dropped_by_chance, 0)));
}

// By the least that the mean rank correlation may be.
std::string how_alike(const Statistic& correlation) {
  if (!correlation.low && *correlation.value == 1) return "all in the same order";
  const double least = correlation.low.value_or(-1);
  return least >= binary(claim("order-much"))   ? "much alike"
         : least >= binary(claim("order-fair")) ? "fairly alike"
         : least > 0                            ? "more alike than chance would; how much more is open"
                                                : "no more alike than chance could make them";
}
void say_order(const PanelView& view, std::vector<std::string>& sentences) {
  const Statistic& correlation = view.rank_correlation;
  if (!correlation.value || correlation.rows < least_marks) return;
  sentences.push_back(fmt::format("The judges rank the {} {}.", things(view), how_alike(correlation)));
}

// The lowest and the highest mark of a line that several judges marked.
struct Range {
  std::size_t row = 0;
  double least = 0, most = 0;
  double width() const { return most - least; }
};
std::vector<Range> ranges(const PanelView& view) {
  std::vector<Range> found;
  for (std::size_t row = 0; row < view.seated.rows(); ++row) {
    std::vector<double> marks;
    for (std::size_t judge = 0; judge < view.seated.judges; ++judge)
      if (const auto mark = view.seated.at(row, judge)) marks.push_back(*mark);
    if (marks.size() < 2) continue;
    const auto [least, most] = std::minmax_element(marks.begin(), marks.end());
    found.push_back({row, *least, *most});
  }
  std::stable_sort(found.begin(), found.end(),
                   [](const Range& a, const Range& b) { return a.width() > b.width(); });
  return found;
}

// Three lines at most, and none that is as most lines are, or where all are within a step.
void say_what_to_look_at(const PanelView& view, std::vector<std::string>& sentences) {
  const std::vector<Range> widest = ranges(view);
  std::string lines;
  for (std::size_t i = 0; i < std::min<std::size_t>(3, widest.size()); ++i) {
    if (widest[i].width() <= std::max(widest[widest.size() / 2].width(), binary(view.step))) break;
    lines += fmt::format("{}{} ({} to {})", lines.empty() ? "" : "; ", view.lines[widest[i].row],
                         figure(widest[i].least), figure(widest[i].most));
  }
  if (!lines.empty())
    sentences.push_back("Look at these again together, where the marks lie furthest apart: " + lines + ".");
}

std::string count(std::size_t number, const std::string& one, const std::string& many) {
  return std::to_string(number) + " " + (number == 1 ? one : many);
}

void warn_of_few_marks(const PanelView& view, std::vector<std::string>& warnings) {
  for (const JudgeView& judge : view.judges) {
    if (judge.marks >= least_marks) continue;
    warnings.push_back(
        judge.marks == 0 ? fmt::format("Judge {} marked nothing.", seat(judge.judge))
                         : fmt::format("Judge {} gave {}: too few to say how she marks, {} are needed.",
                                       seat(judge.judge), count(judge.marks, "mark", "marks"), least_marks));
  }
}

void warn_of_few_lines(const PanelView& view, std::vector<std::string>& warnings) {
  const bool one = view.lines.size() == 1;
  const std::string what = one ? (view.of_elements ? "element was" : "aspect was") : things(view) + " were";
  warnings.push_back(
      fmt::format("Only {} {} marked: {} is said about the judges before {}, since a single mark "
                  "would decide it.",
                  view.lines.size(), what, view.leanings.empty() ? "nothing" : "nothing else", least_marks));
}

}  // namespace

std::vector<std::string> sentences_about(const PanelView& view) {
  std::vector<std::string> sentences;
  say_leanings(view, sentences);
  say_spread(view, sentences);
  say_dropped(view, sentences);
  say_order(view, sentences);
  if (view.lines.size() >= least_marks) say_what_to_look_at(view, sentences);
  return sentences;
}

std::vector<std::string> warnings_of(const PanelView& view) {
  std::vector<std::string> warnings;
  if (view.lines.size() < least_marks) {
    warn_of_few_lines(view, warnings);
  } else {
    warn_of_few_marks(view, warnings);
  }
  if (view.filled_in > 0) {
    warnings.push_back(count(view.filled_in, "missing mark counts", "missing marks count") +
                       " for nothing here, whatever the set fills in for the score.");
  }
  return warnings;
}

}  // namespace landdrill
