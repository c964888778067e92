// What can be wrong with a text by itself, of any sheet or list: the constants of problems.inc.
//
//   Problem::bad_date     // [bad-date], an error
#pragma once

#include "grammar/problem_code.h"

namespace landdrill::Problem {
#define DIAGNOSTIC(name, severity, meaning) \
  inline constexpr ProblemEntry name{#name, Severity::severity, meaning};
#include "grammar/problems.inc"
#undef DIAGNOSTIC
}  // namespace landdrill::Problem
