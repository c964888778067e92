#include "engine/judging/panel_view.h"

#include <algorithm>
#include <cassert>
#include <cmath>

#include "engine/judging/leanings.h"
#include "engine/judging/mark_sheet.h"
#include "engine/judging/outliers.h"
#include "engine/judging/panel_words.h"
#include "engine/judging/statistics/agreement.h"
#include "engine/judging/statistics/sample.h"
#include "engine/score/panel.h"
#include "tables/binary.h"
#include "tables/claims.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

void add_row(const MarkedLine& line, const Judged& judged, PanelView& view) {
  for (std::size_t judge = 0; judge < line.marks.size(); ++judge) {
    const std::optional<Mark>& mark = line.marks[judge];
    view.table.marks.push_back(mark ? std::optional(binary(*mark)) : std::nullopt);
    view.filled_in += judged.judges[judge].filled;
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
  std::vector<std::size_t> there;
  double dropped = 0;
  for (std::size_t judge = 0; judge < judges.size(); ++judge) {
    const JudgeMark& one = judged.judges[judge];
    if (one.filled || one.state == JudgeMark::State::absent) continue;
    there.push_back(judge);
    judges[judge].dropped_high += one.mark > *most;
    judges[judge].dropped_low += one.mark < *least;
    dropped += one.mark > *most || one.mark < *least;
  }
  for (const std::size_t judge : there)
    judges[judge].dropped_by_chance += dropped / static_cast<double>(there.size());
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
    const Others others = others_of(line, view.judge);
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
    pairs.emplace_back(marks.back(), others_of(line, view.judge).mean());
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

// Its interval is one of large samples; a smaller one it does not hold for.
Statistic kappa_of(const Pairs& pairs) {
  Statistic kappa = weighted_kappa(pairs);
  if (static_cast<double>(kappa.rows) < binary(claim("kappa-lines"))) kappa.low = kappa.high = std::nullopt;
  return kappa;
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
          kappa_of(pairs),
          bland_altman(pairs),
          bias_by_kind(sheet, difference)};
}

MarkTable without_absent(const MarkTable& table, const std::vector<JudgeView>& judges) {
  MarkTable seated;
  for (const JudgeView& one : judges) seated.judges += one.marks > 0;
  for (std::size_t row = 0; row < table.rows(); ++row)
    for (const JudgeView& one : judges)
      if (one.marks > 0) seated.marks.push_back(table.at(row, one.judge));
  return seated;
}

void find_who_stands_out(const MarkSheet& sheet, PanelView& view) {
  Leanings leanings = leanings_in(sheet);
  for (JudgeView& one : view.judges) one.level = leanings.levels[one.judge];
  for (const Leaning& one : leanings.found) {
    if (!one.kind.empty()) continue;
    view.judges[one.judge].high_or_low = true;
    if (one.than) view.judges[*one.than].high_or_low = true;
  }
  view.leanings = std::move(leanings.found);
  view.scatters = scatters_most(sheet, view.judges);
  view.is_dropped = dropped_most(view.judges);
}

void find_agreement(PanelView& view) {
  view.seated = without_absent(view.table, view.judges);
  view.intraclass = intraclass(view.seated);
  view.concordance = kendall_w(view.seated);
  view.rank_correlation = mean_rank_correlation(view.seated);
  view.nominal = krippendorff_alpha(view.table, AlphaLevel::nominal);
  view.ordinal = krippendorff_alpha(view.table, AlphaLevel::ordinal);
  view.interval = krippendorff_alpha(view.table, AlphaLevel::interval);
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
  view.table.judges = judges;
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
  find_who_stands_out(sheet, view);
  find_agreement(view);
  view.sentences = sentences_about(view);
  view.warnings = warnings_of(view);
  view.about_agreement = sentences_about_agreement(view);
  view.agreement_warnings = warnings_about_agreement(view);
  return view;
}

}  // namespace landdrill
