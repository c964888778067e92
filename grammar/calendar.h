// Days of the calendar.
//
//   is_written_day("9.5.2026")             // false
//   is_day_of_the_calendar("2026-02-29")   // false
//   day_hint("2026-13-09")                 // "the month stands before the day: 2026-09-13"
#pragma once

#include <string>
#include <string_view>

namespace landdrill {

// Whether the text has the pattern's characters, and any digit where that has a 0: has_shape("9:05", "0:00").
bool has_shape(std::string_view text, std::string_view pattern);
// Whether any text is a day that exists, written year-month-day.
bool is_written_day(std::string_view text);
// The same of a text that has the shape of 2026-04-14.
bool is_day_of_the_calendar(std::string_view date);
// What to do about a day that does not exist.
std::string day_hint(std::string_view date);

}  // namespace landdrill
