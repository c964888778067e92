// How a trainee's marks compare with those of the panels that marked the same.
//
//   PracticeReport report = practice_report(tasks, done);
//   report.bias.value                 // +0.18, in marks: she marks higher than the mean of the kept marks
//   report.sentences                  // what chance does not explain, and no more
//
// The marks of judges who mark alike scatter. So a fault is only told where chance would have it seldom: at most one in
// twenty of those who mark as the judges do is told any, over all that is looked at. Statistics are binary floating point
// and never go into a score. She is compared with these panels: one that is strict on its day makes her look high.
#pragma once

#include <span>
#include <string_view>
#include <vector>

#include "engine/judging/practice.h"
#include "engine/judging/practice_figures.h"  // IWYU pragma: export

namespace landdrill {

// `reference`: who marked them, in sentences.
PracticeReport practice_report(std::span<const PracticeTask> tasks, std::span<const Practised> done,
                               std::string_view reference = "the panel");

// Of a report over all that she marked so far.
std::vector<Weakness> weaknesses(const PracticeReport& so_far);

}  // namespace landdrill
