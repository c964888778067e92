#include "grammar/calendar.h"

#include <fmt/format.h>

namespace landdrill {
namespace {

int number_in(std::string_view digits) {
  int value = 0;
  for (char c : digits) value = value * 10 + (c - '0');
  return value;
}

// 0 when there is no such month.
int days_of_month(std::string_view date) {
  constexpr int days[] = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  const int year = number_in(date.substr(0, 4)), month = number_in(date.substr(5, 2));
  if (year < 1 || month < 1 || month > 12) return 0;
  const bool leap = year % 4 == 0 && (year % 100 != 0 || year % 400 == 0);
  return days[month - 1] + (month == 2 && leap ? 1 : 0);
}

}  // namespace

bool has_shape(std::string_view text, std::string_view pattern) {
  if (text.size() != pattern.size()) return false;
  for (std::size_t i = 0; i < pattern.size(); ++i) {
    const bool digit = text[i] >= '0' && text[i] <= '9';
    if (pattern[i] == '0' ? !digit : text[i] != pattern[i]) return false;
  }
  return true;
}

bool is_written_day(std::string_view text) {
  return has_shape(text, "0000-00-00") && is_day_of_the_calendar(text);
}

bool is_day_of_the_calendar(std::string_view date) {
  const int day = number_in(date.substr(8, 2));
  return day >= 1 && day <= days_of_month(date);
}

// Day and month in the wrong order, or a day that the month does not have.
std::string day_hint(std::string_view date) {
  const std::string swapped =
      fmt::format("{}-{}-{}", date.substr(0, 4), date.substr(8, 2), date.substr(5, 2));
  if (is_day_of_the_calendar(swapped)) return fmt::format("the month stands before the day: {}", swapped);
  const int days = days_of_month(date);
  return days == 0 ? "write year-month-day, for example 2026-04-14"
                   : fmt::format("this month has {} days", days);
}

}  // namespace landdrill
