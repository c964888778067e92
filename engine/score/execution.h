// The mark the coach expects: from the deductions of her run-throughs, or as she wrote it.
//
//   10 - (small bent knee 0.25 + medium low height 0.5) = 9.25, in the panel's step
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

// The mark of one element in one run.
struct RunMark {
  const Run* run = nullptr;
  const RunElement* seen = nullptr;
  std::vector<Deduction> deductions;
  Mark mark;  // the scale's top less the deductions, not below its bottom, in the panel's step
};

// The mark that goes into the estimate, and what it rests on.
struct ExpectedMark {
  enum class From { nothing, sheet, run, runs } from = From::nothing;
  std::optional<Mark> mark;
  bool base = false;          // the run showed the base mark
  std::vector<RunMark> runs;  // for run: one; for runs: those averaged
};

RunMark run_mark(const Run& run, const RunElement& seen, const PanelRule& rule);
// With several runs averaged, an element counts as base when it was so in more of them than the
// share `run_base` of its panel's rule: half, where the rule says nothing.
ExpectedMark expected_mark(const Routine& routine, std::size_t element, const Option& option,
                           const RunWish& wish);
// The latest run that marked this aspect of the whole routine; nullptr for none.
const Run* run_with_aspect(const Routine& routine, const PanelRule& rule, const RunWish& wish);
// The latest run that said something of sync errors, or of penalties (`none` is said too); nullptr for none.
const Run* run_with_sync(const Routine& routine, const RunWish& wish);
const Run* run_with_penalties(const Routine& routine, const RunWish& wish);

}  // namespace landdrill
