#include "engine/report/pages/practice_figures.h"

#include "engine/judging/statistics/figures.h"
#include "engine/report/figures.h"

namespace landdrill::report {

std::string off_by(std::optional<double> value) {
  const std::string text = figure(value);
  return text.empty() || text.starts_with('-') ? text : "+" + text;
}

std::string in_per_cent(std::optional<double> share) {
  return share ? landdrill::figure(*share * 100, 0) + " %" : std::string();
}

}  // namespace landdrill::report
