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

Cautions cautions(const Routine& routine, const Timing& timing) {
  Cautions found;
  for (const Element& element : routine.elements) {
    found.lifts |= element.kind->caution == Caution::lift;
    found.throws |= element.kind->caution == Caution::thrown;
  }
  found.under_water = timing.under > 0;
  return found;
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
