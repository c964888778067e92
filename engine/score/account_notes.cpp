#include "engine/score/account_notes.h"

#include <algorithm>

#include "engine/routine/timing.h"
#include "engine/score/score.h"
#include "tables/value_set.h"

namespace landdrill {
namespace {

void collect_rows(const Step& step, std::vector<Provenance>& rows) {
  for (const Provenance& row : step.rows) {
    const auto same = [&](const Provenance& known) {
      return known.table == row.table && known.line == row.line;
    };
    if (std::find_if(rows.begin(), rows.end(), same) == rows.end()) rows.push_back(row);
  }
  for (const Step& input : step.inputs) collect_rows(input, rows);
}

std::string_view lifts_and_throws(const Routine& routine) {
  bool lift = false, thrown = false;
  for (const Element& element : routine.elements) {
    lift = lift || element.kind->caution == Caution::lift;
    thrown = thrown || element.kind->caution == Caution::thrown;
  }
  if (lift && thrown) return "Lifts and throws";
  return lift ? "Lifts" : thrown ? "Throws" : "";
}

}  // namespace

Unmarked unmarked(const Routine& routine, const Showing& showing) {
  Unmarked result;
  bool any = false;
  for (std::size_t i = 0; i < routine.elements.size(); ++i) {
    if (routine.elements[i].panel == nullptr) continue;
    any = any || showing.elements[i].marks;
    if (!showing.elements[i].marks) result.elements.push_back(routine.elements[i].number);
  }
  for (const ShownAspect& aspect : showing.aspects) {
    any = any || aspect.marks;
    if (!aspect.marks) result.aspects.push_back(aspect.rule->aspect);
  }
  result.nothing_is_marked = !any && !(result.elements.empty() && result.aspects.empty());
  return result;
}

std::vector<std::string> cautions(const Routine& routine, const Timing& timing) {
  std::vector<std::string> sentences;
  const std::string acrobatics(lifts_and_throws(routine));
  if (!acrobatics.empty()) {
    sentences.push_back(
        acrobatics +
        ": check the depth and a clear landing, have spotters, and let the bases swim clear before "
        "the flyer comes down.");
  }
  if (timing.under > 0) {
    sentences.push_back(
        "Breath-hold: never hyperventilate, never drill it alone or unsupervised, rest between tries, stop "
        "at the "
        "first sign of trouble.");
  }
  if (!sentences.empty()) {
    sentences.push_back(
        "This prices a routine; it does not say that anyone can safely swim it. Follow your federation's and "
        "the "
        "facility's rules, the law and medical advice.");
  }
  return sentences;
}

std::vector<StatusCount> statuses(const Step& estimate, const Step* recorded) {
  std::vector<Provenance> rows;
  collect_rows(estimate, rows);
  if (recorded != nullptr) collect_rows(*recorded, rows);
  std::vector<StatusCount> counts;
  for (const Status status : {Status::invented, Status::memory, Status::practice, Status::published}) {
    StatusCount count{status, {}};
    for (const Provenance& row : rows) {
      if (row.status == status) count.rows.push_back(std::string(row.table) + " " + row.key);
    }
    if (!count.rows.empty()) counts.push_back(std::move(count));
  }
  return counts;
}

}  // namespace landdrill
