#include "engine/report/pages/judges_numbers.h"

#include "engine/judging/statistics/agreement.h"
#include "engine/report/figures.h"

namespace landdrill::report {
namespace {

Statistic bare(std::optional<double> value, std::size_t rows) {
  Statistic statistic;
  statistic.value = value;
  statistic.rows = rows;
  return statistic;
}

Statistic bare_count(std::size_t number, std::size_t rows) {
  return bare(static_cast<double>(number), rows);
}

// The numbers about the same one or two judges, or about all of them.
class Numbers {
 public:
  explicit Numbers(Facts about)
      : table_("", {{"kind", ""},
                    {"number", ""},
                    {"value", ""},
                    {"low", ""},
                    {"high", ""},
                    {"rests_on", ""},
                    {"why_not", ""}}) {
    table_.in_csv = true;
    table_.given = std::move(about);
  }
  void add(std::string name, const Statistic& statistic, const std::string& kind = {}) {
    table_.add({kind, std::move(name), Entry("", figure_datum(statistic.value)),
                Entry("", figure_datum(statistic.low)), Entry("", figure_datum(statistic.high)),
                Entry("", statistic.rows), statistic.why_not});
  }
  // Over all, then kind by kind.
  void add(const std::string& name, const Statistic& all, const std::vector<KindBias>& kinds) {
    add(name, all);
    for (const KindBias& of : kinds) add(name, of.bias, of.kind);
  }
  void put(PageParts& page) && { page.add(std::move(table_), Seen::by_programs); }

 private:
  PageTable table_;
};

void put_judge(const JudgeView& one, Facts about, PageParts& page) {
  about.emplace_back("judge", std::to_string(one.judge + 1));
  Numbers numbers(std::move(about));
  numbers.add("marks", bare_count(one.marks, one.marks));
  numbers.add("missing", bare_count(one.missing, one.marks));
  numbers.add("mean", bare(one.mean, one.marks));
  numbers.add("bias", one.bias, one.kinds);
  numbers.add("spread", bare(one.spread, one.bias.rows));
  numbers.add("dropped_high", bare_count(one.dropped_high, one.marks));
  numbers.add("dropped_low", bare_count(one.dropped_low, one.marks));
  numbers.add("order", one.order);
  std::move(numbers).put(page);
}

void put_pair(const PairView& one, Facts about, PageParts& page) {
  about.emplace_back("judge", std::to_string(one.judge + 1));
  about.emplace_back("other", std::to_string(one.other + 1));
  Numbers numbers(std::move(about));
  numbers.add("apart", one.limits.bias, one.kinds);
  numbers.add("lower_limit", one.limits.lower);
  numbers.add("upper_limit", one.limits.upper);
  numbers.add("spearman", one.spearman);
  numbers.add("kendall", one.kendall);
  numbers.add("kappa", one.kappa);
  std::move(numbers).put(page);
}

}  // namespace

const std::vector<std::string> judges_csv = {"date",  "meet",     "event",  "marked", "judge",
                                             "other", "kind",     "number", "value",  "low",
                                             "high",  "rests_on", "why_not"};

std::vector<std::pair<std::string, Statistic>> agreement_numbers(const PanelView& view) {
  std::vector<std::pair<std::string, Statistic>> numbers;
  for (std::size_t i = 0; i < std::size(intraclass_forms); ++i)
    numbers.emplace_back("icc" + std::string(intraclass_forms[i]), view.intraclass.forms[i]);
  numbers.emplace_back("alpha_interval", view.interval);
  numbers.emplace_back("alpha_ordinal", view.ordinal);
  numbers.emplace_back("alpha_nominal", view.nominal);
  numbers.emplace_back("w", view.concordance.w);
  numbers.emplace_back("w_by_chance", bare(view.concordance.by_chance, view.concordance.w.rows));
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

void put_numbers(const PanelView& view, PageParts& page) {
  const Facts about = {{"marked", view.title}};
  Numbers of_all(about);
  for (const auto& [name, statistic] : agreement_numbers(view)) of_all.add(name, statistic);
  std::move(of_all).put(page);
  for (const JudgeView& one : view.judges) put_judge(one, about, page);
  for (const PairView& one : view.pairs) put_pair(one, about, page);
}

}  // namespace landdrill::report
