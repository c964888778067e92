#include "engine/judging/panel_view.h"

#include <algorithm>
#include <cassert>
#include <cmath>

#include "engine/judging/panel_words.h"
#include "engine/judging/statistics/sample.h"
#include "engine/score/panel.h"
#include "tables/binary.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

// The other judges' marks of a line, added up exactly, so that equal means are equal numbers.
struct Others {
  Mark sum;
  std::int64_t count = 0;
  double mean() const { return binary_mean(sum, count); }
  double below(Mark mark) const { return binary_mean(mark * count - sum, count); }
};
Others others_of(const JudgeMarks& marks, std::size_t judge) {
  Others others;
  for (std::size_t other = 0; other < marks.size(); ++other) {
    if (other == judge || !marks[other]) continue;
    others.sum += *marks[other];
    ++others.count;
  }
  return others;
}

void add_row(const MarkedLine& line, const Judged& judged, PanelView& view) {
  for (std::size_t judge = 0; judge < line.marks.size(); ++judge) {
    const std::optional<Mark>& mark = line.marks[judge];
    view.table.marks.push_back(mark ? std::optional(binary(*mark)) : std::nullopt);
    view.filled.marks.push_back(view.table.marks.back());
    if (!judged.judges[judge].filled) continue;
    view.filled.marks.back() = binary(judged.judges[judge].mark);
    ++view.filled_in;
  }
}

// Only what is below or above every mark that counts was dropped for being so.
void count_dropped(const Judged& judged, std::vector<JudgeView>& judges) {
  std::optional<Mark> least, most;
  for (const JudgeMark& one : judged.judges) {
    if (one.state != JudgeMark::State::kept) continue;
    least = least ? std::min(*least, one.mark) : one.mark;
    most = most ? std::max(*most, one.mark) : one.mark;
  }
  assert(least && most);
  for (std::size_t judge = 0; judge < judges.size(); ++judge) {
    const JudgeMark& one = judged.judges[judge];
    if (one.filled || one.state == JudgeMark::State::absent) continue;
    judges[judge].dropped_high += one.mark > *most;
    judges[judge].dropped_low += one.mark < *least;
  }
}

// The kinds in the order they come in; none when there is only one.
std::vector<std::string> kinds_of(const MarkSheet& sheet) {
  std::vector<std::string> kinds;
  for (const MarkedLine& line : sheet.lines) {
    if (std::find(kinds.begin(), kinds.end(), line.kind) == kinds.end()) kinds.push_back(line.kind);
  }
  return kinds.size() > 1 ? kinds : std::vector<std::string>();
}

// `difference(line)`, where there is one, over the lines of each kind.
template <typename Difference>
std::vector<KindBias> bias_by_kind(const MarkSheet& sheet, const Difference& difference) {
  std::vector<KindBias> result;
  for (const std::string& kind : kinds_of(sheet)) {
    std::vector<double> differences;
    for (const MarkedLine& line : sheet.lines) {
      const std::optional<double> one = line.kind == kind ? difference(line) : std::nullopt;
      if (one) differences.push_back(*one);
    }
    result.push_back({kind, mean_with_interval(differences)});
  }
  return result;
}

void compare_with_others(const MarkSheet& sheet, JudgeView& view) {
  const auto difference = [&](const MarkedLine& line) -> std::optional<double> {
    const Others others = others_of(line.marks, view.judge);
    if (!line.marks[view.judge] || others.count == 0) return std::nullopt;
    return others.below(*line.marks[view.judge]);
  };
  std::vector<double> marks, differences;
  Pairs pairs;
  for (const MarkedLine& line : sheet.lines) {
    const std::optional<Mark>& mark = line.marks[view.judge];
    if (mark) marks.push_back(binary(*mark));
    const std::optional<double> one = difference(line);
    if (!one) continue;
    differences.push_back(*one);
    pairs.emplace_back(marks.back(), others_of(line.marks, view.judge).mean());
  }
  view.marks = marks.size();
  view.missing = sheet.lines.size() - marks.size();
  if (!marks.empty()) view.mean = mean_of(marks);
  view.bias = differences.empty() ? no_number("no other judge marked what she marked")
                                  : mean_with_interval(differences);
  if (differences.size() > 1) {
    view.spread = std::sqrt(squares_around(differences, mean_of(differences)) /
                            static_cast<double>(differences.size() - 1));
  }
  view.order = spearman(pairs);
  view.kinds = bias_by_kind(sheet, difference);
}

PairView pair_view(const MarkSheet& sheet, const MarkTable& table, std::size_t judge, std::size_t other) {
  const Pairs pairs = pairs_of(table, judge, other);
  const auto difference = [&](const MarkedLine& line) -> std::optional<double> {
    const std::optional<Mark>&first = line.marks[judge], &second = line.marks[other];
    if (!first || !second) return std::nullopt;
    return binary(*first - *second);
  };
  return {judge,
          other,
          spearman(pairs),
          kendall_tau(pairs),
          weighted_kappa(pairs),
          bland_altman(pairs),
          bias_by_kind(sheet, difference)};
}

}  // namespace

PanelView panel_view(const MarkSheet& sheet) {
  assert(!sheet.lines.empty());
  const PanelRule& rule = *sheet.lines.front().rule;
  const auto judges = static_cast<std::size_t>(rule.judges);
  PanelView view;
  view.title = sheet.title;
  view.of_elements = rule.per_element;
  view.step = rule.step;
  view.table.judges = view.filled.judges = judges;
  view.judges.resize(judges);
  for (const MarkedLine& line : sheet.lines) {
    assert(line.marks.size() == judges);
    const Judged judged = judge(*line.rule, line.marks);
    view.lines.push_back(line.title);
    add_row(line, judged, view);
    count_dropped(judged, view.judges);
  }
  for (std::size_t one = 0; one < judges; ++one) {
    view.judges[one].judge = one;
    compare_with_others(sheet, view.judges[one]);
    for (std::size_t other = one + 1; other < judges; ++other) {
      view.pairs.push_back(pair_view(sheet, view.table, one, other));
    }
  }
  view.intraclass = intraclass(view.filled);
  view.nominal = krippendorff_alpha(view.table, AlphaLevel::nominal);
  view.ordinal = krippendorff_alpha(view.table, AlphaLevel::ordinal);
  view.interval = krippendorff_alpha(view.table, AlphaLevel::interval);
  view.concordance = kendall_w(view.filled);
  view.sentences = sentences_about(view);
  view.warnings = warnings_of(view);
  return view;
}

}  // namespace landdrill
