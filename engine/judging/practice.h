// An official in training marks what a recorded panel marked: what there is to mark, and what she types.
//
//   std::vector<PracticeTask> tasks = practice_tasks(routine, routine.panels[0], 7);
//   read_answer("7,25", tasks[0]).mark             // 7.25, on the panel's step
//   draw_tasks(tasks, {{}, 12, 42})                // the places of twelve of them
//
// practice_report.h compares her marks with the panel's. Pure: no clock, no terminal, no file.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

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
  bool again = false;                       // she has met it before, and been told the panel's marks
  std::string event = {};
  std::string parts = {};  // of an element: "thrust-high, spin-720, split-hold x2"
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

// What she was off on so far: a kind, or a level of the kept mean.
struct Weakness {
  std::string kind;                   // empty: a level,
  std::optional<double> from, below;  // of kept means from this, and below that
  double difference = 0;              // mean absolute difference so far, in marks
};

struct DrawWish {
  std::span<const Weakness> known;
  std::size_t how_many = 12;  // tasks, or whole routines
  std::uint64_t seed = 1;
  bool whole_routines = false;  // every line of a panel, in the order of the routine
};
// Which tasks to draw: what she has met before only when nothing else is left; those where she was further off before, by
// their kind and their level, come up more often, each at most once. Without anything known all are alike. The same `seed`
// draws the same tasks.
std::vector<std::size_t> draw_tasks(std::span<const PracticeTask> tasks, const DrawWish& wish);

}  // namespace landdrill
