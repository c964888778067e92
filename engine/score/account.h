// The whole account of one sheet, ready for any report: estimate, recorded panel beside it, bridge, time,
// cautions.
//
//   Account told = account(routine, wish, panel_index);
//   report::text(told, ...)
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/routine/timing.h"
#include "engine/score/bridge.h"
#include "engine/score/build_up.h"

namespace landdrill {

// One line of the table a coach reads: an element, with what it is worth, expected and recorded.
struct ElementLine {
  int number = 0;
  std::string title, kind, option;               // option: the variant priced, empty for the one as written
  std::string declared, credited, mark, points;  // expected
  std::string left;                              // points that a full mark for what was declared would add
  std::string recorded_credited, recorded_mark, recorded_points,
      difference;  // difference: recorded - expected points
  bool base = false, recorded_base = false;
  bool worst = false;    // the line that costs most (difference, else left)
  std::string rests_on;  // "expect", "run 2026-04-14", "mean of 3 runs", "no mark yet"
};
struct AspectLine {
  std::string title, weight, mark, points, recorded_mark, recorded_points, difference;
  std::string rests_on;  // as for an element
};
// How many of the rows the account rests on have a status, and which they are.
struct StatusCount {
  Status status;
  std::vector<std::string> rows;  // "parts spin-720"
};

struct Account {
  std::string title, event, set, edition;
  std::string panel;  // "2026-05-09 Tarn Open", or empty
  std::vector<ElementLine> elements;
  std::string weighted, recorded_weighted, weighted_difference;  // for rules that weight by difficulty
  std::vector<AspectLine> aspects;
  std::string sync, recorded_sync, sync_difference;  // "-0.7000"; empty when there is none
  std::string penalties, recorded_penalties, penalties_difference;
  std::string declared, credited, recorded_credited;  // sums of difficulty
  std::string total, recorded_total, difference;      // empty while marks are missing
  std::string so_far, recorded_so_far;
  std::string announced, announced_difference;  // difference: recorded - announced
  std::vector<std::string> missing;             // "element 3 has no expected mark: add `expect` or a run"
  std::optional<Step> estimate, recorded;       // the build-ups
  std::optional<Bridge> bridge;
  Timing timing;
  std::vector<std::string> cautions;  // whole sentences
  std::vector<StatusCount> statuses;  // those that occur; memory and invented are named on the face
};

// `panel`: index into routine.panels, or none.
Account account(const Routine& routine, const Wish& wish, std::optional<std::size_t> panel);

}  // namespace landdrill
