// What the rules of an event object to: the constants of problems.inc.
//
//   Problem::quota     // [quota], a warning
#pragma once

#include "grammar/problem_code.h"

namespace landdrill::Problem {
#define DIAGNOSTIC(name, severity, meaning) \
  inline constexpr ProblemEntry name{#name, Severity::severity, meaning};
#include "engine/score/problems.inc"
#undef DIAGNOSTIC
}  // namespace landdrill::Problem
