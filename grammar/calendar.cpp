#include "grammar/calendar.h"

#include <fmt/format.h>

#include <chrono>

namespace landdrill {
namespace {

unsigned number_in(std::string_view digits) {
  unsigned value = 0;
  for (char c : digits) value = value * 10 + static_cast<unsigned>(c - '0');
  return value;
}

// Also one that does not exist, such as 2026-02-29.
std::chrono::year_month_day day_of(std::string_view date) {
  return {std::chrono::year(static_cast<int>(number_in(date.substr(0, 4)))),
          std::chrono::month(number_in(date.substr(5, 2))), std::chrono::day(number_in(date.substr(8, 2)))};
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
  const auto day = day_of(date);
  return day.ok() && day.year() >= std::chrono::year(1);
}

// Day and month in the wrong order, or a day that the month does not have.
std::string day_hint(std::string_view date) {
  const std::string swapped =
      fmt::format("{}-{}-{}", date.substr(0, 4), date.substr(8, 2), date.substr(5, 2));
  if (is_day_of_the_calendar(swapped)) return fmt::format("the month stands before the day: {}", swapped);
  const std::chrono::year_month_day day = day_of(date);
  if (!day.month().ok() || day.year() < std::chrono::year(1))
    return "write year-month-day, for example 2026-04-14";
  const unsigned days(std::chrono::year_month_day_last(day.year() / day.month() / std::chrono::last).day());
  return fmt::format("this month has {} days", days);
}

}  // namespace landdrill
