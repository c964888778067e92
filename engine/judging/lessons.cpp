#include "engine/judging/lessons.h"

#include <algorithm>

#include "engine/routine/routine.h"
#include "engine/routine/wish.h"
#include "engine/score/execution.h"
#include "engine/score/panel.h"
#include "tables/binary.h"

namespace landdrill {
namespace {

bool saw(const Run& run, std::size_t element) {
  return std::any_of(run.elements.begin(), run.elements.end(),
                     [&](const RunElement& seen) { return seen.element == element; });
}

// The last day before `day` on which a run saw the element: a run of the day itself may have come after the panel.
RunWish known_before(const Routine& routine, std::size_t element, std::string_view day) {
  RunWish wish{RunWish::Which::none, {}};
  for (const Run& run : routine.runs) {
    if (run.date >= day || run.date < wish.date || !saw(run, element)) continue;
    wish = {RunWish::Which::dated, run.date};
  }
  return wish;
}

void add_once(std::vector<std::string>& codes, std::string_view code) {
  if (std::find(codes.begin(), codes.end(), code) == codes.end()) codes.emplace_back(code);
}

std::vector<std::string> families_of(const Option& option) {
  std::vector<std::string> families;
  for (const PartUse& use : option.parts) add_once(families, use.part->family);
  return families;
}

std::vector<std::string> faults_of(const ExpectedMark& expected) {
  std::vector<std::string> faults;
  for (const RunMark& one : expected.runs) {
    for (const FaultUse& use : one.seen->faults) add_once(faults, use.fault->code);
  }
  return faults;
}

}  // namespace

std::vector<Lesson> lessons(const Routine& routine, const RecordedPanel& panel,
                            const std::vector<std::size_t>& options) {
  std::vector<Lesson> result;
  for (const RecordedElement& seen : panel.elements) {
    const Element& element = routine.elements[seen.element];
    const Option& option = chosen(routine, seen.element, {options, {}});
    const ExpectedMark expected =
        expected_mark(routine, seen.element, option, known_before(routine, seen.element, panel.date));
    if (!expected.mark) continue;
    Lesson lesson;
    lesson.date = panel.date;
    lesson.routine = routine.title;
    lesson.label = label_of(element);
    lesson.kind = element.kind->code;
    lesson.families = families_of(option);
    lesson.faults = faults_of(expected);
    lesson.expected = binary(*expected.mark);
    const KeptMarks kept = keep(*element.panel, seen.marks);
    lesson.given = binary_mean(kept.sum, kept.count);
    lesson.base = seen.base;
    lesson.least = binary(element.panel->least);
    lesson.most = binary(element.panel->most);
    result.push_back(std::move(lesson));
  }
  return result;
}

}  // namespace landdrill
