// What panels gave so far, laid on an estimate, and whether that would have helped.
#include <algorithm>
#include <cmath>
#include <tuple>

#include "engine/judging/enough.h"
#include "engine/judging/learning.h"
#include "engine/judging/lessons.h"
#include "engine/judging/statistics/by_day.h"
#include "engine/routine/wish.h"
#include "engine/score/score.h"
#include "tables/binary.h"
#include "tables/decimal.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

Mark in_four_places(double mark) {
  constexpr std::int64_t place = Decimal::one / 10'000;
  return Mark(Decimal::from_units(std::llround(mark * 10'000) * place));
}

Mark calibrated_mark(const Learned& learned, const Element& element, Mark raw) {
  const PanelRule& rule = *element.panel;
  Lesson lesson;
  lesson.kind = element.kind->code;
  lesson.expected = binary(raw);
  lesson.least = binary(rule.least);
  lesson.most = binary(rule.most);
  return in_four_places(calibrated(learned, lesson));
}

// Whether chance suffices for what was added to one of the marks, or for the season as a whole.
bool may_be_chance(const Learned& learned, const CalibratedEstimate& both) {
  return std::any_of(both.elements.begin(), both.elements.end(), [&](const CalibratedElement& one) {
    if (one.calibrated == one.raw) return false;
    const LearnedBias* bias = added_to(learned, one.kind);
    return learned.claims.empty() || bias == nullptr || !is_clear(bias->shrunk_low, bias->shrunk_high);
  });
}

}  // namespace

CalibratedEstimate calibrated_estimate(const Routine& routine, const Wish& wish, const Learned& learned) {
  const Showing raw = expected(routine, wish);
  Showing moved = raw;
  CalibratedEstimate both;
  both.places = places_of(routine);
  for (std::size_t i = 0; i < routine.elements.size(); ++i) {
    const Element& element = routine.elements[i];
    CalibratedElement& row = both.elements.emplace_back();
    row.label = label_of(element);
    row.kind = element.kind->code;
    if (!raw.elements[i].marks) continue;
    row.raw = expected_mark(routine, i, chosen(routine, i, wish), wish.runs).mark;
    if (!row.raw) continue;
    row.calibrated = calibrated_mark(learned, element, *row.raw);
    moved.elements[i].marks = all_giving(*element.panel, *row.calibrated);
  }
  const Score before = score(routine, raw), after = score(routine, moved);
  for (std::size_t i = 0; i < both.elements.size(); ++i) {
    both.elements[i].raw_points = before.elements[i];
    both.elements[i].calibrated_points = after.elements[i];
  }
  both.may_be_chance = may_be_chance(learned, both);
  both.raw_total = before.total;
  both.calibrated_total = after.total;
  if (before.total && after.total) both.change = *after.total - *before.total;
  return both;
}

// Would calibration have helped? Day by day, with what was known before each.

namespace {

// Sums over the lessons of one day.
struct Day {
  double lessons = 0, before = 0, after = 0;
};

Day judged(std::span<const Lesson> lessons, const Learned& known) {
  Day day;
  for (const Lesson& lesson : lessons) {
    day.lessons += 1;
    day.before += std::abs(lesson.given - lesson.expected);
    day.after += std::abs(lesson.given - calibrated(known, lesson));
  }
  return day;
}

std::vector<Day> judged_day_by_day(std::span<const Lesson> by_date) {
  std::vector<Day> days;
  Learning learning;
  while (!by_date.empty()) {
    const std::string& date = by_date.front().date;
    const auto end = std::find_if(by_date.begin(), by_date.end(),
                                  [&](const Lesson& lesson) { return lesson.date != date; });
    const auto today = by_date.first(static_cast<std::size_t>(end - by_date.begin()));
    if (learning.lessons() >= least_lessons) days.push_back(judged(today, learning.of_kinds()));
    for (const Lesson& lesson : today) learning.add(lesson);
    by_date = by_date.subspan(today.size());
  }
  return days;
}

Day all_days(const std::vector<Day>& days) {
  Day sum;
  for (const Day& day : days) {
    sum.lessons += day.lessons;
    sum.before += day.before;
    sum.after += day.after;
  }
  return sum;
}

void put_gain_interval(const std::vector<Day>& days, const Day& sum, BackTest& result) {
  if (days.size() < 2) return;
  double squares = 0;
  for (const Day& day : days) {
    const double off = day.before - day.after - day.lessons * result.better;
    squares += off * off;
  }
  const auto count = static_cast<double>(days.size());
  const double error = std::sqrt(count / (count - 1) * squares) / sum.lessons;
  std::tie(result.better_low, result.better_high) = interval_about(result.better, DayError{error, count - 1});
}

BackTest::Verdict verdict_of(const BackTest& test) {
  if (test.tested == 0) return BackTest::Verdict::untested;
  if (test.days < least_days) return BackTest::Verdict::open;
  if (test.better_low && *test.better_low > 0) return BackTest::Verdict::helped;
  if (test.better_high && *test.better_high < 0) return BackTest::Verdict::harmed;
  return BackTest::Verdict::open;
}

}  // namespace

BackTest back_test(std::vector<Lesson> lessons) {
  std::stable_sort(lessons.begin(), lessons.end(),
                   [](const Lesson& a, const Lesson& b) { return a.date < b.date; });
  const std::vector<Day> days = judged_day_by_day(lessons);
  const Day sum = all_days(days);
  BackTest result;
  result.days = days.size();
  result.tested = static_cast<std::size_t>(sum.lessons);
  if (days.empty()) {
    result.warnings.push_back("no day has " + std::to_string(least_lessons) +
                              " marked elements before it: there is nothing to test calibration on");
    return result;
  }
  result.error_before = sum.before / sum.lessons;
  result.error_after = sum.after / sum.lessons;
  result.better = (sum.before - sum.after) / sum.lessons;
  put_gain_interval(days, sum, result);
  result.verdict = verdict_of(result);
  if (days.size() == 1) result.warnings.push_back("one day tested: how sure the gain is cannot be told");
  return result;
}

}  // namespace landdrill
