// From the place where a line went wrong to the message a coach reads.
//
//   parts split-hold spin-720
//                    ^  found "spin-720"; expected a comma, a multiplicity such as x2 or the end of the line
//                       hint: put a comma between two parts
#pragma once

#include <string>
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

// What to do about a line in error: the last line of a message.
//
//   slip 0.12              ->  "write the chance in percent: slip 12%"
//   panel 14/04/2026       ->  "write 2026-04-14"
//   element 2 7.25 7.50    ->  "where marks are meant, a colon follows the number: element 2: 7.25 7.50"

// `word` was found where `failure` expected something else.
Hint hint_of(const FailedLine& line, const Failure& failure, std::string_view word);
// The first word, `word`, is no keyword.
Hint unknown_hint(const FailedLine& line, std::string_view word);
std::string example_hint(const FailedLine& line);
// `quote` opens and is never closed.
std::string close_hint(const FailedLine& line, std::string_view quote);
// "1,234.5" or "7,25,7,50"
std::string ambiguous_hint(const FailedLine& line, std::string_view figures);
// "14/04/2026"
Hint date_hint(std::string_view date);
// Takes a title: routine, option, passage, run, panel.
bool has_title(const FailedLine& line);

}  // namespace landdrill
