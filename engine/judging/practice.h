// An official in training marks what a recorded panel marked, and sees how she compares.
//
//   std::vector<PracticeTask> tasks = practice_tasks(routine, routine.panels[0], 7);
//   read_answer("7,25", tasks[0]).mark             // 7.25, on the panel's step
//   practice_report(tasks, answers).bias           // +0.18: she marks higher than the panel's kept mean
//
// Differences are her mark less the kept mean, in marks. Statistics are binary floating point and never go
// into a score. Pure: no clock, no terminal, no file.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "engine/judging/statistics/agreement.h"
#include "engine/routine/routine.h"
#include "engine/score/score.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {

// One line to mark: an element or an aspect of the whole routine.
struct PracticeTask {
  std::int64_t block = 0;                   // the panel, as the caller numbers it
  std::string routine, panel, line, label;  // line: "2", "choreography"; label: "2 Undertow"
  std::string kind;                         // the element's kind, or the aspect
  std::optional<Difficulty> declared;       // of an element
  const PanelRule* rule = nullptr;          // the scale
  JudgeMarks judges;                        // as given; hidden until she has marked
  double kept = 0;                          // the mean of the kept marks
  bool corrected = false;                   // the panel's marks are others now than when she marked
};
// Those lines of the panel that have marks, in the order of the routine, aspects last.
std::vector<PracticeTask> practice_tasks(const Routine& routine, const RecordedPanel& panel,
                                         std::int64_t block, const std::vector<std::size_t>& options = {});

// What she typed.
struct Answer {
  enum class Does { mark, back, skip, pause, help, nothing } does = Does::nothing;
  std::optional<Mark> mark;
  std::string complaint;  // for `nothing`: what was found and expected
};
Answer read_answer(std::string_view typed, const PracticeTask& task);

// What became of one task.
struct Practised {
  std::optional<Mark> mark;  // empty: skipped, or not reached
  bool late = false;         // the time was up before she marked
};

struct PracticeReport {
  std::size_t marked = 0, skipped = 0, late = 0;
  std::size_t corrected = 0;                      // of all tasks
  std::optional<double> bias, difference;         // mean, and mean of the absolute differences, in marks
  std::optional<double> within_one, within_two;   // share within one and two steps of the kept mean
  Statistic order;                                // Spearman's rho with the kept means
  std::optional<double> lowest, highest, spread;  // of her marks
  std::optional<double> panel_lowest, panel_highest, panel_spread;  // of the kept means of the same tasks
  std::optional<double> first_half, second_half;                    // mean absolute difference: steadiness
  struct Against {
    std::size_t judge = 0;  // seat, 0 is the first
    std::size_t tasks = 0;
    double bias = 0, difference = 0;
  };
  std::vector<Against> judges;  // where all tasks have the same seats
  // Where she is off: by kind, by level of the kept mean, by part of the session.
  struct Where {
    enum class By { kind, level, time } by = By::kind;
    std::string name;  // "lift", "below 6.5", "first third"
    std::size_t tasks = 0;
    double bias = 0, difference = 0;
    std::optional<double> from = {}, below = {};  // of a level: the kept means that belong to it
  };
  std::vector<Where> where;            // in each sort furthest off first
  std::vector<std::string> sentences;  // plain, the most important first
  std::vector<std::string> warnings;   // too few marks
};
PracticeReport practice_report(std::span<const PracticeTask> tasks, std::span<const Practised> done);

// What she was off on so far: a kind, or a level of the kept mean.
struct Weakness {
  std::string kind;                   // empty: a level,
  std::optional<double> from, below;  // of kept means from this, and below that
  double difference = 0;              // mean absolute difference so far, in marks
};
// Of a report over all that she marked so far.
std::vector<Weakness> weaknesses(const PracticeReport& so_far);

// Which tasks to draw for a session of `how_many`: those where she was further off before, by their kind and
// their level, come up more often, each at most once. Without anything known all are alike. The same `seed`
// draws the same tasks.
std::vector<std::size_t> draw_tasks(std::span<const PracticeTask> tasks, std::span<const Weakness> known,
                                    std::size_t how_many, std::uint64_t seed);

}  // namespace landdrill
