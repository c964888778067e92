// From the place where a line went wrong to the message a coach reads.
//
//   parts split-hold spin-720
//                    ^  found "spin-720"; expected a comma, a multiplicity such as x2 or the end of the line
//                       hint: put a comma between two parts
#pragma once

#include <string_view>

#include "grammar/diagnostics.h"
#include "grammar/failure.h"

namespace landdrill {

struct Explained {
  std::string_view piece;  // what to underline
  Complaint complaint;
};

Explained explain(const FailedLine& line, const Failure& failure);
// The first word is no keyword, and no colon follows that would make it an aspect.
Explained explain_unknown(const FailedLine& line);
// `bad` points at the NUL or at the byte that breaks UTF-8.
Explained explain_bad_byte(const char* bad);

}  // namespace landdrill
