// An exact number as its text; empty when it is not there.
//
//   text_of(std::optional(Mark(*Decimal::parse("7.5"))), 2)          // "7.50"
//   signed_text(std::optional(Points(*Decimal::parse("1.25"))), 4)   // "+1.2500"
#pragma once

#include <optional>
#include <string>

namespace landdrill::report {

// With as many places as it has, and `places` at least.
template <class Number>
std::string text_of(const std::optional<Number>& number, int places = 0) {
  return number ? number->text(places) : std::string();
}

// The same of a difference.
template <class Number>
std::string signed_text(const std::optional<Number>& number, int places = 0) {
  return (number && *number > Number() ? "+" : "") + text_of(number, places);
}

}  // namespace landdrill::report
