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
  if (!wish.before.empty() && run.date >= wish.before) return false;
  return wish.which != RunWish::Which::dated || run.date == wish.date;
}

// A run was of the element as written; of another option it says nothing.
bool is_as_written(const Routine& routine, std::size_t element, const Option& option) {
  return &option == &routine.elements[element].options.front();
}

const RunElement* shown_in(const Run& run, std::size_t element) {
  const auto seen = std::find_if(run.elements.begin(), run.elements.end(),
                                 [&](const RunElement& one) { return one.element == element; });
  return seen == run.elements.end() ? nullptr : &*seen;
}

std::vector<RunMark> marks_of(const Routine& routine, std::size_t element, const Option& option,
                              const RunWish& wish) {
  std::vector<RunMark> marks;
  for (const Run& run : routine.runs) {
    const RunElement* seen = is_wanted(run, wish) ? shown_in(run, element) : nullptr;
    if (seen != nullptr) marks.push_back(run_mark(run, *seen, *routine.elements[element].panel, option.best));
  }
  return marks;
}

const RunMark& latest_of(const std::vector<RunMark>& marks) {
  return *std::max_element(marks.begin(), marks.end(), [](const RunMark& a, const RunMark& b) {
    return a.run->date < b.run->date || (a.run->date == b.run->date && a.run < b.run);
  });
}

void take_base(const std::vector<RunMark>& marks, const RunWish& wish, const PanelRule& rule,
               ExpectedMark& expected) {
  if (marks.size() > 1 && wish.which == RunWish::Which::mean) {
    const auto base =
        std::count_if(marks.begin(), marks.end(), [](const RunMark& one) { return one.seen->base; });
    expected.base = base_is_expected(static_cast<std::size_t>(base), marks.size(), rule.base_share());
  } else if (!marks.empty()) {
    const RunMark& latest = latest_of(marks);
    expected.base = latest.seen->base;
    if (expected.base) expected.base_run = latest.run;
  }
}

Mark mean_of(const std::vector<RunMark>& marks, const PanelRule& rule) {
  Exact sum;
  for (const RunMark& one : marks) sum = sum + Exact(one.mark->value());
  const Exact mean = sum / Exact(Decimal::whole(static_cast<std::int64_t>(marks.size())));
  return Mark(round_to_step(mean, rule.step, rule.rounding_of_runs()));
}

void take_mark(std::vector<RunMark> marks, const RunWish& wish, const PanelRule& rule,
               ExpectedMark& expected) {
  if (marks.size() > 1 && wish.which == RunWish::Which::mean) {
    expected.from = ExpectedMark::From::runs;
    expected.mark = mean_of(marks, rule);
    expected.runs = std::move(marks);
  } else {
    expected.from = ExpectedMark::From::run;
    expected.runs = {latest_of(marks)};
    expected.mark = expected.runs.front().mark;
  }
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

RunMark run_mark(const Run& run, const RunElement& seen, const PanelRule& rule,
                 const std::optional<Mark>& best) {
  RunMark result{&run,     &seen, {}, best.value_or(rule.best.value_or(rule.most)), RunMark::Best::nobody,
                 seen.mark};
  if (best || rule.best) result.best_from = best ? RunMark::Best::sheet : RunMark::Best::set;
  const bool says_nothing = seen.faults.empty() && (seen.base || result.best_from == RunMark::Best::nobody);
  if (seen.mark || says_nothing) return result;
  Mark mark = result.best;
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
  ExpectedMark expected;
  std::vector<RunMark> marks;
  if (is_as_written(routine, element, option)) marks = marks_of(routine, element, option, wish);
  take_base(marks, wish, *rule, expected);
  std::erase_if(marks, [](const RunMark& one) { return !one.mark; });
  if (!marks.empty()) {
    take_mark(std::move(marks), wish, *rule, expected);
  } else if (option.expect) {
    expected.from = ExpectedMark::From::sheet;
    expected.mark = option.expect;
  }
  return expected;
}

RunsShown runs_shown(const Routine& routine, std::size_t element, const Option& option, const RunWish& wish) {
  RunsShown shown;
  if (!is_as_written(routine, element, option)) return shown;
  RunWish all = wish;
  if (all.which != RunWish::Which::none) all.which = RunWish::Which::mean;
  for (const Run& run : routine.runs) {
    const RunElement* seen = is_wanted(run, all) ? shown_in(run, element) : nullptr;
    if (seen == nullptr) continue;
    ++shown.all;
    if (seen->base) ++shown.base;
  }
  return shown;
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
