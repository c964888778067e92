#include "engine/report/pages/lessons.h"

#include <fmt/format.h>

#include "engine/judging/enough.h"
#include "engine/judging/lessons.h"
#include "engine/report/figures.h"
#include "engine/report/page.h"
#include "engine/report/pages/lessons_tables.h"

namespace landdrill::report {
namespace {

// Whether all of the interval is on one side of nothing.
bool is_clear(const LearnedBias& all) {
  return all.low && all.high && (*all.low > 0 || *all.high < 0);
}

std::string bias_sentence(const LearnedBias& all) {
  if (all.lessons == 0) return "There is nothing to learn from yet.";
  const std::string size = figure(all.bias < 0 ? -all.bias : all.bias);
  if (size == "0.00") return "On average panels give what you expect.";
  const std::string way = all.bias < 0 ? "less" : "more";
  const std::string sentence = fmt::format("On average panels give {} {} than you expect", size, way);
  if (is_clear(all)) return sentence + ".";
  return sentence + (all.low ? ", but so small a difference may be chance." : ".");
}

std::string errors_of(const BackTest& tested) {
  return fmt::format("mean distance from the panel {} before, {} after, on {} on {}",
                     figure(tested.error_before), figure(tested.error_after),
                     counted(tested.tested, "element", "elements"), counted(tested.days, "day", "days"));
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

std::string as_sentence(std::string text) {
  if (!text.empty() && text[0] >= 'a' && text[0] <= 'z') text[0] = static_cast<char>(text[0] - 'a' + 'A');
  return text.ends_with('.') ? text : text + ".";
}

void put_warnings(const LessonsTold& told, PageParts& page) {
  std::vector<std::string> warnings = told.learned->warnings;
  if (told.tested->verdict != BackTest::Verdict::untested)
    warnings.insert(warnings.end(), told.tested->warnings.begin(), told.tested->warnings.end());
  for (std::string& warning : warnings) warning = as_sentence(warning);
  if (!warnings.empty()) page.heading("With care");
  page.list("warnings", warnings);
}

void put_lessons_legend(PageParts& page) {
  page.heading("How to read it");
  page.list("", {"A lesson is one element that one panel marked.",
                 "raw: the plain mean; below 0 panels give less than you expect. An element counts once "
                 "for its kind, for each family of its parts and for each fault of the run it rests on.",
                 "shrunk: the same drawn towards the mean of its sort, the more so the fewer its lessons "
                 "are: a few marks tell little (empirical Bayes, Efron and Morris 1975).",
                 "spread: how far single elements lie around that (standard deviation).",
                 "A calibrated mark is your expected mark with the shrunk bias of its kind added. Each "
                 "panel is compared with what you expected by its day."});
}

}  // namespace

Page lessons_page(const LessonsTold& told) {
  const Learned& learned = *told.learned;
  const LearnedBias& all = learned.biases.front();
  Page page("book lessons");
  page.heading(fmt::format("What panels gave beside what you expected: {} on {}",
                           counted(all.lessons, "element", "elements"),
                           counted(learned.days, "day", "days")));
  page.apart();
  page.list("sentences", {bias_sentence(all), verdict_sentence(*told.tested)});
  page.fact("days", {"", learned.days});
  page.fact("back_test", {"", back_test_datum(*told.tested)});
  put_warnings(told, page);
  if (told.estimate != nullptr) put_estimate(told, page);
  put_biases(learned, told.estimate == nullptr, page);
  if (all.lessons > 0) put_lessons_legend(page);
  return page;
}

Page lessons_page(const std::vector<Lesson>& lessons, const Routine* routine) {
  const Learned learned = learn(lessons);
  const BackTest tested = back_test(lessons);
  if (routine == nullptr) return lessons_page({&learned, &tested, {}, nullptr});
  const CalibratedEstimate estimate = calibrated_estimate(*routine, {}, learned);
  return lessons_page({&learned, &tested, std::string(routine->title), &estimate});
}

}  // namespace landdrill::report
