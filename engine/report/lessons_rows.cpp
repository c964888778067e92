#include "engine/report/lessons_rows.h"

#include "engine/report/amount_text.h"
#include "engine/report/csv.h"
#include "engine/report/figures.h"
#include "engine/report/json_text.h"

namespace landdrill::report {
namespace {

json::object bias_object(const LearnedBias& one) {
  return {{"of", word_of(one.of)},
          {"code", text_or_null(one.code)},
          {"lessons", one.lessons},
          {"raw", figure_or_null(one.bias)},
          {"raw_low", figure_or_null(one.low)},
          {"raw_high", figure_or_null(one.high)},
          {"shrunk", figure_or_null(one.shrunk)},
          {"shrunk_low", figure_or_null(one.shrunk_low)},
          {"shrunk_high", figure_or_null(one.shrunk_high)},
          {"weight", figure_or_null(one.weight)},
          {"spread", figure_or_null(one.spread)}};
}

json::object test_object(const BackTest& tested) {
  const bool any = tested.tested > 0;
  const auto if_any = [&](double value) { return figure_or_null(any ? std::optional(value) : std::nullopt); };
  return {{"verdict", word_of(tested.verdict)},
          {"tested", tested.tested},
          {"days", tested.days},
          {"error_before", if_any(tested.error_before)},
          {"error_after", if_any(tested.error_after)},
          {"better", if_any(tested.better)},
          {"better_low", figure_or_null(tested.better_low)},
          {"better_high", figure_or_null(tested.better_high)}};
}

json::object estimate_object(const LessonsTold& told) {
  const CalibratedEstimate& both = *told.estimate;
  json::array elements;
  for (const CalibratedElement& one : both.elements)
    elements.push_back(
        json::object{{"element", text_or_null(one.label)},
                     {"kind", text_or_null(one.kind)},
                     {"mark", text_or_null(text_of(one.raw))},
                     {"points", text_or_null(text_of(one.raw_points, both.places))},
                     {"calibrated_mark", text_or_null(text_of(one.calibrated))},
                     {"calibrated_points", text_or_null(text_of(one.calibrated_points, both.places))}});
  return {{"routine", text_or_null(told.routine)},
          {"elements", std::move(elements)},
          {"total", text_or_null(text_of(both.raw_total, both.places))},
          {"calibrated_total", text_or_null(text_of(both.calibrated_total, both.places))},
          {"change", text_or_null(text_of(both.change, both.places))}};
}

std::string biases_csv(const Learned& learned) {
  std::string text = csv_row({"of", "code", "lessons", "raw", "raw_low", "raw_high", "shrunk", "shrunk_low",
                              "shrunk_high", "weight", "spread"});
  for (const LearnedBias& one : learned.biases)
    text += csv_row({word_of(one.of), one.code, std::to_string(one.lessons), exact_figure(one.bias),
                     exact_figure(one.low), exact_figure(one.high), exact_figure(one.shrunk),
                     exact_figure(one.shrunk_low), exact_figure(one.shrunk_high), exact_figure(one.weight),
                     exact_figure(one.spread)});
  return text;
}

std::string estimate_csv(const LessonsTold& told) {
  const CalibratedEstimate& both = *told.estimate;
  std::string text = csv_row(
      {"routine", "line", "element", "kind", "mark", "points", "calibrated_mark", "calibrated_points"});
  for (const CalibratedElement& one : both.elements)
    text += csv_row({told.routine, "element", one.label, one.kind, text_of(one.raw),
                     text_of(one.raw_points, both.places), text_of(one.calibrated),
                     text_of(one.calibrated_points, both.places)});
  return text + csv_row({told.routine, "total", "", "", "", text_of(both.raw_total, both.places), "",
                         text_of(both.calibrated_total, both.places)});
}

}  // namespace

std::string_view word_of(LearnedBias::Of of) {
  constexpr std::string_view words[] = {"all", "kind", "family", "fault"};
  return words[static_cast<std::size_t>(of)];
}

std::string_view word_of(BackTest::Verdict verdict) {
  constexpr std::string_view words[] = {"untested", "open", "helped", "harmed"};
  return words[static_cast<std::size_t>(verdict)];
}

std::string lessons_csv(const LessonsTold& told) {
  return told.estimate == nullptr ? biases_csv(*told.learned) : estimate_csv(told);
}

std::string lessons_json(const LessonsTold& told) {
  json::array biases;
  for (const LearnedBias& one : told.learned->biases) biases.push_back(bias_object(one));
  json::object all{{"days", told.learned->days},
                   {"biases", std::move(biases)},
                   {"back_test", test_object(*told.tested)},
                   {"warnings", list_of(told.learned->warnings)}};
  if (told.estimate != nullptr) all["estimate"] = estimate_object(told);
  return json_text(all, JsonLayout::indented);
}

}  // namespace landdrill::report
