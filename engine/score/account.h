// The whole account of one sheet in numbers, ready for any report: estimate, recorded panel beside it, bridge, time,
// cautions.
//
//   Account told = account(routine, wish, 0);
//   *told.total.estimate                  // Points 107.525, written with told.places: 107.5250
//   told.elements[1].recorded->base       // true: the panel gave the base mark
//
// Words are made by reports.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/routine/timing.h"
#include "engine/routine/wish.h"
#include "engine/score/bridge.h"
#include "engine/score/build_up.h"
#include "engine/score/execution.h"
#include "engine/score/panel.h"
#include "engine/score/score.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {

// What an account says beside its numbers: marks that are missing, cautions, and how far its values can be
// trusted.
//
//   cautions(routine, timing).front().topic      // "lifts": someone is lifted

// What a showing has no marks for.
struct Unmarked {
  std::vector<int> elements;         // their numbers
  std::vector<std::string> aspects;  // their codes
  bool nothing_is_marked = false;    // though something should be
};

// What swimmers have to take care of in this routine: the rows of its set that speak of it.
using Cautions = std::vector<CautionRule>;

Unmarked unmarked(const Routine& routine, const Showing& showing);
Cautions cautions(const Routine& routine, const Timing& timing);

// How many of the rows the account rests on have a status, and which they are.
struct StatusCount {
  Status status;
  std::vector<std::string> rows;  // "parts spin-720"
};
// The rows that both build-ups rest on, each once, by status: the least trustworthy first. `recorded` may be
// nullptr.
std::vector<StatusCount> statuses(const Step& estimate, const Step* recorded);

// One line on one occasion: as the coach expects it, or as the panel saw it.
struct LineResult {
  std::optional<PanelMark> mark;  // empty: nobody marked it
  std::optional<Points> points;   // empty without a mark, and for an element that is weighted with others
  std::vector<JudgeMark> judges;  // as they sat; empty for an expected mark
  int places = 0;                 // with which its points are written, as its panel rounds them
};
struct ElementResult : LineResult {
  Difficulty credited;
  bool base = false;
};

// What an expected mark rests on.
struct RestsOn {
  ExpectedMark::From from = ExpectedMark::From::nothing;
  std::string date;      // of the one run
  std::size_t runs = 0;  // how many, where several are averaged
  std::string base;  // the day of the run that showed the base mark; empty for none, or where several say it
  // What the deductions of the runs were taken from; empty where none were.
  std::optional<Mark> best = {};
  RunMark::Best best_from = RunMark::Best::nobody;
  std::size_t silent = 0;  // runs that showed it and say nothing of its mark, so that the sheet's stands
};

// One line of the table a coach reads: an element, with what it is worth, expected and recorded.
struct ElementLine {
  int number = 0;
  std::string title, kind,
      option;  // kind: its title; option: the variant priced, empty for the one as written
  Difficulty declared;
  ElementResult expected;
  std::optional<ElementResult> recorded;  // where the panel marked it
  std::optional<Points> left;        // that a full mark for what was declared would add; with a mark only
  std::optional<Points> difference;  // recorded - expected
  std::optional<RestsOn> rests_on;   // none where elements of this kind are not marked by themselves
  bool worst = false;                // the line that costs most (against the panel, else against full marks)
};
// An aspect that is marked once for the whole routine.
struct AspectLine {
  std::string title;
  Factor weight;
  LineResult expected, recorded;
  std::optional<Points> difference;
  RestsOn rests_on;
};

// The same thing on both occasions, as it goes into the total: what is taken off is below 0.
struct Amounts {
  std::optional<Points> estimate, recorded, difference;  // difference: recorded - estimate
};

struct MissingMarks : Unmarked {
  enum class Of { estimate, panel } of = Of::estimate;
};

struct Account {
  std::string title, event, set, edition;  // event and set: their titles
  std::string panel_date, panel;           // panel: its title, may be empty; both are empty without a panel
  int places = 0;                          // with which points are written
  std::vector<ElementLine> elements;
  Amounts together;  // of elements that are weighted together by difficulty
  std::vector<AspectLine> aspects;
  Amounts sync, penalties;                      // where there are any
  Difficulty declared, credited;                // sums over the elements
  std::optional<Difficulty> recorded_credited;  // with a panel
  Amounts total;                                // what of it is empty has marks missing
  Points so_far;                                // the sum of what is there
  std::optional<Points> recorded_so_far;        // with a panel
  std::optional<Points> announced;              // what the sheet says was announced
  std::optional<Points> announced_difference;   // recorded - announced
  std::vector<MissingMarks> missing;            // one of the estimate, one of the panel, or neither
  std::optional<Step> estimate, recorded;       // the build-ups
  std::optional<Bridge> bridge;                 // where both totals are there
  Timing timing;
  Cautions cautions;
  std::vector<StatusCount> statuses;  // those that occur, the least trustworthy first
};

// `panel`: index into routine.panels, or none.
Account account(const Routine& routine, const Wish& wish, std::optional<std::size_t> panel);

}  // namespace landdrill
