#include "engine/report/figures.h"

#include "engine/judging/statistics/figures.h"
#include "engine/report/json_text.h"

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

std::string exact_figure(std::optional<double> value) {
  return value ? landdrill::exact_figure(*value) : std::string();
}

boost::json::value figure_or_null(std::optional<double> value) {
  return text_or_null(exact_figure(value));
}

boost::json::object statistic_object(const Statistic& statistic) {
  return {{"value", figure_or_null(statistic.value)},
          {"low", figure_or_null(statistic.low)},
          {"high", figure_or_null(statistic.high)},
          {"rests_on", statistic.rows},
          {"why_not", text_or_null(statistic.why_not)}};
}

boost::json::array list_of(const std::vector<std::string>& texts) {
  boost::json::array list;
  for (const std::string& one : texts) list.push_back(text_or_null(one));
  return list;
}

}  // namespace landdrill::report
