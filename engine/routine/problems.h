// What can be wrong with a sheet under its value set: the constants of problems.inc.
//
//   Problem::unknown_part     // [unknown-part], an error
#pragma once

#include "grammar/problem_code.h"

namespace landdrill::Problem {
#define DIAGNOSTIC(name, severity, meaning) \
  inline constexpr ProblemEntry name{#name, Severity::severity, meaning};
#include "engine/routine/problems.inc"
#undef DIAGNOSTIC
}  // namespace landdrill::Problem
