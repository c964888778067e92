// What to do about a line in error: the last line of a message.
//
//   slip 0.12              ->  "write the chance in percent: slip 12%"
//   panel 14/04/2026       ->  "write 2026-04-14"
//   element 2 7.25 7.50    ->  "where marks are meant, a colon follows the number: element 2: 7.25 7.50"
#pragma once

#include <string>
#include <string_view>

#include "grammar/diagnostics.h"
#include "grammar/failure.h"

namespace landdrill {

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
