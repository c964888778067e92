#include "engine/score/execution.h"

#include <algorithm>
#include <cassert>

#include "engine/routine/base_mark.h"
#include "engine/routine/routine.h"
#include "tables/decimal.h"
#include "tables/quantity.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

// The cap is for the fault on this element, in whatever sizes it was seen.
Deduction deduct(const FaultUse& use, const std::vector<Deduction>& before) {
  Mark taken = *of_size(*use.fault, use.size) * use.times;
  if (!use.fault->cap) return {use, taken, false};
  Mark left = *use.fault->cap;
  for (const Deduction& earlier : before) {
    if (earlier.use.fault == use.fault) left -= earlier.taken;
  }
  if (taken <= left) return {use, taken, false};
  return {use, left, true};
}

bool is_wanted(const Run& run, const RunWish& wish) {
  if (wish.which == RunWish::Which::none) return false;
  if (!wish.until.empty() && run.date > wish.until) return false;
  return wish.which != RunWish::Which::dated || run.date == wish.date;
}

std::vector<RunMark> marks_of(const Routine& routine, std::size_t element, const RunWish& wish) {
  std::vector<RunMark> marks;
  for (const Run& run : routine.runs) {
    if (!is_wanted(run, wish)) continue;
    for (const RunElement& seen : run.elements) {
      if (seen.element == element) marks.push_back(run_mark(run, seen, *routine.elements[element].panel));
    }
  }
  return marks;
}

const RunMark& latest_of(const std::vector<RunMark>& marks) {
  return *std::max_element(marks.begin(), marks.end(), [](const RunMark& a, const RunMark& b) {
    return a.run->date < b.run->date || (a.run->date == b.run->date && a.run < b.run);
  });
}

ExpectedMark mean_of_runs(std::vector<RunMark> marks, const PanelRule& rule) {
  Exact sum;
  std::size_t with_base = 0;
  for (const RunMark& one : marks) {
    sum = sum + Exact(one.mark.value());
    if (one.seen->base) ++with_base;
  }
  const Exact mean = sum / Exact(Decimal::whole(static_cast<std::int64_t>(marks.size())));
  ExpectedMark expected;
  expected.from = ExpectedMark::From::runs;
  expected.mark = Mark(round_to_step(mean, rule.step, rule.rounding_of_runs()));
  expected.base = base_is_expected(with_base, marks.size(), rule.base_share());
  expected.runs = std::move(marks);
  return expected;
}

// The latest of the runs that count and of which `holds` is true; of two on one day, the later on the sheet.
template <class Holds>
const Run* latest_run(const Routine& routine, const RunWish& wish, Holds holds) {
  const Run* latest = nullptr;
  for (const Run& run : routine.runs) {
    if (is_wanted(run, wish) && holds(run) && (latest == nullptr || run.date >= latest->date)) latest = &run;
  }
  return latest;
}

}  // namespace

RunMark run_mark(const Run& run, const RunElement& seen, const PanelRule& rule) {
  RunMark result{&run, &seen, {}, {}};
  Mark mark = rule.most;
  for (const FaultUse& use : seen.faults) {
    result.deductions.push_back(deduct(use, result.deductions));
    mark -= result.deductions.back().taken;
  }
  result.mark =
      Mark(round_to_step(Exact(std::max(mark, rule.least).value()), rule.step, rule.rounding_of_runs()));
  return result;
}

ExpectedMark expected_mark(const Routine& routine, std::size_t element, const Option& option,
                           const RunWish& wish) {
  const PanelRule* rule = routine.elements[element].panel;
  assert(rule != nullptr);
  // A run was of the element as written; another option has only what the coach expects of it.
  const bool as_written = &option == &routine.elements[element].options.front();
  std::vector<RunMark> marks = as_written ? marks_of(routine, element, wish) : std::vector<RunMark>();
  if (marks.size() > 1 && wish.which == RunWish::Which::mean) return mean_of_runs(std::move(marks), *rule);
  ExpectedMark expected;
  if (!marks.empty()) {
    RunMark latest = latest_of(marks);
    expected.from = ExpectedMark::From::run;
    expected.mark = latest.mark;
    expected.base = latest.seen->base;
    marks.clear();
    marks.push_back(std::move(latest));
    expected.runs = std::move(marks);
  } else if (option.expect) {
    expected.from = ExpectedMark::From::sheet;
    expected.mark = option.expect;
  }
  return expected;
}

const Run* run_with_aspect(const Routine& routine, const PanelRule& rule, const RunWish& wish) {
  return latest_run(routine, wish, [&](const Run& run) {
    return std::any_of(run.aspects.begin(), run.aspects.end(),
                       [&](const AspectMark& one) { return one.rule == &rule; });
  });
}

const Run* run_with_sync(const Routine& routine, const RunWish& wish) {
  return latest_run(routine, wish, [](const Run& run) { return run.has_sync; });
}

const Run* run_with_penalties(const Routine& routine, const RunWish& wish) {
  return latest_run(routine, wish, [](const Run& run) { return run.has_penalties; });
}

}  // namespace landdrill
