#include "engine/report/pages/judges_tables.h"

#include <fmt/format.h>

#include "engine/judging/statistics/agreement.h"
#include "engine/report/figures.h"
#include "engine/report/pages/judges_numbers.h"

namespace landdrill::report {
namespace {

std::string judge_name(std::size_t judge) {
  return std::to_string(judge + 1);
}

Entry judge_entry(std::size_t judge) {
  return {judge_name(judge), judge + 1};
}

std::string marks_text(const JudgeView& one) {
  return one.missing == 0 ? std::to_string(one.marks)
                          : fmt::format("{} of {}", one.marks, one.marks + one.missing);
}

void put_kinds_table(const PanelView& view, PageParts& page) {
  if (view.judges.empty() || view.judges.front().kinds.empty()) return;
  PageTable table("", {{"", "judge"},
                       {"", "kind", Align::words, Wraps::yes},
                       {"", "marks", Align::amount},
                       {"", "bias", Align::amount},
                       {"", "95 % interval", Align::words, Wraps::yes}});
  for (const JudgeView& judge : view.judges) {
    for (const KindBias& one : judge.kinds)
      table.add({judge_name(judge.judge), one.kind, std::to_string(one.bias.rows),
                 signed_figure(one.bias.value), signed_interval(one.bias.low, one.bias.high)});
  }
  page.heading("Bias by kind of element", Seen::in_full);
  page.add(std::move(table), Seen::in_full);
}

PageTable intraclass_table(const PanelView& view) {
  constexpr std::string_view judges[] = {"other judges each time", "judges drawn from many",
                                         "just these judges"};
  const auto& forms = view.intraclass.forms;
  PageTable table("", {{"", "intraclass correlation", Align::words, Wraps::yes},
                       {"", "one judge", Align::amount},
                       {"", "95 % interval", Align::words, Wraps::yes},
                       {"", fmt::format("mean of {}", view.judges.size()), Align::amount},
                       {"", "95 % interval", Align::words, Wraps::yes}});
  if (!forms[0].value && !forms[1].value && !forms[2].value) return table;
  for (std::size_t i = 0; i < std::size(judges); ++i) {
    const Statistic &one = forms[i], &mean = forms[i + 3];
    table.add({fmt::format("({}) {}", i + 1, judges[i]), figure(one.value), interval(one.low, one.high),
               figure(mean.value), interval(mean.low, mean.high)});
  }
  return table;
}

void add_figure(const char* name, const Statistic& statistic, const char* meaning, PageTable& table) {
  table.add({name, statistic.value ? figure(statistic.value) : "none",
             statistic.value ? std::string(meaning) : statistic.why_not});
}

PageTable agreement_table(const PanelView& view) {
  PageTable table("", {{"", ""}, {"", "", Align::amount}, {"", "", Align::words, Wraps::yes}});
  add_figure("Kendall's W", view.concordance.w, "1: all rank alike; 0: no order in common", table);
  if (const auto& chance = view.concordance.by_chance)
    table.add(
        {"", *chance < 0.01 ? "under 0.01" : figure(chance), "how often chance alone ranks that alike"});
  add_figure("Krippendorff's alpha", view.interval, "marks, by their distance; 1 is full agreement", table);
  add_figure("", view.ordinal, "by their order only", table);
  add_figure("", view.nominal, "the very same mark only", table);
  return table;
}

}  // namespace

void put_judges_table(const PanelView& view, PageParts& page) {
  PageTable table("judges", {{"judge", "judge"},
                             {"marks", "marks", Align::amount},
                             {"missing", "", Align::amount, Wraps::no, Seen::by_programs},
                             {"mean", "mean", Align::amount},
                             {"bias", "bias", Align::amount},
                             {"", "95 % interval", Align::words, Wraps::yes},
                             {"spread", "spread", Align::amount},
                             {"dropped_high", "high", Align::amount, Wraps::no, Seen::always, "dropped"},
                             {"dropped_low", "low", Align::amount, Wraps::no, Seen::always, "dropped"},
                             {"order", "order", Align::amount},
                             {"kinds", "", Align::words, Wraps::no, Seen::by_programs}});
  for (const JudgeView& one : view.judges)
    table.add({judge_entry(one.judge), Entry(marks_text(one), one.marks), Entry("", one.missing),
               figure_entry(one.mean), statistic_entry(signed_figure(one.bias.value), one.bias),
               signed_interval(one.bias.low, one.bias.high), figure_entry(one.spread),
               Entry(std::to_string(one.dropped_high), one.dropped_high),
               Entry(std::to_string(one.dropped_low), one.dropped_low),
               statistic_entry(figure(one.order.value), one.order), biases_by_kind(one.kinds, "bias")});
  table.picture = {
      Picture::As::dots, "How far each judge marks above or below the others", "marks", "judge", {"bias"}};
  page.heading("Judge by judge");
  page.add(std::move(table));
  put_kinds_table(view, page);
}

void put_agreement(const PanelView& view, Seen seen, PageParts& page) {
  page.heading("How far all of them agree", seen);
  if (PageTable intraclass = intraclass_table(view); !intraclass.rows.empty()) {
    page.add(std::move(intraclass), seen);
    page.apart();
  }
  page.add(agreement_table(view), seen);
  Record numbers;
  for (const auto& [name, statistic] : agreement_numbers(view))
    numbers.emplace_back(name, statistic_datum(statistic));
  page.fact("agreement", {"", std::move(numbers)});
}

}  // namespace landdrill::report
