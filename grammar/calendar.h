// Days of the calendar, for dates that are already shaped as 2026-04-14.
//
//   is_day_of_the_calendar("2026-02-29")   // false
//   day_hint("2026-13-09")                 // "the month stands before the day: 2026-09-13"
#pragma once

#include <string>
#include <string_view>

namespace landdrill {

bool is_day_of_the_calendar(std::string_view date);
// What to do about a day that does not exist.
std::string day_hint(std::string_view date);

}  // namespace landdrill
