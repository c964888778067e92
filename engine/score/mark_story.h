// The story of one mark: judge by judge, or from the deductions of a run-through. Only build_up.cpp includes
// this.
//
//   mark_step(rule, kept, &judges, "element 2")
//   // "mark" 6.8333, "mean of 3 kept marks: 20.5 / 3", five judges
#pragma once

#include <string>

#include "engine/score/execution.h"
#include "engine/score/panel.h"
#include "engine/score/step.h"
#include "tables/value_set.h"

namespace landdrill {

// "split-hold x2"
std::string times_text(std::string_view code, int times);
// "rounded half-up to 4 places"
std::string rounded_text(const PanelRule& rule);
// "(22 / 3)": what goes into the product, before any rounding.
std::string fraction_text(const PanelRule& rule, const KeptMarks& kept);

// `judges`: the marks as given, or nullptr for an expected mark.
Step mark_step(const PanelRule& rule, const KeptMarks& kept, const JudgeMarks* judges,
               const std::string& path);
Step run_step(const RunMark& mark, const PanelRule& rule, const std::string& path);

}  // namespace landdrill
