#include "engine/report/figures.h"

#include "engine/judging/statistics/figures.h"

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

std::string counted(std::size_t count, std::string_view one, std::string_view many) {
  return std::to_string(count) + " " + std::string(count == 1 ? one : many);
}

}  // namespace landdrill::report
