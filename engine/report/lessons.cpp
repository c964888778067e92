#include "engine/report/lessons.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/report/amount_text.h"
#include "engine/report/figures.h"
#include "engine/report/grid.h"
#include "engine/report/lessons_rows.h"
#include "engine/report/sections.h"
#include "engine/report/width.h"

namespace landdrill::report {
namespace {

// Whether all of the interval is on one side of nothing.
bool is_clear(const LearnedBias& all) {
  return all.low && all.high && (*all.low > 0 || *all.high < 0);
}

std::string first_sentence(const Learned& learned) {
  const LearnedBias& all = learned.biases.front();
  if (all.lessons == 0) return "There is nothing to learn from yet.";
  const std::string size = figure(all.bias < 0 ? -all.bias : all.bias);
  if (size == "0.00") return "On average panels give what you expect.";
  const std::string way = all.bias < 0 ? "less" : "more";
  const std::string sentence = fmt::format("On average panels give {} {} than you expect", size, way);
  if (is_clear(all)) return sentence + ".";
  return sentence + (all.low ? ", but so small a difference may be chance." : ".");
}

std::string tested_on(const BackTest& tested) {
  return fmt::format("{} on {}", counted(tested.tested, "element", "elements"),
                     counted(tested.days, "day", "days"));
}

std::string errors_of(const BackTest& tested) {
  return fmt::format("mean distance from the panel {} before, {} after, on {}", figure(tested.error_before),
                     figure(tested.error_after), tested_on(tested));
}

std::string verdict_sentence(const BackTest& tested) {
  switch (tested.verdict) {
    case BackTest::Verdict::untested:
      return fmt::format(
          "Whether calibrating would have helped cannot be tested yet: no day has {} lessons "
          "before it.",
          least_lessons);
    case BackTest::Verdict::helped:
      return fmt::format("Calibrating would have helped this season: {}.", errors_of(tested));
    case BackTest::Verdict::harmed:
      return fmt::format(
          "Calibrating would have made it worse this season: {}. Leave your marks as they are.",
          errors_of(tested));
    case BackTest::Verdict::open:
      return fmt::format("Whether calibrating would have helped is open: {}; that may be chance.",
                         errors_of(tested));
  }
  return "";
}

std::string heading_of(LearnedBias::Of of) {
  return "by " + std::string(word_of(of));
}

// A family or a fault that was seen once says nothing: the warnings name it.
bool is_shown(const LearnedBias& one) {
  return one.lessons > 1 || one.of == LearnedBias::Of::all || one.of == LearnedBias::Of::kind;
}

std::string bias_table(const Learned& learned, const TextWish& wish) {
  if (learned.biases.front().lessons == 0) return "";
  Grid grid({{"", Align::words, true},
             {"lessons", Align::amount},
             {"raw", Align::amount},
             {"95 % interval", Align::words, true},
             {"shrunk", Align::amount},
             {"95 % interval", Align::words, true},
             {"spread", Align::amount}});
  auto before = LearnedBias::Of::all;
  for (const LearnedBias& one : learned.biases) {
    if (!is_shown(one)) continue;
    if (one.of != before) grid.add({heading_of(one.of), "", "", "", "", "", ""}, Look::total);
    before = one.of;
    grid.add({one.code.empty() ? "all" : "  " + plain(one.code), std::to_string(one.lessons),
              signed_figure(one.bias), signed_interval(one.low, one.high), signed_figure(one.shrunk),
              signed_interval(one.shrunk_low, one.shrunk_high), figure(one.spread)});
  }
  return heading("What panels gave, less what you expected (marks)", wish) +
         grid.text(wish.width, wish.colour);
}

std::string lessons_legend(const Learned& learned, const TextWish& wish) {
  if (learned.biases.front().lessons == 0) return "";
  return heading("How to read it", wish) +
         bullets({"A lesson is one element that one panel marked.",
                  "raw: the plain mean; below 0 panels give less than you expect. An element counts once "
                  "for its kind, for each family of its parts and for each fault of the run it rests on.",
                  "shrunk: the same drawn towards the mean of its sort, the more so the fewer its lessons "
                  "are: a few marks tell little (empirical Bayes, Efron and Morris 1975).",
                  "spread: how far single elements lie around that (standard deviation).",
                  "A calibrated mark is your expected mark with the shrunk bias of its kind added. Each "
                  "panel is compared with what you expected by its day."},
                 wish);
}

std::string total_sentence(const CalibratedEstimate& both) {
  if (!both.change) return "There is no total: a mark is missing.";
  const std::string before = both.raw_total->text(both.places),
                    after = both.calibrated_total->text(both.places);
  if (*both.change == Points()) return "Calibrated, the estimate stays " + before + ".";
  return "Calibrated, the estimate is " + after + " instead of " + before + " (" +
         with_sign(both.change->text(both.places)) + ").";
}

std::string estimate_section(const LessonsTold& told, const TextWish& wish) {
  if (told.estimate == nullptr) return "";
  const CalibratedEstimate& both = *told.estimate;
  Grid grid({{"element", Align::words, true},
             {"kind", Align::words, true},
             {"mark", Align::amount, false, "expected"},
             {"points", Align::amount, false, "expected"},
             {"mark", Align::amount, false, "calibrated"},
             {"points", Align::amount, false, "calibrated"}});
  for (const CalibratedElement& one : both.elements)
    grid.add({one.label, one.kind, text_of(one.raw, 2), text_of(one.raw_points, both.places),
              text_of(one.calibrated, 2), text_of(one.calibrated_points, both.places)});
  std::string text = heading(cut(told.routine, wish.width - 28) + ", as expected and calibrated", wish);
  if (both.raw_total) {
    grid.add_rule();
    grid.add({"Total", "", "", text_of(both.raw_total, both.places), "",
              text_of(both.calibrated_total, both.places)},
             Look::total);
  }
  text += grid.text(wish.width, wish.colour);
  text += paragraph("", total_sentence(both), wish.width);
  return text + paragraph("",
                          fmt::format("Calibrated marks are rounded to {} decimal places, not to the "
                                      "panel's step: they stand for the mean of a panel. Marks of the "
                                      "whole routine stay as they are.",
                                      calibrated_places),
                          wish.width);
}

std::string as_sentence(std::string text) {
  if (!text.empty() && text[0] >= 'a' && text[0] <= 'z') text[0] = static_cast<char>(text[0] - 'a' + 'A');
  return text.ends_with('.') ? text : text + ".";
}

std::string lessons_text(const LessonsTold& told, const TextWish& wish) {
  const Learned& learned = *told.learned;
  std::string text = paragraph("",
                               fmt::format("What panels gave beside what you expected: {} on {}",
                                           counted(learned.biases.front().lessons, "element", "elements"),
                                           counted(learned.days, "day", "days")),
                               wish.width);
  text += "\n" + bullets({first_sentence(learned), verdict_sentence(*told.tested)}, wish);
  std::vector<std::string> warnings = learned.warnings;
  if (told.tested->verdict != BackTest::Verdict::untested)
    warnings.insert(warnings.end(), told.tested->warnings.begin(), told.tested->warnings.end());
  for (std::string& warning : warnings) warning = as_sentence(warning);
  if (!warnings.empty()) text += heading("With care", wish) + bullets(warnings, wish);
  return text + estimate_section(told, wish) + bias_table(learned, wish) + lessons_legend(learned, wish);
}

}  // namespace

std::string lessons(const LessonsTold& told, Format format, const TextWish& asked) {
  if (format == Format::csv) return lessons_csv(told);
  if (format == Format::json) return lessons_json(told);
  TextWish wish = asked;
  wish.width = std::max(60, wish.width);
  return lessons_text(told, wish);
}

}  // namespace landdrill::report
