// How practice writes what she is off; practice.h is the door.
#pragma once

#include <optional>
#include <string>

namespace landdrill::report {

// "+0.25", "-0.25", "+0.00".
std::string off_by(std::optional<double> value);
// "20 %"
std::string in_per_cent(std::optional<double> share);

}  // namespace landdrill::report
