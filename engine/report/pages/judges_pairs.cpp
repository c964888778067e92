#include <algorithm>
#include <cmath>

#include "engine/judging/panel_view.h"
#include "engine/judging/statistics/agreement.h"
#include "engine/report/figures.h"
#include "engine/report/page.h"
#include "engine/report/pages/judges_numbers.h"
#include "engine/report/pages/judges_tables.h"

namespace landdrill::report {
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

void put_pairs_heading(bool all, Seen seen, PageParts& page) {
  constexpr std::string_view every = "Pairs, furthest apart first";
  if (all) return page.heading(std::string(every), seen);
  if (seen == Seen::always) page.heading("The pairs furthest apart", Seen::in_brief);
  page.heading(std::string(every), Seen::in_full);
}

PageTable no_pairs() {
  return {"pairs",
          {{"judges", "judges"},
           {"apart", "apart", Align::amount},
           {"", "95 % interval", Align::words, Wraps::yes},
           {"lower_limit", "", Align::amount, Wraps::no, Seen::by_programs},
           {"upper_limit", "", Align::amount, Wraps::no, Seen::by_programs},
           {"spearman", "Spearman", Align::amount},
           {"kendall", "Kendall", Align::amount},
           {"kappa", "kappa", Align::amount},
           {"kinds", "", Align::words, Wraps::no, Seen::by_programs}}};
}

std::vector<Entry> pair_row(const PairView& pair) {
  const AgreementLimits& limits = pair.limits;
  const auto entry = [](const Statistic& one) { return statistic_entry(figure(one.value), one); };
  return {Entry(pair_name(pair), Data{pair.judge + 1, pair.other + 1}),
          statistic_entry(signed_figure(limits.bias.value), limits.bias),
          signed_interval(limits.bias.low, limits.bias.high),
          statistic_entry("", limits.lower),
          statistic_entry("", limits.upper),
          entry(pair.spearman),
          entry(pair.kendall),
          entry(pair.kappa),
          biases_by_kind(pair.kinds, "apart")};
}

}  // namespace

void put_pairs_table(const PanelView& view, Seen seen, PageParts& page) {
  constexpr std::size_t few = 3;
  const std::vector<const PairView*> pairs = furthest_apart(view);
  const auto together = static_cast<std::size_t>(std::count_if(
      pairs.begin(), pairs.end(), [](const PairView* pair) { return pair->limits.bias.value.has_value(); }));
  if (together > 0) put_pairs_heading(together <= few, seen, page);
  PageTable table = no_pairs();
  for (std::size_t i = 0; i < pairs.size(); ++i)
    table.add(pair_row(*pairs[i]), Look::usual,
              i >= together ? Seen::by_programs
              : i < few     ? Seen::always
                            : Seen::in_full);
  page.add(std::move(table), seen);
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

}  // namespace landdrill::report
