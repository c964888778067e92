#include "engine/report/judges_rows.h"

#include <fmt/format.h>

#include "engine/report/csv.h"
#include "engine/report/figures.h"
#include "engine/report/json_text.h"

namespace landdrill::report {
namespace {

// One number of a view: whom it is about, which it is, on what kind of element (empty: all).
struct ViewNumber {
  std::string judge, other, kind, name;
  Statistic statistic;
};

Statistic bare(std::optional<double> value, std::size_t rows) {
  Statistic statistic;
  statistic.value = value;
  statistic.rows = rows;
  return statistic;
}

Statistic count(std::size_t number, std::size_t rows) {
  return bare(static_cast<double>(number), rows);
}

void add_judge(const JudgeView& one, std::vector<ViewNumber>& numbers) {
  const std::string judge = std::to_string(one.judge + 1);
  const auto add = [&](const char* name, Statistic statistic, const std::string& kind = {}) {
    numbers.push_back({judge, {}, kind, name, std::move(statistic)});
  };
  add("marks", count(one.marks, one.marks));
  add("missing", count(one.missing, one.marks));
  add("mean", bare(one.mean, one.marks));
  add("bias", one.bias);
  for (const KindBias& of : one.kinds) add("bias", of.bias, of.kind);
  add("spread", bare(one.spread, one.bias.rows));
  add("dropped_high", count(one.dropped_high, one.marks));
  add("dropped_low", count(one.dropped_low, one.marks));
  add("order", one.order);
}

void add_pair(const PairView& one, std::vector<ViewNumber>& numbers) {
  const auto add = [&](const char* name, const Statistic& statistic, const std::string& kind = {}) {
    numbers.push_back({std::to_string(one.judge + 1), std::to_string(one.other + 1), kind, name, statistic});
  };
  add("apart", one.limits.bias);
  for (const KindBias& of : one.kinds) add("apart", of.bias, of.kind);
  add("lower_limit", one.limits.lower);
  add("upper_limit", one.limits.upper);
  add("spearman", one.spearman);
  add("kendall", one.kendall);
  add("kappa", one.kappa);
}

std::vector<ViewNumber> numbers_of_all(const PanelView& view) {
  std::vector<ViewNumber> numbers;
  for (std::size_t i = 0; i < 6; ++i)
    numbers.push_back({{}, {}, {}, fmt::format("icc{}", intraclass_forms[i]), view.intraclass.forms[i]});
  numbers.push_back({{}, {}, {}, "alpha_interval", view.interval});
  numbers.push_back({{}, {}, {}, "alpha_ordinal", view.ordinal});
  numbers.push_back({{}, {}, {}, "alpha_nominal", view.nominal});
  numbers.push_back({{}, {}, {}, "w", view.concordance.w});
  numbers.push_back({{}, {}, {}, "w_by_chance", bare(view.concordance.by_chance, view.concordance.w.rows)});
  return numbers;
}

std::vector<ViewNumber> numbers_of(const PanelView& view) {
  std::vector<ViewNumber> numbers = numbers_of_all(view);
  for (const JudgeView& one : view.judges) add_judge(one, numbers);
  for (const PairView& one : view.pairs) add_pair(one, numbers);
  return numbers;
}

json::array kinds_of(const std::vector<KindBias>& kinds, const char* name) {
  json::array list;
  for (const KindBias& one : kinds)
    list.push_back(json::object{{"kind", text_or_null(one.kind)}, {name, statistic_object(one.bias)}});
  return list;
}

json::object judge_object(const JudgeView& one) {
  return {{"judge", one.judge + 1},
          {"marks", one.marks},
          {"missing", one.missing},
          {"mean", figure_or_null(one.mean)},
          {"bias", statistic_object(one.bias)},
          {"spread", figure_or_null(one.spread)},
          {"dropped_high", one.dropped_high},
          {"dropped_low", one.dropped_low},
          {"order", statistic_object(one.order)},
          {"kinds", kinds_of(one.kinds, "bias")}};
}

json::object pair_object(const PairView& one) {
  return {{"judges", json::array{one.judge + 1, one.other + 1}},
          {"apart", statistic_object(one.limits.bias)},
          {"lower_limit", statistic_object(one.limits.lower)},
          {"upper_limit", statistic_object(one.limits.upper)},
          {"spearman", statistic_object(one.spearman)},
          {"kendall", statistic_object(one.kendall)},
          {"kappa", statistic_object(one.kappa)},
          {"kinds", kinds_of(one.kinds, "apart")}};
}

json::array lines_array(const PanelView& view) {
  json::array lines;
  for (std::size_t row = 0; row < view.lines.size(); ++row) {
    json::array marks;
    for (std::size_t judge = 0; judge < view.judges.size(); ++judge)
      marks.push_back(figure_or_null(view.table.at(row, judge)));
    lines.push_back(json::object{{"line", text_or_null(view.lines[row])}, {"marks", std::move(marks)}});
  }
  return lines;
}

json::object view_object(const PanelView& view) {
  json::array judges, pairs;
  for (const JudgeView& one : view.judges) judges.push_back(judge_object(one));
  for (const PairView& one : view.pairs) pairs.push_back(pair_object(one));
  json::object agreement;
  for (const ViewNumber& one : numbers_of_all(view)) agreement[one.name] = statistic_object(one.statistic);
  return {{"title", text_or_null(view.title)},  {"sentences", list_of(view.sentences)},
          {"warnings", list_of(view.warnings)}, {"judges", std::move(judges)},
          {"pairs", std::move(pairs)},          {"agreement", std::move(agreement)},
          {"lines", lines_array(view)}};
}

}  // namespace

std::string judges_csv_head() {
  return csv_row({"date", "meet", "event", "marked", "judge", "other", "kind", "number", "value", "low",
                  "high", "rests_on", "why_not"});
}

std::string judges_csv(const MeetView& meet) {
  std::string text;
  for (const PanelView& view : meet.views) {
    for (const ViewNumber& one : numbers_of(view)) {
      const Statistic& number = one.statistic;
      text += csv_row({meet.date, meet.meet, meet.event, view.title, one.judge, one.other, one.kind, one.name,
                       exact_figure(number.value), exact_figure(number.low), exact_figure(number.high),
                       std::to_string(number.rows), number.why_not});
    }
  }
  return text;
}

std::string judges_json(const MeetView& meet) {
  json::array views;
  for (const PanelView& view : meet.views) views.push_back(view_object(view));
  return json_text_inside(json::object{{"date", text_or_null(meet.date)},
                                       {"meet", text_or_null(meet.meet)},
                                       {"event", text_or_null(meet.event)},
                                       {"event_title", text_or_null(meet.event_title)},
                                       {"routines", list_of(meet.routines)},
                                       {"panels", meet.panels},
                                       {"views", std::move(views)}},
                          2);
}

}  // namespace landdrill::report
