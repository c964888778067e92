// Statistics as they are told: to some decimal places, half up, ties away from zero.
//
//   figure(7.125)             // "7.13"
//   figure(-0.125)            // "-0.13"
//   figure(0.1234565, 6)      // "0.123457"
//
// A figure is rounded from the six places that other programs get, so that a mean of marks is rounded as the
// exact number that it is, and no figure differs from the number behind it.
#pragma once

#include <string>

namespace landdrill {

std::string figure(double number, int places = 2);  // finite; places: 0 to 6
// The shortest text to six places: "0.123457", "7.5". More would only be the noise of binary numbers.
std::string exact_figure(double number);

}  // namespace landdrill
