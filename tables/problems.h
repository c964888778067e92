// What can be wrong with a value set or a list: the constants of set_problems.inc and list_problems.inc.
//
//   Problem::bad_step     // [bad-step], an error
#pragma once

#include "grammar/problem_code.h"

namespace landdrill::Problem {
#define DIAGNOSTIC(name, severity, meaning) \
  inline constexpr ProblemEntry name{#name, Severity::severity, meaning};
#include "tables/list_problems.inc"
#include "tables/set_problems.inc"
#undef DIAGNOSTIC
}  // namespace landdrill::Problem
