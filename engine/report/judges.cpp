#include "engine/report/judges.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/report/figures.h"
#include "engine/report/grid.h"
#include "engine/report/judges_rows.h"
#include "engine/report/sections.h"
#include "engine/report/width.h"

namespace landdrill::report {
namespace {

std::string meet_title(const MeetView& meet) {
  if (meet.date.empty())
    return fmt::format("{}, taken as one panel of the same judges", counted(meet.panels, "panel", "panels"));
  const std::string name = meet.meet.empty() ? meet.date : plain(meet.meet) + ", " + meet.date;
  return name + ": " + plain(meet.event_title);
}

std::string routines_of(const MeetView& meet, const TextWish& wish) {
  std::string names;
  for (const std::string& one : meet.routines) names += (names.empty() ? "" : ", ") + plain(one);
  return paragraph("  ", names, wish.width);
}

std::string judge_name(std::size_t judge) {
  return std::to_string(judge + 1);
}

std::string judges_table(const PanelView& view, const TextWish& wish) {
  Grid grid({{"judge", Align::words},
             {"marks", Align::amount},
             {"mean", Align::amount},
             {"bias", Align::amount},
             {"95 % interval", Align::words, true},
             {"spread", Align::amount},
             {"high", Align::amount, false, "dropped"},
             {"low", Align::amount, false, "dropped"},
             {"order", Align::amount}});
  for (const JudgeView& one : view.judges) {
    grid.add({judge_name(one.judge),
              one.missing == 0 ? std::to_string(one.marks)
                               : fmt::format("{} of {}", one.marks, one.marks + one.missing),
              figure(one.mean), signed_figure(one.bias.value), signed_interval(one.bias.low, one.bias.high),
              figure(one.spread), std::to_string(one.dropped_high), std::to_string(one.dropped_low),
              figure(one.order.value)});
  }
  return heading("Judge by judge", wish) + grid.text(wish.width, wish.colour);
}

// The pairs that marked anything together, furthest apart first.
std::vector<const PairView*> furthest_apart(const PanelView& view) {
  std::vector<const PairView*> pairs;
  for (const PairView& one : view.pairs)
    if (one.limits.bias.value) pairs.push_back(&one);
  const auto size = [](const PairView* pair) { return std::abs(*pair->limits.bias.value); };
  std::stable_sort(pairs.begin(), pairs.end(),
                   [&](const PairView* a, const PairView* b) { return size(a) > size(b); });
  return pairs;
}

std::string pairs_table(const PanelView& view, const TextWish& wish) {
  constexpr std::size_t few = 3;
  std::vector<const PairView*> pairs = furthest_apart(view);
  if (pairs.empty()) return "";
  const bool all = wish.full || pairs.size() <= few;
  if (!all) pairs.resize(few);
  Grid grid({{"judges", Align::words},
             {"apart", Align::amount},
             {"95 % interval", Align::words, true},
             {"Spearman", Align::amount},
             {"Kendall", Align::amount},
             {"kappa", Align::amount}});
  for (const PairView* pair : pairs) {
    grid.add({judge_name(pair->judge) + " and " + judge_name(pair->other),
              signed_figure(pair->limits.bias.value),
              signed_interval(pair->limits.bias.low, pair->limits.bias.high), figure(pair->spearman.value),
              figure(pair->kendall.value), figure(pair->kappa.value)});
  }
  return heading(all ? "Pairs, furthest apart first" : "The pairs furthest apart", wish) +
         grid.text(wish.width, wish.colour);
}

std::string limits_table(const PanelView& view, const TextWish& wish) {
  if (!wish.full) return "";
  Grid grid({{"judges", Align::words},
             {"lower", Align::amount},
             {"95 % interval", Align::words, true},
             {"upper", Align::amount},
             {"95 % interval", Align::words, true}});
  for (const PairView* pair : furthest_apart(view)) {
    const AgreementLimits& limits = pair->limits;
    if (!limits.lower.value) continue;
    grid.add({judge_name(pair->judge) + " and " + judge_name(pair->other), signed_figure(limits.lower.value),
              signed_interval(limits.lower.low, limits.lower.high), signed_figure(limits.upper.value),
              signed_interval(limits.upper.low, limits.upper.high)});
  }
  const std::string rows = grid.text(wish.width, wish.colour);
  if (rows.empty()) return "";
  return heading("Limits of agreement of two judges (Bland-Altman)", wish) + rows;
}

std::string kinds_table(const PanelView& view, const TextWish& wish) {
  if (!wish.full || view.judges.empty() || view.judges.front().kinds.empty()) return "";
  Grid grid({{"judge", Align::words},
             {"kind", Align::words, true},
             {"marks", Align::amount},
             {"bias", Align::amount},
             {"95 % interval", Align::words, true}});
  for (const JudgeView& judge : view.judges) {
    for (const KindBias& one : judge.kinds)
      grid.add({judge_name(judge.judge), one.kind, std::to_string(one.bias.rows),
                signed_figure(one.bias.value), signed_interval(one.bias.low, one.bias.high)});
  }
  return heading("Bias by kind of element", wish) + grid.text(wish.width, wish.colour);
}

std::string intraclass_table(const PanelView& view, const TextWish& wish) {
  constexpr std::string_view judges[] = {"other judges each time", "judges drawn from many",
                                         "just these judges"};
  const auto form = [&](std::size_t which) { return view.intraclass.forms[which]; };
  if (!form(0).value && !form(1).value && !form(2).value) return "";
  Grid grid({{"intraclass correlation", Align::words, true},
             {"one judge", Align::amount},
             {"95 % interval", Align::words, true},
             {fmt::format("mean of {}", view.judges.size()), Align::amount},
             {"95 % interval", Align::words, true}});
  for (std::size_t i = 0; i < 3; ++i) {
    const Statistic one = form(i), mean = form(i + 3);
    grid.add({fmt::format("({}) {}", i + 1, judges[i]), figure(one.value), interval(one.low, one.high),
              figure(mean.value), interval(mean.low, mean.high)});
  }
  return grid.text(wish.width, wish.colour);
}

std::string chance_text(double chance) {
  return chance < 0.01 ? "under 0.01" : figure(chance);
}

void add_figure(const char* name, const Statistic& statistic, const char* meaning, Grid& grid) {
  grid.add({name, statistic.value ? figure(statistic.value) : "none",
            statistic.value ? meaning : statistic.why_not});
}

std::string agreement_table(const PanelView& view, const TextWish& wish) {
  Grid grid({{"", Align::words}, {"", Align::amount}, {"", Align::words, true}});
  add_figure("Kendall's W", view.concordance.w, "1: all rank alike; 0: no order in common", grid);
  if (view.concordance.by_chance)
    grid.add({"", chance_text(*view.concordance.by_chance), "how often chance alone ranks that alike"});
  add_figure("Krippendorff's alpha", view.interval, "marks, by their distance; 1 is full agreement", grid);
  add_figure("", view.ordinal, "by their order only", grid);
  add_figure("", view.nominal, "the very same mark only", grid);
  return grid.text(wish.width, wish.colour);
}

std::string agreement_section(const PanelView& view, const TextWish& wish) {
  const std::string correlation = intraclass_table(view, wish);
  return heading("How far all of them agree", wish) + correlation + (correlation.empty() ? "" : "\n") +
         agreement_table(view, wish);
}

std::string view_text(const PanelView& view, const TextWish& wish) {
  const std::string what = view.of_elements ? counted(view.lines.size(), "element", "elements")
                                            : counted(view.lines.size(), "aspect", "aspects");
  std::string text = "\n" + coloured(fmt::format("{}: {}, {}\n", plain(view.title), what,
                                                 counted(view.judges.size(), "judge", "judges")),
                                     wish.colour ? Look::total : Look::usual);
  text += bullets(view.sentences, wish);
  if (!view.warnings.empty()) text += heading("With care", wish) + bullets(view.warnings, wish);
  text += judges_table(view, wish) + kinds_table(view, wish);
  // Where nothing can be said, more numbers would say too much.
  if (view.sentences.empty() && !wish.full) return text;
  return text + pairs_table(view, wish) + limits_table(view, wish) + agreement_section(view, wish);
}

std::string judges_legend(const TextWish& wish) {
  std::vector<std::string> notes = {
      "bias: her marks above (+) or below (-) the mean of the other judges; spread: how much she scatters "
      "around them; dropped: how often her mark lay above or below all that counted; order: 1 where she "
      "ranks "
      "as the others do, 0 where there is nothing in common.",
      "apart: + where the first of the two judges marks higher. Spearman and Kendall: 1 where both rank "
      "alike. kappa: 1 where both give the same marks, 0 what chance gives; the further apart two marks, the "
      "more they count.",
      "intraclass correlation: how much of what marks scatter is the swimming and not the judge; 1 all of "
      "it, 0 nothing. These are the forms (1,1) to (3,k) of Shrout and Fleiss (1979); (2) is the one for a "
      "panel drawn from a list of judges."};
  if (wish.full)
    notes.push_back("limits of agreement: about 95 of 100 differences of the two judges lie between them.");
  return heading("How to read it", wish) + bullets(notes, wish);
}

}  // namespace

JudgesReport::JudgesReport(Format format, TextWish wish) : format_(format), wish_(wish) {
  wish_.width = std::max(60, wish_.width);
}

std::string JudgesReport::head() const {
  if (format_ == Format::csv) return judges_csv_head();
  return format_ == Format::json ? "{\n  \"meets\": [\n    " : "";
}

std::string JudgesReport::first(const MeetView& meet) const {
  return piece(meet);
}

std::string JudgesReport::next(const MeetView& meet) const {
  const std::string_view between = format_ == Format::csv ? "" : format_ == Format::json ? ",\n    " : "\n";
  return std::string(between) + piece(meet);
}

std::string JudgesReport::foot() const {
  if (format_ == Format::csv) return "";
  return format_ == Format::json ? "\n  ]\n}\n" : judges_legend(wish_);
}

std::string JudgesReport::piece(const MeetView& meet) const {
  if (format_ == Format::csv) return judges_csv(meet);
  if (format_ == Format::json) return judges_json(meet);
  std::string text = paragraph("", meet_title(meet), wish_.width) + routines_of(meet, wish_);
  for (const PanelView& view : meet.views) text += view_text(view, wish_);
  return text;
}

}  // namespace landdrill::report
