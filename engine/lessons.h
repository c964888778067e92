// What the season teaches about the coach's expected marks: how far panels lay off them, and what to add next
// time.
//
//   std::vector<Lesson> kept = lessons(routine, routine.panels[0]);
//   Learned season = learn(kept);
//   calibrated(season, kept[0])       // 7.31 instead of the expected 7.50: panels give hybrids 0.19 less
//
// Bias is the panel's mark (mean of the kept marks) less the coach's expected one, in marks. With few lessons
// a group's bias is drawn towards the mean of all groups: empirical Bayes for normal means, the spread
// between groups by the method of moments (DerSimonian & Laird 1986; the idea of Efron & Morris 1975).
// Statistics are binary floating point and never go into a score.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "engine/score.h"

namespace landdrill {

// One element of one recorded panel.
struct Lesson {
  std::string date, routine, label;  // of the panel; "Harbour Lights", "2 Undertow"
  std::string kind;
  std::vector<std::string> families, faults;  // of its parts; that the run the expectation rests on had
  double expected = 0, given = 0;             // marks
};
// Of one panel: the elements that have marks and an expected mark that was there before the panel's day: the
// latest run before it (or on its day), else `expect` of the sheet. `options`: as Wish::options.
std::vector<Lesson> lessons(const Routine& routine, const RecordedPanel& panel,
                            const std::vector<std::size_t>& options = {});

struct LearnedBias {
  enum class Of { all, kind, family, fault } of = Of::all;
  std::string code;  // empty for all
  std::size_t lessons = 0;
  double bias = 0;                  // the plain mean
  std::optional<double> spread;     // standard deviation around it; from two lessons on
  std::optional<double> low, high;  // 95 % interval of the plain mean (t); from two lessons on
  double shrunk = 0, shrunk_low = 0,
         shrunk_high = 0;  // drawn towards the mean of its sort, with its 95 % interval
  double weight = 1;       // of its own mean in `shrunk`, 0 to 1
};
struct Learned {
  std::vector<LearnedBias> biases;    // all; then kinds, families, faults, each with most lessons first
  double within = 0;                  // pooled standard deviation of lessons within kinds
  double between = 0;                 // estimated standard deviation between kinds
  std::vector<std::string> warnings;  // "3 lessons in all: too few to learn from"
};
Learned learn(std::span<const Lesson> lessons);
// The expected mark with the shrunk bias of its kind (without one: of all) added, held within 0 and 10.
double calibrated(const Learned& learned, const Lesson& lesson);

// Would calibration have helped? Every day is judged by what was learned from earlier days alone.
struct BackTest {
  std::size_t tested = 0, days = 0;               // lessons with at least `least_lessons` before them
  double error_before = 0, error_after = 0;       // mean absolute error in marks, as expected and calibrated
  std::optional<double> better_low, better_high;  // 95 % interval of the mean gain, over days
};
constexpr std::size_t least_lessons = 8;
BackTest back_test(std::vector<Lesson> lessons);

// How a routine went over time: one point a panel (or a run, where `panel` is false).
struct ProgressPoint {
  std::string date, title;
  bool panel = true;
  Difficulty declared, credited;
  std::optional<double> mark;  // mean of the elements' marks
  std::optional<Points> elements, impression, total;
  Points sync, penalties;  // taken off
  std::size_t base_marks = 0;
};
// By date, runs before panels of the same day.
std::vector<ProgressPoint> progress(const Routine& routine, const std::vector<std::size_t>& options = {});

}  // namespace landdrill
