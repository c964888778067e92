#include "engine/report/figures.h"

#include <fmt/format.h>

#include <cmath>

#include "engine/chances/risk.h"
#include "engine/judging/statistics/figures.h"
#include "engine/score/execution.h"
#include "engine/score/option_limits.h"
#include "tables/decimal.h"

namespace landdrill::report {

std::string figure(std::optional<double> value) {
  return value ? landdrill::figure(*value) : std::string();
}

std::string signed_figure(std::optional<double> value) {
  const std::string text = figure(value);
  const bool bare = !text.empty() && text != "0.00" && text.front() != '-';
  return (bare ? "+" : "") + text;
}

std::string interval(std::optional<double> low, std::optional<double> high) {
  return low && high ? figure(low) + " to " + figure(high) : std::string();
}

std::string signed_interval(std::optional<double> low, std::optional<double> high) {
  return low && high ? signed_figure(low) + " to " + signed_figure(high) : std::string();
}

std::string as_number(double amount) {
  return fmt::format("{:.12g}", amount);
}

Datum figure_datum(std::optional<double> value) {
  return value ? Datum(exact_figure(*value)) : Datum();
}

Datum statistic_datum(const Statistic& statistic) {
  return Record{{"value", figure_datum(statistic.value)},
                {"low", figure_datum(statistic.low)},
                {"high", figure_datum(statistic.high)},
                {"rests_on", statistic.rows},
                {"why_not", statistic.why_not}};
}

Entry figure_entry(std::optional<double> value) {
  return {figure(value), figure_datum(value)};
}

Entry signed_entry(std::optional<double> value) {
  return {signed_figure(value), figure_datum(value)};
}

std::string counted(std::size_t count, std::string_view one) {
  return plural(static_cast<std::int64_t>(count), one);
}

namespace {

constexpr Chance hair = 1e-9;  // a sum of many chances is that far from 0 or 1, not the odds themselves

std::string times(double count) {
  return fmt::format("{:.0f} {}", count, std::round(count) == 1 ? "time" : "times");
}

}  // namespace

std::string per_cent(Chance chance) {
  if (chance < hair) return "0 %";
  if (chance > 1 - hair) return "100 %";
  if (chance < 0.0005) return "under 0.1 %";
  if (chance >= 0.9995) return "over 99.9 %";
  return fmt::format("{:.1f} %", 100 * chance);
}

std::string times_in_words(Chance chance) {
  if (chance < hair) return "never";
  if (chance > 1 - hair) return "always";
  if (chance < 0.075) return fmt::format("about 1 time in {:.0f}", 1 / chance);
  if (chance > 0.925) return fmt::format("all but about 1 time in {:.0f}", 1 / (1 - chance));
  return fmt::format("about {} in 10", times(10 * chance));
}

std::string to_places(double amount, int places) {
  return landdrill::figure(amount, places);
}

std::string to_places(Decimal amount, int places) {
  return round(Exact(amount), places, Rounding::half_up).text(places);
}

std::string given_per_cent(Decimal percent) {
  return round(Exact(percent), 2, Rounding::half_up).text() + " %";
}

std::string lost_words(const RunsShown& runs) {
  return std::to_string(runs.base) + " of " + plural(static_cast<std::int64_t>(runs.all), "run");
}

std::string weight_words(const BaseChance& chance) {
  return chance.runs.all == 0 ? "" : "a `slip` counts as " + chance.weight.text() + " runs";
}

std::string source_of(const BaseChance& chance, std::string_view nothing) {
  const bool of_sheet = chance.from == BaseChance::From::sheet;
  if (chance.runs.all == 0) {
    if (chance.from == BaseChance::From::nobody) return std::string(nothing);
    return of_sheet ? "from `slip` in the sheet" : "from `slip` in kinds.csv";
  }
  const std::string said =
      chance.from == BaseChance::From::nobody
          ? "no `slip`, so 0 %"
          : std::string(of_sheet ? "`slip` " : "`slip` of kinds.csv, ") + given_per_cent(chance.said);
  return "from " + lost_words(chance.runs) + " and " + said;
}

}  // namespace landdrill::report
