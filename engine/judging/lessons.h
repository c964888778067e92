// What the season teaches about the coach's expected marks: how far panels lay off them, and what to add next
// time.
//
//   std::vector<Lesson> kept = lessons(routine, routine.panels[0]);
//   Learned season = learn(kept);
//   calibrated(season, kept[0])       // 7.31 instead of the expected 7.50: panels give hybrids 0.19 less
//
// Bias is the panel's mark (mean of the kept marks) less the coach's expected one, in marks. Statistics are
// binary floating point and never go into a score. Marks of one day move together, so intervals count days
// (statistics/by_day.h): there are none of fewer than three, and none where the days do not scatter.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "engine/routine/routine.h"
#include "engine/routine/wish.h"
#include "engine/score/score.h"
#include "tables/quantity.h"

namespace landdrill {

// One element of one recorded panel.
struct Lesson {
  std::string date, routine, label;  // of the panel; "Harbour Lights", "2 Undertow"
  std::string kind;
  std::vector<std::string> families, faults;  // of its parts; that the run the expectation rests on had
  double expected = 0, given = 0;             // marks
  bool base = false;            // the panel gave the base mark; the marks are learned from all the same
  double least = 0, most = 10;  // the scale of its marks
};
// Of one panel: the elements that have marks and an expected mark that was there before the panel's day: the
// latest run before it, else `expect` of the sheet. `options`: as Wish::options. A sheet has one `expect`, whenever it
// was written: give the version of the sheet that was there that day.
std::vector<Lesson> lessons(const Routine& routine, const RecordedPanel& panel,
                            const std::vector<std::size_t>& options = {});

// A group's bias and the same drawn towards the mean of its sort (learning.h says how). The drawn one has its interval
// from all days of its sort, which holds the truth 92 to 97 times in 100 (tests/simulated/seasons_test.cpp).
struct LearnedBias {
  enum class Of { all, kind, family, fault } of = Of::all;
  std::string code;  // empty for all
  std::size_t lessons = 0, days = 0;
  double bias = 0;                  // the plain mean
  std::optional<double> spread;     // standard deviation around it; from two lessons on
  std::optional<double> low, high;  // 95 % interval of the plain mean
  double towards = 0;               // the mean of its sort
  double shrunk = 0;
  std::optional<double> shrunk_low, shrunk_high;  // its 95 % interval
  double weight = 1;                              // of its own mean in `shrunk`, 0 to 1
};
// That panels give more or less than expected, in all or elements of one kind: chance does not suffice for it.
struct SeasonClaim {
  std::string kind;  // empty: all of them, of several kinds
  double bias = 0, low = 0, high = 0;
};
struct Learned {
  std::vector<LearnedBias> biases;  // all (always there); then kinds, families, faults, most lessons first
  std::size_t days = 0;             // that the lessons are of
  std::optional<double> within, between;  // standard deviation of lessons within a kind, of biases between
                                          // kinds; empty where lessons are too few to tell
  std::string only_kind;                  // that all lessons are of; empty when there are several
  bool tells = false;                     // whether lessons and days are enough to tell a bias from chance
  std::vector<SeasonClaim> claims;        // of all, or of the kinds that it comes from, most lessons first
  std::vector<std::string> warnings;      // "3 elements in all, fewer than 8: ..."
};
Learned learn(std::span<const Lesson> lessons);
// What is added to an expected mark of the kind: its own bias, without one that of all; nothing where lessons are few.
const LearnedBias* added_to(const Learned& learned, std::string_view kind);
// The expected mark with that bias, shrunk, added, held within the scale.
double calibrated(const Learned& learned, const Lesson& lesson);

inline constexpr int calibrated_places = 4;

// An estimate with its expected marks moved by what panels gave so far: raw and calibrated side by side. What is
// calibrated is rounded to four places, ties away from zero, and scored in exact decimals from there. Marks of the whole
// routine stay as expected: no lessons are of them. So does a base mark.
struct CalibratedElement {
  std::string label, kind;                              // "2 Undertow", "hybrid"
  std::optional<Mark> raw, calibrated;                  // empty: none is expected
  std::optional<Points> raw_points, calibrated_points;  // empty: none of its own
};
struct CalibratedEstimate {
  std::vector<CalibratedElement> elements;
  std::optional<Points> raw_total, calibrated_total, change;  // empty while a mark is missing
  bool may_be_chance = false;                                 // a bias that was added may be
  int places = 4;                                             // of points of this event
};
CalibratedEstimate calibrated_estimate(const Routine& routine, const Wish& wish, const Learned& learned);

// Would calibration have helped? Every day is judged by what was learned from earlier days alone.
struct BackTest {
  std::size_t tested = 0, days = 0;          // lessons with at least `least_lessons` before their day
  double error_before = 0, error_after = 0;  // mean absolute error in marks, as expected and calibrated
  double better = 0;                         // error_before - error_after
  // 95 % interval of `better`: days are the sample (Cochran, Sampling Techniques, 1977, 6: a ratio of day
  // sums; Student's t); from two days on.
  std::optional<double> better_low, better_high;
  // By the interval; open with fewer than `least_days`.
  enum class Verdict { untested, open, helped, harmed } verdict = Verdict::untested;
  std::vector<std::string> warnings;
};
BackTest back_test(std::vector<Lesson> lessons);

// How a routine went over time: one point a panel (or a run, where `panel` is false).
struct ProgressPoint {
  std::string date, title;
  bool panel = true;
  Difficulty declared, credited;
  std::optional<double> mark;      // mean of the marks of the elements that were marked
  std::size_t marked = 0, of = 0;  // elements that were marked, that are marked one by one at all
  std::optional<Points> elements, impression, total;  // empty while a mark is missing
  std::optional<Points> sync, penalties;              // taken off; empty where a run says nothing of them
  std::optional<Points> announced;                    // of a panel
  std::size_t base_marks = 0;
};
// By date, runs before panels of the same day, then by title.
bool swum_before(const ProgressPoint& a, const ProgressPoint& b);
// In that order. A run is of the elements as written and has nothing but what
// was seen in it; `options` are of the panels, as Wish::options.
std::vector<ProgressPoint> progress(const Routine& routine, const std::vector<std::size_t>& options = {});

}  // namespace landdrill
