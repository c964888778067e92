// What can be wrong with a value set or a list: the constants of problems.inc.
//
//   Problem::bad_step     // [bad-step], an error
#pragma once

#include "grammar/problem_code.h"

namespace landdrill::Problem {
#define DIAGNOSTIC(name, severity, meaning) \
  inline constexpr ProblemEntry name{#name, Severity::severity, meaning};
#include "tables/problems.inc"
#undef DIAGNOSTIC
}  // namespace landdrill::Problem
