// What the coefficients of agreement say, to whoever asked for them, and where they say little.
#include <fmt/format.h>

#include <algorithm>
#include <string>
#include <vector>

#include "engine/judging/enough.h"
#include "engine/judging/panel_figures.h"
#include "engine/judging/panel_words.h"
#include "engine/judging/statistics/agreement.h"
#include "engine/judging/statistics/figures.h"
#include "tables/binary.h"
#include "tables/claims.h"

namespace landdrill {
namespace {

std::string guide(double icc) {
  return icc < binary(claim("guide-moderate"))    ? "poor"
         : icc < binary(claim("guide-good"))      ? "moderate"
         : icc < binary(claim("guide-excellent")) ? "good"
                                                  : "excellent";
}
// By all that it may be: "a poor to moderate"; where judges differ by nothing at all there is one value only.
std::string guides(const Statistic& icc) {
  const std::string least = guide(icc.low.value_or(*icc.value)), most = guide(icc.high.value_or(*icc.value));
  return (least == "excellent" ? "an " : "a ") + least + (least == most ? "" : " to " + most);
}
std::string form_of(std::string_view name, const Statistic& icc) {
  const std::string value = fmt::format("ICC(2,{}) {}", name, figure(*icc.value));
  return icc.low ? fmt::format("{}, from {} to {}", value, figure(*icc.low), figure(*icc.high)) : value;
}

void say_intraclass(const PanelView& view, std::vector<std::string>& sentences) {
  const Statistic &one = view.intraclass.forms[1], &mean = view.intraclass.forms[4];
  if (!one.value || !mean.value || one.rows < least_marks) return;
  const std::string judges = std::to_string(view.seated.judges);
  sentences.push_back(
      fmt::format("One judge's marks alone are {} guide to the {} ({}), the mean of all {} is {} one ({}).",
                  guides(one), things(view), form_of("1", one), judges, guides(mean), form_of(judges, mean)));
}

void warn_of_none(const Statistic& statistic, const std::string& name, std::vector<std::string>& warnings) {
  if (!statistic.value) warnings.push_back("There is no " + name + ": " + statistic.why_not + ".");
}

void warn_of_few_rows(const PanelView& view, std::vector<std::string>& warnings) {
  if (!view.concordance.w.value || view.concordance.w.rows >= rows_for_chi_square) return;
  warnings.push_back(
      fmt::format("W rests on {} {}; {} are wanted before its chance can be trusted, which is reckoned "
                  "as if they were many.",
                  view.concordance.w.rows, things(view), rows_for_chi_square));
}

void warn_of_loose_limits(const PanelView& view, std::vector<std::string>& warnings) {
  double most = 0;
  std::size_t fewest = rows_for_intervals;
  for (const PairView& pair : view.pairs) {
    const Statistic& upper = pair.limits.upper;
    if (!upper.value || !upper.high || upper.rows >= rows_for_intervals) continue;
    most = std::max(most, *upper.high - *upper.value);
    fewest = std::min(fewest, upper.rows);
  }
  if (most == 0) return;
  warnings.push_back(
      fmt::format("The limits of agreement rest on {} {}; {} are wanted, for with these a limit can be off "
                  "by {} marks.",
                  fewest, things(view), rows_for_intervals, figure(most)));
}

void warn_of_incomplete_rows(const PanelView& view, std::vector<std::string>& warnings) {
  const std::size_t complete = complete_rows(view.seated).rows();
  if (complete == view.lines.size() || complete == 0) return;
  warnings.push_back(
      fmt::format("The intraclass correlation, W and the mean rank correlation rest on {} of {} {}, those "
                  "that all {} judges marked.",
                  complete, view.lines.size(), things(view), view.seated.judges));
}

}  // namespace

std::vector<std::string> sentences_about_agreement(const PanelView& view) {
  std::vector<std::string> sentences;
  say_intraclass(view, sentences);
  return sentences;
}

std::vector<std::string> warnings_about_agreement(const PanelView& view) {
  std::vector<std::string> warnings;
  if (view.lines.size() >= least_marks) {
    warn_of_few_rows(view, warnings);
    warn_of_loose_limits(view, warnings);
  }
  warn_of_incomplete_rows(view, warnings);
  warn_of_none(view.intraclass.forms[1], "intraclass correlation", warnings);
  warn_of_none(view.concordance.w, "Kendall's W", warnings);
  warn_of_none(view.interval, "Krippendorff's alpha", warnings);
  return warnings;
}

}  // namespace landdrill
