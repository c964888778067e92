#include "engine/lessons.h"

#include <algorithm>

namespace landdrill {
namespace {

double number_of(Decimal value) {
  return static_cast<double>(value.units()) / static_cast<double>(Decimal::one);
}

bool saw(const Run& run, std::size_t element) {
  return std::any_of(run.elements.begin(), run.elements.end(),
                     [&](const RunElement& seen) { return seen.element == element; });
}

// The last day up to `day` on which a run saw the element.
RunWish known_by(const Routine& routine, std::size_t element, std::string_view day) {
  RunWish wish{RunWish::Which::none, {}};
  for (const Run& run : routine.runs) {
    if (run.date > day || run.date < wish.date || !saw(run, element)) continue;
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

std::string label_of(const Element& element) {
  const std::string number = std::to_string(element.number);
  return element.title.empty() ? number : number + " " + std::string(element.title);
}

}  // namespace

double mean_mark(const KeptMarks& kept) {
  return number_of(kept.sum.value()) / kept.count;
}

std::vector<Lesson> lessons(const Routine& routine, const RecordedPanel& panel,
                            const std::vector<std::size_t>& options) {
  std::vector<Lesson> result;
  for (const RecordedElement& seen : panel.elements) {
    const Element& element = routine.elements[seen.element];
    const Option& option = chosen(routine, seen.element, {options, {}});
    const ExpectedMark expected =
        expected_mark(routine, seen.element, option, known_by(routine, seen.element, panel.date));
    if (!expected.mark) continue;
    Lesson lesson;
    lesson.date = panel.date;
    lesson.routine = routine.title;
    lesson.label = label_of(element);
    lesson.kind = element.kind->code;
    lesson.families = families_of(option);
    lesson.faults = faults_of(expected);
    lesson.expected = number_of(expected.mark->value());
    lesson.given = mean_mark(keep(*element.panel, seen.marks));
    lesson.base = seen.base;
    lesson.least = number_of(element.panel->least.value());
    lesson.most = number_of(element.panel->most.value());
    result.push_back(std::move(lesson));
  }
  return result;
}

}  // namespace landdrill
