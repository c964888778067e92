// The mark the coach expects: from the deductions of her run-throughs, or as she wrote it.
//
//   best 8.50 - (small bent knee 0.25 + medium low height 0.5) = 7.75, in the panel's step
#pragma once

#include <optional>
#include <vector>

#include "engine/routine/routine.h"
#include "engine/routine/wish.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {

// What one fault took from an element: capped by the fault's row.
struct Deduction {
  FaultUse use;
  Mark taken;
  bool capped = false;
};

// The mark of one element in one run: given outright, or what a faultless showing by these swimmers would get less
// the deductions, not below the scale's bottom, in the panel's step.
struct RunMark {
  // Who says what a faultless showing would get: nobody (then it is the highest mark), the sheet or the set.
  enum class Best { nobody, sheet, set };
  const Run* run = nullptr;
  const RunElement* seen = nullptr;
  std::vector<Deduction> deductions;
  Mark best;
  Best best_from = Best::nobody;
  // Empty where the run says nothing of it: no fault, but nobody says what a faultless showing gets; or a lost
  // part or the base mark, and no fault beside it.
  std::optional<Mark> mark;
};

// The mark that goes into the estimate, and what it rests on.
struct ExpectedMark {
  enum class From { nothing, sheet, run, runs } from = From::nothing;
  std::optional<Mark> mark;
  bool base = false;              // the runs showed the base mark
  const Run* base_run = nullptr;  // the one that showed it; nullptr when several are averaged
  std::vector<RunMark> runs;      // for run: one; for runs: those averaged
};

// `best`: of the option that was swum.
RunMark run_mark(const Run& run, const RunElement& seen, const PanelRule& rule,
                 const std::optional<Mark>& best);
// The latest run that says a mark, or the mean of all that do; without one, what the sheet expects. The base mark is
// that of the latest run; with several runs averaged, an element counts as base when it was so in more of them than
// the share `run_base` of its panel's rule: half, where the rule says nothing.
ExpectedMark expected_mark(const Routine& routine, std::size_t element, const Option& option,
                           const RunWish& wish);
// In how many of the runs that may be asked the element was shown, as written, and in how many as base.
struct RunsShown {
  std::size_t all = 0, base = 0;
};
// All of them, whichever the mark is from; none for another option than the one as written.
RunsShown runs_shown(const Routine& routine, std::size_t element, const Option& option, const RunWish& wish);
// The latest run that marked this aspect of the whole routine; nullptr for none.
const Run* run_with_aspect(const Routine& routine, const PanelRule& rule, const RunWish& wish);
// The latest run that said something of sync errors, or of penalties (`none` is said too); nullptr for none.
const Run* run_with_sync(const Routine& routine, const RunWish& wish);
const Run* run_with_penalties(const Routine& routine, const RunWish& wish);

}  // namespace landdrill
