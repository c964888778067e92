// How sure a mean is whose numbers move together day by day: the days are the sample, not the numbers.
//
//   error_by_day({{{0.5, 0.1}, {0.5, -0.1}}})     // error 0.2, freedom 1: two days alike in size
//
// Bell & McCaffrey, Survey Methodology 28 (2002), 169-181 (CR2, with the degrees of freedom that the shares of the days
// leave); Imbens & Kolesar, Review of Economics and Statistics 98 (2016), 701-712, on few and unequal days. With one
// number a day, or as many on each, it is Student's own interval of the days' means.
#pragma once

#include <optional>
#include <span>

namespace landdrill {

struct DayShare {
  double share = 0;  // of the mean's weights; all days together have 1
  double off = 0;    // the day's numbers less what was fitted to them, weighted and added up
};
struct DayError {
  double error = 0;  // standard error of the mean
  double freedom = 0;
};
// Nothing where one day has it all, or where the days do not scatter: then no interval can be made.
std::optional<DayError> error_by_day(std::span<const DayShare> days);

}  // namespace landdrill
