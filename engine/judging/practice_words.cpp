#include "engine/judging/practice_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <string>
#include <string_view>

#include "engine/judging/enough.h"
#include "engine/judging/statistics/figures.h"

namespace landdrill {

bool is_sure(const Statistic& bias, double step) {
  if (!bias.low) return bias.rows >= least_tasks && std::abs(*bias.value) >= step;
  return *bias.low > 0 || *bias.high < 0;
}

namespace {

std::string amount(double number) {
  return figure(std::abs(number));
}

std::string_view higher_or_lower(double bias) {
  return bias < 0 ? "lower" : "higher";
}

std::string signed_amount(double number) {
  return (number < 0 ? "-" : "+") + amount(number);
}

bool is_within(const Statistic& bias, double step) {
  if (!bias.low) return bias.rows >= least_tasks && std::abs(*bias.value) < step;
  return *bias.low > -step && *bias.high < step;
}

// A panel that is strict on its day makes her look high.
std::string basis(const PracticeReport& report) {
  return fmt::format("{} marks of {}", report.bias.rows,
                     report.meets == 1 ? "one meet" : fmt::format("{} meets", report.meets));
}

std::string sure_bias(const PracticeReport& report) {
  const Statistic& told = report.bias;
  const double bias = *told.value;
  const std::string start =
      fmt::format("On average you mark {} {} than {}", amount(bias), higher_or_lower(bias), report.reference);
  if (!told.low) return start + ", on every line alike.";
  const double nearer = bias < 0 ? *told.high : *told.low, farther = bias < 0 ? *told.low : *told.high;
  return fmt::format("{}: by {} to {}, as far as {} can tell.", start, amount(nearer), amount(farther),
                     basis(report));
}

std::string bias_sentence(const PracticeFaults& faults, double step, const PracticeReport& report) {
  const Statistic& told = report.bias;
  const std::string how_much = amount(*told.value);
  const std::string_view which_way = higher_or_lower(*told.value);
  if (is_within(faults.bias, step))
    return fmt::format("On average you mark as {} does, within a step ({} {}).", report.reference, how_much,
                       which_way);
  if (!is_sure(faults.bias, step))
    return fmt::format("On average you marked {} {} than {}; with {} marks that may be chance.", how_much,
                       which_way, report.reference, told.rows);
  return sure_bias(report);
}

// "on lift", "where the panel gave below 6.50", "in the last third"
std::string place_words(const PlaceApart& place, const std::string& reference) {
  switch (place.by) {
    case PracticeReport::Where::By::kind:
      return "on " + place.name;
    case PracticeReport::Where::By::level:
      return "where " + reference + " gave " + place.name;
    case PracticeReport::Where::By::time:
      return "in the " + place.name;
  }
  return place.name;
}

std::string lies_further_off(const PlaceApart& place, const std::string& reference) {
  return fmt::format("You are further off {} than elsewhere: {} from {} on average, elsewhere {}.",
                     place_words(place, reference), amount(place.here), reference, amount(place.elsewhere));
}

std::string higher_there(const PlaceApart& place, const std::string& reference) {
  return fmt::format("You mark {} {} than elsewhere: {} against {} on average, elsewhere {}.",
                     higher_or_lower(place.here - place.elsewhere), place_words(place, reference),
                     signed_amount(place.here), reference, signed_amount(place.elsewhere));
}

}  // namespace

void say_faults(const PracticeFaults& faults, double step, PracticeReport& report) {
  std::vector<std::string>& said = report.sentences;
  said.push_back(bias_sentence(faults, step, report));
  if (const auto& place = faults.places.further_off) said.push_back(lies_further_off(*place, report.reference));
  if (const auto& place = faults.places.otherwise) said.push_back(higher_there(*place, report.reference));
  if (faults.order)
    said.push_back("You rank the elements otherwise than the panel: look at which you find better.");
  if (faults.scale && *report.spread < *report.panel_spread / 2)
    said.push_back(fmt::format("You use less of the scale than {}: be bolder with high and low marks.",
                               report.reference));
}

namespace {

void warn_of_lines_met_before(PracticeReport& report) {
  if (report.again == 0) return;
  const bool one = report.again == 1;
  report.warnings.push_back(fmt::format(
      "{} of the {} marks {} of {} that you had met before, and been told the "
      "panel's marks: {} left out of what follows.",
      report.again, report.marked, one ? "is" : "are", one ? "a line" : "lines", one ? "it is" : "they are"));
}

void warn_of_few(PracticeReport& report) {
  const std::size_t new_ones = report.marked - report.again;
  if (new_ones >= least_tasks) return;
  report.warnings.push_back(fmt::format("{} {}: too few to say much; mark at least {}", new_ones,
                                        new_ones == 1 ? "mark" : "marks", least_tasks));
}

void warn_of_corrected(std::span<const PracticeTask> tasks, PracticeReport& report) {
  constexpr std::size_t most_named = 4;
  std::string names;
  for (const PracticeTask& task : tasks) {
    if (!task.corrected) continue;
    if (++report.corrected <= most_named) names += (names.empty() ? "" : ", ") + task.label;
  }
  if (report.corrected == 0) return;
  if (report.corrected > most_named) names += " and others";
  report.warnings.push_back(
      fmt::format("The panel's marks of {} of the {} lines were corrected since this "
                  "practice began ({}): you are compared with the corrected ones.",
                  report.corrected, tasks.size(), names));
}

}  // namespace

void warn_of_practice(std::span<const PracticeTask> tasks, PracticeReport& report) {
  warn_of_lines_met_before(report);
  warn_of_few(report);
  warn_of_corrected(tasks, report);
}

}  // namespace landdrill
