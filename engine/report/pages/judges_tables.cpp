#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/judging/enough.h"
#include "engine/judging/panel_view.h"
#include "engine/judging/statistics/agreement.h"
#include "engine/report/figures.h"
#include "engine/report/page.h"
#include "engine/report/pages/judges.h"

namespace landdrill::report {
namespace {

Statistic bare(std::optional<double> value, std::size_t rows) {
  Statistic statistic;
  statistic.value = value;
  statistic.rows = rows;
  return statistic;
}

std::vector<std::pair<std::string, Statistic>> agreement_numbers(const PanelView& view) {
  std::vector<std::pair<std::string, Statistic>> numbers;
  for (std::size_t i = 0; i < std::size(intraclass_forms); ++i)
    numbers.emplace_back("icc" + std::string(intraclass_forms[i]), view.intraclass.forms[i]);
  numbers.emplace_back("alpha_interval", view.interval);
  numbers.emplace_back("alpha_ordinal", view.ordinal);
  numbers.emplace_back("alpha_nominal", view.nominal);
  numbers.emplace_back("w", view.concordance.w);
  numbers.emplace_back("w_by_chance", bare(view.concordance.by_chance, view.concordance.w.rows));
  numbers.emplace_back("rank_correlation", view.rank_correlation);
  return numbers;
}

Entry statistic_entry(std::string text, const Statistic& statistic) {
  return {std::move(text), statistic_datum(statistic)};
}

Entry biases_by_kind(const std::vector<KindBias>& kinds, const char* name) {
  Data list;
  for (const KindBias& one : kinds)
    list.push_back(Record{{"kind", one.kind}, {name, statistic_datum(one.bias)}});
  return {"", std::move(list)};
}

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

// What never changes has no interval, nor has what rests on one mark.
std::string what_it_may_be(const JudgeView& one) {
  return one.high_or_low && !one.level.low ? "always so" : signed_interval(one.level.low, one.level.high);
}
std::string what_she_marks(const JudgeView& one) {
  if (one.high_or_low) return *one.level.value > 0 ? "higher" : "lower";
  return one.marks < least_marks ? "too few marks" : "may be chance";
}

PageTable intraclass_table(const PanelView& view) {
  constexpr std::string_view judges[] = {"other judges each time", "judges drawn from many",
                                         "just these judges"};
  const auto& forms = view.intraclass.forms;
  PageTable table("", {{"", "intraclass correlation", Align::words, Wraps::yes},
                       {"", "one judge", Align::amount},
                       {"", "95 % interval", Align::words, Wraps::yes},
                       {"", fmt::format("mean of {}", view.seated.judges), Align::amount},
                       {"", "95 % interval", Align::words, Wraps::yes}});
  if (!forms[0].value && !forms[1].value && !forms[2].value) return table;
  for (std::size_t i = 0; i < std::size(judges); ++i) {
    const Statistic &one = forms[i], &mean = forms[i + 3];
    table.add({fmt::format("({}) {}", i + 1, judges[i]), figure(one.value), interval(one.low, one.high),
               figure(mean.value), interval(mean.low, mean.high)});
  }
  return table;
}

void add_figure(const char* name, const Statistic& statistic, std::string meaning, PageTable& table) {
  table.add({name, statistic.value ? figure(statistic.value) : "none",
             statistic.value ? std::move(meaning) : statistic.why_not});
}

std::string rank_meaning(const Statistic& correlation) {
  const std::string from = interval(correlation.low, correlation.high);
  return "of two judges on average" + (from.empty() ? "" : ", " + from);
}

PageTable agreement_table(const PanelView& view) {
  PageTable table("", {{"", ""}, {"", "", Align::amount}, {"", "", Align::words, Wraps::yes}});
  add_figure("Kendall's W", view.concordance.w, "1: all rank alike; 0: no order in common", table);
  // The chi-square never gets under 0.05 with two judges and few lines, however alike they rank.
  if (const auto& chance = view.concordance.by_chance; chance && view.seated.judges > 2)
    table.add(
        {"", *chance < 0.01 ? "under 0.01" : figure(chance), "how often chance alone ranks that alike"});
  add_figure("rank correlation", view.rank_correlation, rank_meaning(view.rank_correlation), table);
  add_figure("Krippendorff's alpha", view.interval, "marks, by their distance; 1 is full agreement", table);
  add_figure("", view.ordinal, "by their order only", table);
  add_figure("", view.nominal, "the very same mark only", table);
  return table;
}

}  // namespace

void put_judges_table(const PanelView& view, PageParts& page) {
  PageTable table("", {{"", "judge"},
                       {"", "marks", Align::amount},
                       {"", "mean", Align::amount},
                       {"", "by", Align::amount, Wraps::no, Seen::always, "above or below the others"},
                       {"", "may be", Align::words, Wraps::yes, Seen::always, "above or below the others"},
                       {"", "", Align::words, Wraps::yes},
                       amount_column("", "high", "dropped"),
                       amount_column("", "low", "dropped")});
  for (const JudgeView& one : view.judges)
    table.add({judge_name(one.judge), marks_text(one), figure(one.mean), signed_figure(one.level.value),
               what_it_may_be(one), what_she_marks(one), one.dropped_high, one.dropped_low});
  page.heading("Judge by judge");
  page.add(std::move(table), Seen::by_people);
}

void put_bias_table(const PanelView& view, PageParts& page) {
  PageTable table("judges", {{"judge", "judge"},
                             for_programs("marks"),
                             for_programs("missing"),
                             for_programs("mean"),
                             {"bias", "bias", Align::amount},
                             {"", "95 % interval", Align::words, Wraps::yes},
                             {"spread", "spread", Align::amount},
                             for_programs("dropped_high"),
                             for_programs("dropped_low"),
                             {"order", "order", Align::amount},
                             for_programs("kinds"),
                             for_programs("level"),
                             for_programs("high_or_low"),
                             for_programs("dropped_by_chance")});
  for (const JudgeView& one : view.judges)
    table.add({judge_entry(one.judge), one.marks, one.missing, figure_datum(one.mean),
               statistic_entry(signed_figure(one.bias.value), one.bias),
               signed_interval(one.bias.low, one.bias.high), figure_entry(one.spread), one.dropped_high,
               one.dropped_low, statistic_entry(figure(one.order.value), one.order),
               biases_by_kind(one.kinds, "bias"), statistic_datum(one.level), one.high_or_low,
               figure_datum(one.dropped_by_chance)});
  page.heading("Bias, spread and order of each judge", Seen::in_full);
  page.add(std::move(table), Seen::in_full);
  put_kinds_table(view, page);
}

void put_agreement(const PanelView& view, PageParts& page) {
  constexpr Seen seen = Seen::in_full;
  page.heading("How far all of them agree", seen);
  page.list("about_agreement", view.about_agreement, seen);
  if (!view.agreement_warnings.empty()) page.heading("With care", seen);
  page.list("agreement_warnings", view.agreement_warnings, seen);
  page.apart();
  if (PageTable intraclass = intraclass_table(view); !intraclass.rows.empty()) {
    page.add(std::move(intraclass), seen);
    page.apart();
  }
  page.add(agreement_table(view), seen);
  Record numbers;
  for (const auto& [name, statistic] : agreement_numbers(view))
    numbers.emplace_back(name, statistic_datum(statistic));
  page.fact("agreement", std::move(numbers));
}

namespace {

std::string pair_name(const PairView& pair) {
  return std::to_string(pair.judge + 1) + " and " + std::to_string(pair.other + 1);
}

// The pairs furthest apart first, those that marked nothing together last.
std::vector<const PairView*> furthest_apart(const PanelView& view) {
  std::vector<const PairView*> pairs;
  for (const PairView& one : view.pairs) pairs.push_back(&one);
  const auto size = [](const PairView* pair) {
    const std::optional<double>& apart = pair->limits.bias.value;
    return apart ? std::abs(*apart) : -1;
  };
  std::stable_sort(pairs.begin(), pairs.end(),
                   [&](const PairView* a, const PairView* b) { return size(a) > size(b); });
  return pairs;
}

PageTable no_pairs() {
  return {"pairs",
          {{"judges", "judges"},
           {"apart", "apart", Align::amount},
           {"", "95 % interval", Align::words, Wraps::yes},
           for_programs("lower_limit"),
           for_programs("upper_limit"),
           {"spearman", "Spearman", Align::amount},
           {"kendall", "Kendall", Align::amount},
           {"kappa", "kappa", Align::amount},
           for_programs("kinds")}};
}

void add_pair(const PairView& pair, PageTable& table) {
  const AgreementLimits& limits = pair.limits;
  const auto entry = [](const Statistic& one) { return statistic_entry(figure(one.value), one); };
  table.add({Entry(pair_name(pair), Data{pair.judge + 1, pair.other + 1}),
             statistic_entry(signed_figure(limits.bias.value), limits.bias),
             signed_interval(limits.bias.low, limits.bias.high), statistic_entry("", limits.lower),
             statistic_entry("", limits.upper), entry(pair.spearman), entry(pair.kendall), entry(pair.kappa),
             biases_by_kind(pair.kinds, "apart")},
            Look::usual, pair.limits.bias.value ? Seen::always : Seen::by_programs);
}

}  // namespace

void put_pairs_table(const PanelView& view, PageParts& page) {
  PageTable table = no_pairs();
  for (const PairView* pair : furthest_apart(view)) add_pair(*pair, table);
  if (!table.rows.empty()) page.heading("Pairs, furthest apart first", Seen::in_full);
  page.add(std::move(table), Seen::in_full);
}

void put_limits_table(const PanelView& view, PageParts& page) {
  PageTable table("", {{"", "judges"},
                       {"", "lower", Align::amount},
                       {"", "95 % interval", Align::words, Wraps::yes},
                       {"", "upper", Align::amount},
                       {"", "95 % interval", Align::words, Wraps::yes}});
  for (const PairView* pair : furthest_apart(view)) {
    const AgreementLimits& limits = pair->limits;
    if (!limits.lower.value) continue;
    table.add({pair_name(*pair), signed_figure(limits.lower.value),
               signed_interval(limits.lower.low, limits.lower.high), signed_figure(limits.upper.value),
               signed_interval(limits.upper.low, limits.upper.high)});
  }
  if (table.rows.empty()) return;
  page.heading("Limits of agreement of two judges (Bland-Altman)", Seen::in_full);
  page.add(std::move(table), Seen::in_full);
}

namespace {

Statistic bare_count(std::size_t number, std::size_t rows) {
  return bare(static_cast<double>(number), rows);
}

// Numbers about the same one or two judges, or about all of them.
PageTable no_numbers(Facts about) {
  PageTable table("", program_columns({"kind", "number", "value", "low", "high", "rests_on", "why_not"}));
  table.in_csv = true;
  table.given = std::move(about);
  return table;
}

void add_number(PageTable& table, std::string name, const Statistic& statistic,
                const std::string& kind = {}) {
  table.add({kind, std::move(name), figure_datum(statistic.value), figure_datum(statistic.low),
             figure_datum(statistic.high), statistic.rows, statistic.why_not});
}

// Over all, then kind by kind.
void add_biases(PageTable& table, const std::string& name, const Statistic& all,
                const std::vector<KindBias>& kinds) {
  add_number(table, name, all);
  for (const KindBias& of : kinds) add_number(table, name, of.bias, of.kind);
}

void put_judge(const JudgeView& one, Facts about, PageParts& page) {
  about.emplace_back("judge", std::to_string(one.judge + 1));
  PageTable numbers = no_numbers(std::move(about));
  add_number(numbers, "marks", bare_count(one.marks, one.marks));
  add_number(numbers, "missing", bare_count(one.missing, one.marks));
  add_number(numbers, "mean", bare(one.mean, one.marks));
  add_biases(numbers, "bias", one.bias, one.kinds);
  add_number(numbers, "level", one.level);
  add_number(numbers, "spread", bare(one.spread, one.bias.rows));
  add_number(numbers, "dropped_high", bare_count(one.dropped_high, one.marks));
  add_number(numbers, "dropped_low", bare_count(one.dropped_low, one.marks));
  add_number(numbers, "dropped_by_chance", bare(one.dropped_by_chance, one.marks));
  add_number(numbers, "order", one.order);
  page.add(std::move(numbers), Seen::by_programs);
}

void put_pair(const PairView& one, Facts about, PageParts& page) {
  about.emplace_back("judge", std::to_string(one.judge + 1));
  about.emplace_back("other", std::to_string(one.other + 1));
  PageTable numbers = no_numbers(std::move(about));
  add_biases(numbers, "apart", one.limits.bias, one.kinds);
  add_number(numbers, "lower_limit", one.limits.lower);
  add_number(numbers, "upper_limit", one.limits.upper);
  add_number(numbers, "spearman", one.spearman);
  add_number(numbers, "kendall", one.kendall);
  add_number(numbers, "kappa", one.kappa);
  page.add(std::move(numbers), Seen::by_programs);
}

}  // namespace

void put_numbers(const PanelView& view, PageParts& page) {
  const Facts about = {{"marked", view.title}};
  PageTable of_all = no_numbers(about);
  for (const auto& [name, statistic] : agreement_numbers(view)) add_number(of_all, name, statistic);
  page.add(std::move(of_all), Seen::by_programs);
  for (const JudgeView& one : view.judges) put_judge(one, about, page);
  for (const PairView& one : view.pairs) put_pair(one, about, page);
}

}  // namespace landdrill::report
